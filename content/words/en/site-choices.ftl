### What the terminal says of the site that a command is to make: which content, which folder, which address.

# $option: as it was given: --content. $example: what may stand behind it.
site-option-empty = { $option } has no value. Write it behind: { $option } { $example }
site-option-twice = { $option } is said twice. Say it once.
# $file: the name of the file.
site-variables-file = { $file } cannot be read as variables: lines of NAME=value. Correct it, or move it away
# $content: the folder as it was given.
site-content-missing = There is no folder { $content } to read content from. Allowed is a folder like content, with kits, classes and site.yaml. Make it, or correct --content or LEAFLIGHT_CONTENT.
site-content-own = { $content } is no folder for content: it holds the program, or is a part of it. Choose a folder of its own, such as sites/north.
# $output: the folder as it was given. $why: one of the messages below. $made: what is to be made there: part, or site.
site-output = { $made ->
    [part] The part
   *[site] The site
  } cannot be made in { $output }: { $why }. Choose a new or an empty folder with --output or LEAFLIGHT_OUTPUT.
site-output-own = it holds the program or the content, or is a part of them
site-output-full = it holds something else than a { $made ->
    [part] part
   *[site] site
  }, which would be lost
# $option: as it was given.
site-start-option = There is no option “{ $option }”. Allowed are --content, --url, --port, --desk-port and --network.
site-start-port = “{ $given }” is no port. Allowed is a whole number from 1 to 65535, such as --port 8090.
# $host: of the site's address. $file: the settings. $variable: a variable of the environment.
check-nobodys-address = { $host } is kept for examples, so the codes on seat cards and handouts lead nowhere. State the site’s own address: url in { $file }, --url, or { $variable }.
