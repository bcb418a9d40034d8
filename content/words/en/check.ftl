### What authors are told on the terminal: messages about their files, and what a build or a check did.

## One message, on one line

# $place: file, line and column. $field: the field as it stands in the file. $given, $allowed and $remedy: messages of these files.
check-message = { $place }  { $field }: { $given }; allowed: { $allowed }; do: { $remedy }

## What a message is about, where it is no field

check-field-front-matter = front matter
check-field-settings = settings
check-field-cautions = cautions
check-field-books = books table
check-field-picture = picture
check-field-motif = motif
check-field-folder = { $kind ->
    [class] class folder
   *[kit] kit folder
  }
# In place of a file.
check-environment = environment

## What was given

check-not-given = not given
# $value as it stands in the file.
check-given = given { $value }
# $value: how the text begins.
check-given-long = given { $count } characters: { $value }
# Lengths as they are typed.
check-given-outside = given { $value }, which is { $length } mm, outside { $least } to { $most } mm
check-given-unit = given { $value }, which has the unit "{ $unit }"
check-given-fault = given { $value }, which { $fault ->
    [comma] has a comma: use a point
    [no-unit] has no unit
    [not-finite] is not a finite number
    [zero-divisor] divides by zero
    [more-than-folder] is more than the address of a folder
    [whole-session] is as long as the session
   *[no-length] is not a length
  }
check-unknown-key = unknown key "{ $key }"
# A long list of names, cut: a, b, c and 12 more
check-more-names = { $names } and { $more } more
check-add-field = add { $field }
# A list that has too few entries: add entry 2 of fit.borderLeaves
check-add-entry = add entry { $number } of { $list }
check-correct-value = correct this value
# What an author wrote below the front matter of a page.
check-field-page-text = the page’s text
check-shorten = shorten it
check-remove-key = remove it, or use one of the keys that are allowed
check-write-key = write "{ $key }"

## Files and folders

check-address-name = { $kind ->
    [folder] folder
   *[page] page
  } "{ $name }"
check-address-names = small letters, digits and single hyphens, at most { $most } of them
check-rename-folder = rename the folder
check-no-index = no index.md in the folder
check-folder-holds = { $kind ->
    [class] a class folder holds index.md, and a books table where one is named
   *[kit] a kit folder holds index.md and its picture
  }
check-add-index = add index.md or remove the folder

check-no-front-matter = no front matter
check-front-matter-block = a block of YAML between two lines of ---
check-start-front-matter = start the file with ---, its fields, and --- again
check-well-formed-yaml = well-formed YAML
check-correct-yaml = correct the YAML here
# $fault: the words of the YAML reader, in English.
check-yaml-nested = { $fault } (is this line indented like its neighbours? a text with a colon needs quotes: title: "Fish: a first piece")
check-yaml-hash = { $fault } (# starts a comment: write ids in quotes, ["#eye"])
check-yaml-alias = an alias without an anchor before it: { $alias }
check-yaml-circle = an alias inside the very thing that it stands for: { $alias }
check-yaml-flood = aliases beyond all use: more than { $aliases } of them, or of { $entries } entries when they are unfolded
check-yaml-depth = more than { $most } lists and fields within each other
check-yaml-long = more than { $most } words and signs
check-yaml-documents = a second YAML document
check-yaml-key-twice = a second key "{ $key }"
check-yaml-tag = the tag { $tag }, and tags have no meaning here

## Settings

check-correct-variable = correct the variable, or leave it out to use url in { $file }
# Languages that the project has words in: en, nl
check-language-without-words = given "{ $language }", which has no words here
check-languages-with-words = one of these, also with a region: { $languages }
check-language-remedy = choose one of them, or add a folder of words

## Build and check

# $name: the kit’s or class’s folder. $warning: a whole message.
check-warning = warning  { $name }: { $warning }
# Under the line of its kit.
check-warning-inside = warning: { $warning }
# $note: a whole message about a picture: how it was taken.
check-note-inside = note: { $note }
check-kit = { $kit }: leaves { $first } to { $last }, { $width } × { $height }, opening { $opening }, hold width { $hold }, { $hours }
# After the first of very many messages.
check-more = … and { $count ->
    [one] { $count } message
   *[other] { $count } messages
} more, once these are mended.
# The program itself failed. $fault: what it says, in English. $file: where the details stand.
check-program-fault = Leaflight itself failed: { $fault }. This is no fault of yours; please report it with { $file }.
check-program-fault-unwritten = Leaflight itself failed: { $fault }. This is no fault of yours; please report it.
check-draft = { $folder }: a draft, left out of the site; npm run check -- { $kit } checks it
check-no-kit-yet = { $folder }: left out, as it holds no index.md yet
check-part-of-site = These are the kits that were asked for, and no classes; npm run build makes the whole site.
check-without-packets = Packets were not printed, and links to them lead nowhere: try this site, but do not publish it.
# $option: as it was given. $known: the options there are.
asked-option = There is no option “{ $option }”. Allowed are names of folders, { $known }.
# $folder: of the kit that was asked for. $kits: the folders there are. $meant: the one of a similar name.
asked-kit = No kit has the folder { $folder }. There are: { $kits }.
asked-kit-meant = No kit has the folder { $folder }. Did you mean { $meant }?
asked-no-kits = No kit has the folder { $folder }; there are none yet. Begin one with npm run new.
check-note = note  { $note }
check-nothing-built = Nothing was built; { $output } is as it was.
check-left-out = Left out until this is corrected:
check-kit-count = { $kits ->
    [one] { $kits } kit
   *[other] { $kits } kits
  } in { $output }: open { $page }
check-kits-and-classes = { $kits ->
    [one] { $kits } kit
   *[other] { $kits } kits
  } and { $classes ->
    [one] { $classes } class
   *[other] { $classes } classes
  } in { $output }: open { $page }
# $folder: the folder of what is not published.
check-private = { $folder } is for those who hold the classes: do not publish it.
check-no-address = No url in { $file } or { $variable }: left out site map, feed, canonical addresses, link previews and the page for missing addresses.

# Files in a folder that nothing names; $names is a list, or its beginning.
check-strays = { $folder }: left alone, as nothing here names { $count ->
    [one] it
   *[other] them
}: { $names }
check-strays-more = { $names } and { $more } more
