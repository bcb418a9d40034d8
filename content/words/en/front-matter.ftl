### What is wrong with a kit, a class or another file of the site, beyond the type of a field. Each thing has three short texts:
### what was given, what is allowed, and what to do (remedy).

front-given-text = given "{ $value }"
front-correct-name = correct the name
# Usual unit of a supply of the kit’s own, after its quantity: 3 pieces
front-pieces = pieces

## The fit’s quantities

# $fields: two or three of them, as a list
front-solved = { $fields } are { $count ->
    [2] both
   *[other] all
  } "solve"
front-one-solved = one of pictureLeaves, height and opening can be solved, from the other two
front-state = state { $fields }
front-no-opening = not given, while { $field } is "solve"
front-opening-degrees = degrees, { $least } to { $most }
front-state-opening = state the opening, or let opening be the one that is solved
front-opening-beyond-flat = { $least } to { $most } degrees with view: front
front-lower-opening = lower it, or use view: along for a piece seen while walking round

## Levels and gauge

front-lines-out-of-order = { $line } mm after { $before } mm
front-lines-outward = lines further and further from the fore-edge
front-order-lines = put the lines in order
front-level-twice = a second level "{ $level }"
front-level-names = a name of its own for each level, also without its capitals
front-rename = rename one of them
front-backgrounds = { $count ->
    [one] { $count } level with background: true
   *[other] { $count } levels with background: true
  }
front-one-background = exactly one, the level that shows where no shape is
front-add-background = add background: true to one level
front-remove-background = leave it on one level only
front-no-depth = neither depth nor line
front-depth-and-line = both depth and line
front-depth-or-line = one of them: depth (a length) or line (a number of gauge.lines)
front-add-depth = add depth or line
front-remove-one = remove one
front-gauge-lines = 1 to { $lines }, the lines of gauge.lines
front-no-gauge-lines = a line of gauge.lines, and there are none
front-add-gauge-line = correct the number or add the line to gauge.lines
# $levels: names of levels
front-a-level = a level: { $levels }
front-background-joined = "{ $level }", which is the background
front-take-level-off = take it off the list

## Sheets

front-sheet-twice = a second sheet "{ $sheet }"
front-sheet-names = each sheet once, under a name of its own
# $sheets: names of sheets.
front-sheet-of-class = a sheet of this class: { $sheets }

## Versions

front-version-order = { $date } below { $above }
front-newest-first = newest first: each date the same as the one above it or earlier
front-order-versions = put the versions in order or correct the date
front-version-twice = a second version "{ $version }"
front-version-names = a name of its own for each version

## Files of a kit

front-file-missing = "{ $file }" is not there
front-file-outside = "{ $file }" is outside its folder
# $what: a message about the file: a folder
front-file-is = "{ $file }": { $what }
front-file-inside = a file beside index.md
front-file-among = a file beside index.md (there are { $files })
front-add-file = correct the name or add the file
front-copy-file = { $kind ->
    [photo] copy the photo beside index.md
    [font] copy the font beside index.md
   *[picture] copy the picture beside index.md
  }
front-no-svg = "{ $file }" is not an SVG file
front-an-svg = an SVG picture (.svg), or a photograph or scan (.png, .jpg, .webp, .avif)
front-draw-svg = draw the levels as filled shapes and save them as SVG
front-no-photo = "{ $file }" is not a photo
front-save-photo = save it as one of these
# $fault: the words of the program that reads photos, in English.
front-photo-unreadable = "{ $file }" cannot be read as a photo: { $fault }
front-photo-pixels = "{ $file }" has { $megapixels } megapixels
front-photo-most-pixels = a photo of at most { $most } megapixels
front-photo-kinds = a whole photo: { $kinds }
front-save-photo-again = open it in a photo program and save it again
front-picture-shapes = shapes, strokes, groups and more, as the guide’s page on pictures lists them
front-change-element = change this element in your drawing program and save again
# A note on a picture, with its place: content/kits/moon/moon.svg:7
front-picture-note = { $place }: { $note }

## Which shape belongs to which level

front-shapes-of-no-level = shapes for a level "{ $level }"
front-the-levels = the levels: { $levels }
front-add-level = correct the name or add the level
front-id = "{ $id }"
front-picture-ids = an id of the picture: { $ids }
front-picture-no-ids = an id of the picture, and it has none
front-give-id = correct the id, or give the shape this id in the SVG
front-id-twice = "{ $id }" a second time
front-id-once = each id belongs to one level
front-remove-id = remove one of the two
front-shape-unnamed = a shape of no level: <{ $element }> without an id
# $ids: its own and its groups’ ids: #gull, #birds
front-shape-no-level = a shape of no level: <{ $element }> under { $ids }
front-shapes-belong = every painted shape belongs to a level, by its own id, name, class or colour, or by a group’s
front-level-empty = level "{ $level }" has no painted shape
# $shapes: elements that lie over it, as a list.
front-level-covered = nothing of level “{ $level }” shows: it lies behind { $shapes }
front-level-outside = nothing of level “{ $level }” shows: its shapes lie outside the picture’s frame
front-put-after = put its shapes after them in the file, as later ones lie on top
front-move-in = move them in, or state a picture.crop that holds them
front-enlarge = enlarge its shapes
front-level-tiny = nothing of level “{ $level }” shows: its shapes are too small
front-level-over = level “{ $level }” reaches out of the picture’s frame with { $shape }: what lies there is not shown
# On no leaf of the kit’s own book.
front-level-lost = level “{ $level }” comes out on no leaf of this book: its strips are too short, or its folds cannot reach there. Make its shapes larger, or use a taller picture or more leaves
front-levels-painted = every level but the background shows at least one shape
front-check-shapes = check that these shapes are painted and visible
front-list-shapes = list its shapes under picture.levels.{ $level }

## What a window is cut from

front-cuttable = outlines that a window can be cut from
front-crowded = outlines that cross or crowd each other in too many places
front-simplify = simplify the drawing: fewer points, and shapes that are united where they overlap
front-out-of-scale = outlines far too large or too small for their viewBox
front-scale = scale the drawing to a viewBox of some hundred units, and remove what lies far outside it
front-interleaved = a level whose shapes take turns with those of others too often
front-group-level = put the shapes of this level next to each other in the file

## Motifs

front-motif-pieces = { $pieces ->
    [0] no filled shape
   *[other] { $pieces } pieces that do not touch
  }
front-motif-one = one connected silhouette, filled
front-join-motif = { $pieces ->
    [0] draw a filled shape, or remove the file
   *[other] join the pieces in your drawing program
  }

## Cautions

front-caution-twice = a second caution "{ $id }"
front-caution-ids = an id of its own for each caution
front-caution-missing = none with "when: { $when }"
front-caution-occasions = at least one for each of { $all }
front-caution-write = write one, or take it over from the English file

## Classes

front-session-before = { $date } or later, as the sessions follow each other
front-order-sessions = correct the day, or put the sessions in order
front-the-session = The session
front-session = Session { $number }
front-table-beside = a table beside index.md: CSV, XLSX or ODS
front-table-among = a table beside index.md (there is { $files })
front-a-kit = a kit: { $kits }
front-class-kit = a kit of the class: { $kits }
# The kit itself has something wrong that is told of before.
front-kit-broken = the kit "{ $kit }" cannot be built
front-kit-correct-first = correct the kit first
front-kit-draft = the kit "{ $kit }" is a draft, or holds no index.md yet
front-kit-publish = take draft out of its front matter when it is ready, or name another kit
front-two-books = seat { $seat } has a book here and in { $table }
front-one-book = one book per seat
front-remove-book = remove one of them
front-no-seat = no seat
front-some-seat = at least one seat: here, in a books table, or as a number of places
front-add-seats = add places: 12 for twelve seats whose books are still to come, or seats with their books
front-seat-twice = seat { $seat } stands here a second time
front-seat-once = each number once
front-number-seats = give every seat a number of its own
# Of a key or column for names, addresses and the like.
front-no-persons = seats’ numbers, and nothing about persons: a class’s pages are public
front-remove-persons = remove it, and keep a list of who sits where on paper
front-depths = { $count ->
    [one] { $count } depth
   *[other] { $count } depths
  }
front-depths-of-kit = { $count }, one for each level of { $kit }: { $levels }
front-state-depths = state one for each level, front to back

## The books table

# What a message is about: a column, or the table’s head row, and a cell as spreadsheets name it: C4.
front-cell-field = { $column } in cell { $cell }
front-sheet-broken = no table that can be read
front-sheet-forms = a CSV table, or a workbook (XLSX or ODS) without a password, its table on the first sheet
front-table-empty = an empty file
front-table-head = a head row with the columns { $columns }
front-column-unknown = unknown column "{ $column }"
front-columns = these columns, in any order: { $columns }
front-column-missing = no column "seat"
front-column-twice = two columns "{ $column }"
front-column-once = each column once
front-cell-beyond = "{ $cell }" is beyond the last column
front-cells = { $count ->
    [one] { $count } cell, as in the head row; put a text with a comma in quotes
   *[other] { $count } cells, as in the head row; put a text with a comma in quotes
  }
# $given and $missing: names of columns
front-border-alone = { $given } without { $missing }
front-both-borders = borderBefore and borderAfter, or neither of them
front-cells-apart = cells separated by commas; put a text with a comma or a quote in quotes
front-plates-cell = plates: "{ $cell }"
front-plates-form = page:leaves, 192:4; 300:2 for four leaves after page 192 and two after page 300
front-correct-table = correct the table here
front-correct-cell = correct this cell

## What is told below a front matter, in Markdown

# Both name what a message is about.
story-picture = picture in the text
story-link = link in the text
story-picture-elsewhere = a picture from elsewhere: { $address }
story-save-picture = save it in this folder and name that file; pages fetch nothing from other sites
story-brackets = an address without spaces, or one in angle brackets: [words](<a file.jpg>)
story-put-brackets = put angle brackets around the address
story-nowhere = given { $address }, which leads to no page of this site
story-pages = an address on the web, or a page of this site, as in /kits/harbour-moon/ or ../harbour-moon/
story-correct-link = correct the link

## Seats and places of a class

front-seat-beyond = { $places } places, and a seat { $seat }
front-seat-places = seats from 1 to { $places }
front-seat-places-do = correct the seat’s number where it stands, or state places: { $seat }
