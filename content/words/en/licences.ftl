### The file licences.txt: whose work comes along in the site, and under which terms.

licences-link = Licences
licences-heading = Licences of what this site is made of
licences-text = The program that made this site is Leaflight. Fonts and parts of scripts come from the packages named here, each under the terms that follow it.
# Above the text of a package's licence.
licences-package = { $name } { $version } ({ $licence })
# Told by a build.
licences-refused = The site would hold { $name } { $version }, whose licence is “{ $licence }”. Only these licences are allowed: { $allowed }. Use another package, or add the licence to src/build/licences/allowed.ts.
licences-no-text = The site would hold { $name } { $version }, which has no file with the text of its licence. Use another version of it, or another package.
