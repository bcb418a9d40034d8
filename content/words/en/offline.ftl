### A site that a device keeps, so that it works without network.

offline-kit = On this device: works offline, with its bench.
offline-kit-all = All of this kit is on this device: works offline.
offline-keep-all = Keep everything of this kit on this device
offline-keeping = Saving everything …
# On a kit's card in the catalogue.
offline-tag = on this device
# $why is one of the sentences that follow.
offline-not-all = Not all of it could be saved on this device. { $why }
offline-absent = { $path } is not there.
offline-other-version = { $path } is of another version.
offline-no-kit = This version has no kit “{ $kit }”.
offline-full = There is no room left.
offline-unreachable = The site could not be reached.
offline-newer = A newer version is ready.
# Another window of the site took the newer version over.
offline-taken-over = A newer version is in use. Reload this page to see it.
offline-update-failed = A newer version is there, but could not be saved whole. This device stays at the one it has and tries again later.
offline-reload = Reload
offline-later = Later
offline-close = Close

## How the site's host answers, told beside what the device keeps
offline-host-unreachable = The site could not be reached.
offline-host-gone = The site is no longer there: its host answers that it has nothing at this address.
offline-host-wrong = The site’s host answers with something that is not this site.
# $version as the kit's author names it, $day such as 3 October 2026.
offline-seen-edition = What you see is kept on this device: version { $version } of { $day }.
offline-seen = What you see is kept on this device.

## On the page that stands in for a file that is not given
offline-file-newer-heading = The site has a newer version
offline-file-newer = This file belongs to a newer version of the kit than the one on this device. Open the kit, wait until the newer version is ready, and reload.
offline-file-heading = This file is not on this device
offline-file-wrong = The site’s host answered with something that is not this file. Try it again later, or in another network.
offline-file-of = The kit on this device is version { $version } of { $day }.
