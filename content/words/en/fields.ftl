### What the fields of kits, classes and settings are for. These texts stand in messages to authors, and in the JSON Schemas
### that editors show while an author writes. Names of fields and their values (solve, ltr, glueDots …) are the same in every
### language. Numbers in them are written as they are typed in the file.

## How each kind of field is described: its own sentence, then what may be written.

# help: field-length-help
field-length = { $about } A length of { $least } to { $most } mm: { $help }.
field-length-help = a number in mm, or text with a unit: 12, "12 mm", "1.2 cm", "0.5 in", "1 1/2 in"
field-left-out = { $about } Left out: { $usual }.
field-list-most = { $about } Up to { $most } of them.
field-list-between = { $about } { $least } to { $most } of them.
field-count = { $about } A whole number, { $least } to { $most }.
field-number = { $about } A number, { $least } to { $most }.
field-amount = { $about } A number above 0, up to { $most }.
field-cost = { $about } A number, 0 to { $most }, with a point: 0.35.
field-text = { $about } Text of up to { $most } characters.
field-choice = { $about } One of: { $values }.
field-seconds = { $about } Seconds, { $least } to { $most }.
field-minutes = { $about } Minutes, { $least } to { $most }.
field-date = { $about } A day of the calendar as YYYY-MM-DD: 2027-01-14.
field-address = { $about } https://… or http://…
field-pace = { $about } A number, 0.2 to 5; 1 is the kit’s own estimate.

## A kit: content/kits/<slug>/index.md

field-kit = Front matter of content/kits/<slug>/index.md.
field-kit-title = The kit’s name.
field-kit-summary = One line for the catalogue.
field-kit-draft = Whether it is a draft: left out of the site, but shown by npm start.
field-units = Units of page and packet.
field-kit-waste = Share added to tape and string for waste.
field-currency = Currency of the prices.

field-picture = Where the picture is, and which of its shapes lie at which level.
field-picture-file = The SVG picture beside index.md, as a path inside the kit folder.
field-picture-levels = Which shapes belong to which level: a level’s name, and under it what picks them.
field-picture-levels-usual = by names: levels that are called like something in the picture
field-picture-crop-usual = canvas; drawing where it fills less than 60% of the canvas

field-levels = The levels, front (nearest the viewer) to back.
field-level = A level of the picture: its name, and either depth or line.
field-level-name = The level’s name, used on page and packet.
field-level-depth = Distance of the fold from the fore-edge.
field-level-depth-usual = line says it
field-level-line = Number of a gauge line, 1 for the first of gauge.lines.
field-level-line-usual = depth says it
field-level-background = true on the level that shows where no shape is: exactly one of them.
field-level-background-usual = false

field-gauge = The scoring gauge: its lines, and the packing pieces that support the working side.
field-gauge-usual = the levels’ own depths
field-gauge-lines = Distances of the gauge’s lines from the fore-edge, line 1 first, increasing.
field-gauge-line = Distance of a gauge line from the fore-edge.
field-gauge-tile = Thickness of one of your own packing pieces, for the support table.

field-versions = Published versions, newest first; the first is the current one. Each is an entry of the feed.
field-version = A version that was published: version, date, note.
field-version-name = The version’s name, in quotes so that 1.10 stays 1.10: "1.1"
field-version-date = The day it was published: year-month-day, 2026-10-03
field-version-note = What changed.

field-licence = Licence of the kit itself: what others may do with it.
field-licence-name = Name of the licence, as people know it.
field-licence-url = Where the licence can be read.

field-links = Links of your own.
field-link = A link of your own: label and url.
field-link-label = The words of the link.
field-link-url = What it opens.

field-credit = Whose picture it is and under which licence; shown on page and packet.
field-credit-work = What the picture is taken from.
field-credit-licence = Licence of that work.
field-credit-source = Where it comes from.
field-credit-url = Address of the source: https://…

field-photos = Photos shown with the kit.
field-photo = A photo of the finished piece or of the work.
field-photo-file = A JPEG, PNG, WebP or AVIF photo, as a path inside the kit folder.
field-photo-alt = What the photo shows, for people who cannot see it.

## The book

field-book = The closed book’s measurements.
field-book-leaf-height = Head to tail of a leaf.
field-book-leaf-width = Fore-edge to gutter, as far as the leaf can be used.
field-book-block-thickness = All leaves pressed together, without the boards.
field-book-leaves = Leaves of the book (a leaf is two pages).
field-book-page-one-leaf = The leaf whose front carries printed page 1, counted from 1.
field-book-last-page = The last printed page number.
field-book-last-page-usual = the leaves are numbered to the end
field-book-plates = Unnumbered leaves between the pages; [] where there are none.
field-book-direction = Reading direction.
field-book-square = How far a board stands beyond the leaves; 0 for a paperback.
field-book-board-thickness = Thickness of one board, or of a paperback’s cover.
field-plate = Unnumbered leaves bound in after a printed page.
field-plate-after-page = Printed page that the plates follow.
field-plate-leaves = How many unnumbered leaves.

## The fit

field-fit = How the picture is matched to the book. At most one of pictureLeaves, height and opening is solve.
field-fit-border-leaves = Whole leaves before and after the picture, folded at the background’s depth: [12, 12]. The picture begins right after the first.
field-border-before = Whole leaves before the picture.
field-border-after = Whole leaves after the picture.
field-fit-picture-leaves = Leaves that carry the picture: fill, solve, or a whole number from 2.
field-fit-picture-leaves-about = Leaves that carry the picture. fill: all between the borders; solve: as many as the shape needs.
field-fit-picture-leaves-word = fill: all between the borders; solve: as many as the shape needs.
field-fit-picture-leaves-count = Picture leaves.
field-fit-head = Head edge to the picture’s top, on the front level.
field-fit-head-usual = centred
field-fit-height = Height of the picture on the front: solve, or { $help }.
field-fit-height-length = Height of the picture on the front.
field-fit-opening = Opening of the book in degrees, 5 to 180 (to 360 with view: along), or solve.
# The word as it is typed.
field-fit-opening-usual = solve
field-fit-view = front: true shape as seen from the front; along: for pieces seen while walking round.
field-fit-spine = How the spine lies in the opened book.
field-fit-mark-step = Marks are rounded to this step (0.5, 1, 1/32 in, 1/16 in).
# $mm as it is typed, $parts the parts of an inch.
field-fit-mark-step-usual = { $mm } mm; 1/{ $parts } in where the kit’s units are in
field-fit-least-tab = Strips shorter than this are merged with a neighbour.
field-fit-fold-style = single: each strip is folded once; stepped: the whole leaf at the front line first; corner: no cuts, the corners beside one strip are folded over.
field-fit-corner = With foldStyle: corner, what the leaves show and how the others are folded. No knife is needed, so light and insert are left out.
field-fit-corner-levels = Levels that are joined to the front one, as one outline; the background is none of them.
field-fit-corner-level = The name of a level.
field-fit-corner-empty = How leaves are folded that show nothing, borders too. line: straight at the background’s depth, which is quick to fold and frames the picture evenly; half: the fore-edge laid to the gutter, without a line; middle: both corners to the middle, which leaves a row of points at the front.
field-fit-cut-with = What leaves are cut with: a knife on a mat, or short sharp scissors through one or two leaves.
field-fit-tack-with = What holds a loose flap: glue, a pin-head of it that dries; dots, a glue dot that holds at once.
field-fit-gutter-clearance = Paper to leave between a flap and the gutter.
field-fit-flap-bulk = How many leaf thicknesses a springy flap counts as.
field-fit-batch = Most leaves worked before a pause.
field-fit-lost-leaves = Leaves that were skipped or torn: the picture closes up over the leaves after each one. [87].
field-fit-lost-leaf = A leaf of the book.

## The light and the window

field-light = A battery LED light that stands inside the book: an upright cylinder.
field-light-in = Level in whose region the light stands.
field-light-in-usual = the deepest level
field-light-diameter = Diameter of the light, measured at its widest.
field-light-height = Height of the light with its tip.
field-light-clearance = Clear space all round.
field-light-setback = How far the light stands behind the front.
field-light-floor = Floor of the pocket, measured from the head: auto, or { $help }.
field-light-floor-length = Height of the floor it stands on, from the head.
field-light-cells = The cells it takes, for the supplies: CR2032, 2 × AAA …
field-insert = The window that closes the hole: base frame, glazing, door.
field-insert-outline = Level whose outline the window’s frame follows. Its greatest hole is the window’s hole; without one it is the outline itself.
field-insert-lip = How far the frame reaches beyond the outline, and into the hole.
field-insert-hinge = Side of the door’s hinge.
field-insert-panel = wrap: parts are unrolled along the front, for card that bends; flat: as seen from the front.
# { "{" } and { "}" } write braces.
field-sheets = { $about } a4, letter, 12x12, or { "{" } name, width, height { "}" }.
field-sheets-about = Sheets that parts are laid on; supplies are counted with the first that takes all parts.
field-sheets-usual = every sheet that has a name, first A4, or US Letter in inches
field-sheet = A sheet of your own size.
field-sheet-name = The sheet’s name.
field-sheet-width = Width of the sheet.
field-sheet-height = Height of the sheet.

## Supplies, prices and working times

field-prices = { $about } Keys: { $keys }.
field-prices-about = Your price for one of each; for tape and string by the metre, or in a kit in inches by the foot.
field-price = A price for one of it.
field-rates = Your own working times, for a practised hand; the hours of the kit follow from them.
field-rate-leaf = Turning to a leaf and reading its row.
field-rate-score = Pressing one score line.
field-rate-mark = Making one mark.
field-rate-cut = Making one cut.
field-rate-cut-usual = { $knife } with a knife, { $scissors } with scissors
field-rate-fold = Folding and tucking one strip.
field-rate-check = Checking at a checkpoint.
field-rate-tack = Gluing one tack.
field-rate-notch = Cutting one notch of the light’s pocket.
field-rate-part = Cutting out and fitting one part of the window.
field-rate-first = How many times as long a first piece takes.
field-drying = How long glued things lie still, in minutes.
field-drying-glue = Glue on paper and card.
field-drying-frame = The base frame on the book; 720 is overnight.
field-supplies = Supplies of the kit’s own; one named like a computed supply replaces its quantity and price.
field-supply = A supply of the kit’s own, beside the computed ones.
field-supply-item = What it is.
field-supply-quantity = How much.
field-supply-unit = Of what: pieces, sheets, mm …
field-supply-price = Your price for all of it.

## A class: content/classes/<slug>/index.md

field-class = Front matter of content/classes/<slug>/index.md.
field-class-title = The class’s name.
field-class-summary = One line for the list of classes.
field-class-date = Day of the class, or of its first session.
field-class-place = Where it is held.
field-class-paper = Paper that the packets are printed on.
field-class-from = Folder name of another class. What is not stated here is taken over from there, but for days, state, seats and their table.
field-class-from-usual = nothing is taken over
field-class-announced = Day on which the class is made known: from then on it stands in the feed.
field-class-announced-usual = it is not in the feed
field-class-kits = Folder names of the kits that the class offers; seats take the first unless they say: [harbour-moon].
field-class-kit = A kit’s folder name.
field-class-books = A table of the seats’ books beside index.md: CSV, XLSX or ODS.
field-class-places = How many seats there are, numbered from 1. A seat that is not listed has its book still to come.
field-class-places-usual = the seats that are listed
field-class-state = What became of the class: held (patterns and packets stay on its page) or closed (only the page stays).
field-class-state-usual = it is still to be held
field-class-seats = The seats, each with a number and a book.
field-class-sessions = The sessions in order, each with its minutes.
field-class-pace = How many times the kits’ estimate this group takes.
field-class-waste = Share added to tape and string for waste.
field-ready = What the teacher has ready: scores (all lines pressed), parts (window parts cut out): [parts].
field-ready-stage = A stage that the teacher does before the class.
field-fitting-share = Share of a window part’s time that is left when it is cut out already.
field-stock = What is in stock: [{ "{" } item: card, quantity: 4 { "}" }].
field-stock-entry = Something that is in stock and need not be bought.
field-stock-item = A supply as the shopping list names it.
field-stock-quantity = How much is in stock, in the list’s unit.
field-spares = A crate of substitute books. A seat whose book does not fit is told which of them would.
field-spare = A substitute book.
field-spare-label = What you call it: what is written on its spine, or a number that you put on it.
field-class-packet = How much of a packet the seats are given: the table in short with what is cut out, the whole packet, or the whole one without its strips.
field-bring = What students bring beside their book. What begins as a name in the list of supplies does is marked in their packets, and is not on the shopping list.
field-bring-item = Something to bring.

field-session = An evening or a morning of the class.
field-session-title = What the session is called.
field-session-date = Day of the session.
field-session-date-usual = the first session is on the class’s day
field-session-starts = When it starts: "18:30", in quotes.
field-session-minutes = How long the session is.
field-session-aside = Of these, not spent on the work: welcome, cautions, clearing away.
field-session-buffer = Of these, at the end, planned for nobody, so that late seats catch up.
field-class-prices = { $prices } page is for one printed side.
field-packs = How many are sold together, such as blades: 10. Whole packs are bought. Keys: { $keys }.
field-pack = How many are in one pack.
field-sheet-prices = Prices of sheets by size, in place of card and acetate in prices.
field-sheet-price = What a sheet of one size costs.
field-sheet-price-sheet = One of the class’s sheets, as sheets names it.
field-sheet-price-each = A price for one sheet of this size.
field-tools = Tools of which there are fewer than seats, such as mat: 4. Seats take turns at them. Keys: { $keys }.
field-tool = How many of it there are.

field-seat = A seat: its number, and its book here or in the books table.
field-seat-number = The seat’s number; never a name.
field-seat-kit = The kit of this seat.
field-seat-kit-usual = the class’s first kit
field-seat-pace = This seat’s own pace instead of the group’s.
field-seat-pace-usual = the group’s pace
field-seat-book = The book of this seat, measured as in a kit.
field-seat-book-usual = it stands in the books table
field-as-the-kit = as the kit has it
# A cell of the books table.
field-column-plates = Unnumbered leaves: after which page, and how many: 192:4; 240:2
field-column-plates-usual = no plates
field-column-depths = Depths of all levels, front to back: 16; 24; 36
field-seat-fit = How the kit is matched to this seat’s book; what is left out stays as the kit has it.
field-seat-height = Picture height on this seat’s book.
field-seat-head = Head edge to the picture’s top.
field-seat-opening = How far this seat’s book is opened, in degrees, where the kit states that.
field-seat-picture-leaves = How many leaves show the picture.
field-seat-border-leaves = Whole leaves before and after the picture: [8, 8].
field-seat-fold-style = How its leaves are made: single or stepped as in the kit, or corner, folded by their corners without a knife.
field-seat-depth = Depth of a level.
field-seat-depths = Depths of all levels, front to back: [16, 24, 36].
field-seat-light = This seat’s own light, where it is not the kit’s.
field-seat-light-diameter = Diameter of this seat’s light.
field-seat-light-height = Height of this seat’s light.

## The site: content/site.yaml

field-site = Settings of the site.
field-site-title = The site’s name.
field-site-summary = One line about the site.
# What stands there where the author states no summary.
field-site-summary-usual = Pictures worked into books, one leaf at a time.
field-site-url = Address of the site’s folder, without parameters: https://host/folder/
field-site-feed-id = The address that the feed’s ids are made from, kept when the site moves: its first url.
field-site-feed-id-usual = url
field-site-language = Language of the pages: the name of a folder of content/words, or one of it with a region: en, en-GB, en-US …
field-fonts = Fonts for scripts beside Latin, Greek and Cyrillic, asked in this order.
field-font = A font for pages and packets: file, name, licence.
field-font-file = A font file in content/fonts: WOFF2, WOFF, TTF or OTF.
field-font-name = What the font is called. Files of one name are its weights.
field-font-name-usual = the name inside the file
field-font-licence = Licence of the font, where you state it.
field-author = Who makes the kits: name, kind, url.
field-author-name = Who makes the kits.
field-author-kind = A person, or an organisation such as a library or a workshop.
field-author-url = The author’s own address: https://…

## Cautions: content/words/<language>/cautions.yaml

field-cautions = A list of cautions, each with id, title, when, short and text.
field-caution = A caution: id, title, when, short, text.
field-caution-id = A short name of its own, in small letters.
field-caution-title = What it is about, in a word or two.
field-caution-when = Which kits show it: always, cuts (a knife is used), glue (tacks or a window), light.
field-caution-short = What stands beside a step that needs it.
field-caution-text = What stands in the list of cautions.

## The guide: content/guide/<language>/*.md

field-guide-title = The page’s heading.
field-guide-summary = One line about the page.
field-guide-order = Where the page stands among the others, counted from the first.
field-guide-kind = chapter: read in order; reference: looked up.

## Front matter of the catalogue: content/index.md

field-catalogue-title = The catalogue’s name in tabs and search results.
field-catalogue-title-usual = “Kits”
field-catalogue-heading = The heading above all kits.
field-catalogue-heading-usual = the title
field-catalogue-summary = One line about the catalogue.
field-catalogue-summary-usual = the site’s summary
field-catalogue-layout = Left over from earlier versions; it changes nothing.
