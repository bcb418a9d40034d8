### What is printed for the teacher of a class: her packet with handouts and seat cards, the measuring card, and the class's cut sheets.

teacher-over = Teacher’s packet
teacher-lede = { $date } · { $place } · { $seats ->
    [one] one seat
   *[other] { $seats } seats
 }, { $sessions ->
    [one] one session
   *[other] { $sessions } sessions
 }

## Roster

teacher-roster = Roster
teacher-kit-head = Kit and book
teacher-leaves-head = Picture leaves
teacher-opening-head = Opening
teacher-width-head = Hold width
# The first and the last picture leaf.
teacher-leaves = { $first }–{ $last }
teacher-no-fit = Does not fit
teacher-see-below = see below
teacher-roster-note = Work is at the pace of the class, without what is ready beforehand. A kit’s own page and bench give its author’s estimate.
teacher-misfit = Seat { $seat }: { $kit } does not fit its book
teacher-help = What would help:
teacher-doubts = Will work, but check first
# Stands in bold before what is to be checked at a seat.
teacher-seat = Seat { $seat }.

## Shopping list

teacher-shopping = Shopping list
teacher-material-head = Material
teacher-tool-head = Tool
teacher-needed-head = Needed
teacher-stock-head = From stock
teacher-buy-head = To buy
teacher-find-head = To find
teacher-price-head = Price
# Sheets of a size: "4 A4 sheets".
shopping-sheets = { $count ->
    [one] { $count } { $sheet } sheet
   *[other] { $count } { $sheet } sheets
 }
# A quantity in a unit: "1.9 m", "2 sets", "3 rolls".
shopping-amount = { $amount } { $unit }
shopping-packed = packed over all seats
shopping-too-small = too small for { $parts }
shopping-books = one per seat, measured as in the roster
shopping-seats = { $seats ->
    [one] for one seat
   *[other] for { $seats } seats
 }
# $why says which it is: "at most 38 mm wide and 45 mm high; measure it".
shopping-why = { $seats ->
    [one] { $why }; for one seat
   *[other] { $why }; for { $seats } seats
 }
teacher-unused = In stock, not needed here: { $items }.
# $seats names them: "seat 6" or "seats 2 and 6".
teacher-away = { $count ->
    [one] Not in this list: { $seats }, whose book does not fit yet. Sort this out first, and build again.
   *[other] Not in this list: { $seats }, whose books do not fit yet. Sort this out first, and build again.
 }

# $seats names them: "seat 6" or "seats 2 and 6".
teacher-awaited = { $count ->
    [one] Not in this list: { $seats }, whose book is still to come.
   *[other] Not in this list: { $seats }, whose books are still to come.
 }

teacher-costs = Costs
teacher-costs-text = Materials that all seats use: { $used }. Still to pay, after what is in stock: { $toPay }. Only items you have priced count; what printing costs is in the print plan. Sheets are shared out by area, tape and string by length.
teacher-costs-kit-head = Kit
teacher-uses = Uses
# Head of a column of boxes to tick.
teacher-paid = Paid

## Preparation

teacher-prepare = Preparation, in order
# $seats names them: "seat 6" or "seats 2 and 6".
teacher-collect = { $count ->
    [one] Measure the book for { $seats }, enter it and build again.
   *[other] Measure the books for { $seats }, enter them and build again.
  }
teacher-print = Print what the print plan lists, in its order and at 100%. Check the 100 mm bars on the first sheet of each.
teacher-settle = Sort out seat { $seat }: { $kit } does not fit its book.
teacher-buy = Buy what is on the shopping list. Check the tools: sharp blades, caps on.
# Where no seat has a knife.
teacher-buy-folded = Buy what is on the shopping list.
teacher-buy-light = Buy what is on the shopping list. Test every light and screw its battery door shut.
# $what is how many pieces of what: "2 × door, card".
teacher-cut = Cut { $what }
teacher-pieces = { $count } × { $part }, { $material }
teacher-all-seats = all seats that fit
# $where is for which seats; $names are names of sheets, as their files have them.
teacher-on-sheets = { $count ->
    [one] { $where }; on sheet { $names }
   *[other] { $where }; on sheets { $names }
 }
teacher-lay-out = Print or mark the cut sheets below and lay out their card. Students cut their own parts in class.
teacher-lay-out-window = Print or mark the cut sheets below and lay out their card, acetate and paper. Students cut their own parts in class.
teacher-scores = Press the score lines of every book, as the scoring plan in its packet says.
# $things is a list of what goes in, from the messages below.
teacher-bag = Put together a bag for each seat: { $things }.
teacher-bag-packet = packet
teacher-bag-gauge = gauge
teacher-bag-parts = gauge and window parts
teacher-bag-gauge-sheet = sheet for its gauge
teacher-bag-sheets = sheets for its gauge and window
teacher-bag-light = light with its battery door screwed shut (no loose cells)
teacher-bag-card = seat card
teacher-room = Lay out the room: a lamp and elbow room for each seat, a mat for each that cuts, and a closed container for old blades. Where a glue gun is used, keep water ready for burns.
# Where no seat has a knife.
teacher-room-folded = Lay out the room: a lamp and elbow room for each seat.
# Beside seats that cut. $seats: "seat 7", "seats 3 and 7".
teacher-room-apart = Set who works without a knife an arm’s length from every blade: { $seats }.
teacher-cut-in-class = To cut in class
# What is to be cut, and for which seats: "2 × door, card: seats 2 and 8".
teacher-cut-for = { $what }: { $where }
teacher-cut-sheets = Cut sheets of the class
# A sheet's size and stuff: "A4 card".
teacher-sheet = { $size } { $material }
# $folder is the name of a folder.
teacher-cut-note = Numbers are seats. The files to cut are in { $folder }, each as SVG in mm, SVG at 72 dpi and DXF.

## Schedule

# What lies still beside the work, and the longest of it.
teacher-drying = { $kit }: glue needs { $all } to dry, { $longest } of it in one go. End a session with what must dry.
teacher-late = Who may need more time, and what to do
teacher-late-seat = Seat { $seat }, { $kit }: { $minutes } short.
teacher-none-late = By this estimate, every seat that fits finishes in these sessions.
# “Work along” is the name of a link: class-seat-bench.
remedy-leaves-at-home = { $leaves ->
    [one] Finish one leaf at home with “Work along”: about { $hours }.
   *[other] Finish { $leaves } leaves at home with “Work along”: about { $hours }.
 }
remedy-leaves-and-scores-at-home = { $leaves ->
    [one] Press the score lines and fold one leaf at home with “Work along”: about { $hours }.
   *[other] Press the score lines and fold { $leaves } leaves at home with “Work along”: about { $hours }.
 }
remedy-window-at-home = Finish the window at home: about { $hours }.
remedy-scores-before = Press its score lines before the class. That saves { $saves }; the seat is still { $missing } short.
remedy-scores-enough = Press its score lines before the class. That saves { $saves }, enough to finish.
remedy-parts-before = Cut its window parts before the class. That saves { $saves }; the seat is still { $missing } short.
remedy-parts-enough = Cut its window parts before the class. That saves { $saves }, enough to finish.
# Both of the two before.
remedy-both-before = Do both. The seat is still { $missing } short.
remedy-both-enough = Do both. That is enough to finish.
remedy-shorter-kit = Make { $kit } instead. It fits this book and would be finished in time.
remedy-more-sessions = { $sessions ->
    [one] Add a session like the last one.
   *[other] Add { $sessions } sessions like the last one.
 }

## Sheet of blank measurements

teacher-measures = Every seat’s book, to write down
teacher-measures-text = Write at the table, in { $unit }, and put the rows into the table of books. There, write the unit behind each inch figure (6 in); a bare figure is millimetres. The measuring card says how to measure.

## Supervision list

teacher-supervision = Supervision list
teacher-supervision-text = The rules of your house come first; this list helps you keep count. Tick each box at the table, out and back.
# In place of that text and its lists where no seat has a knife.
teacher-no-knives = No seat of this class has a knife, so there is nothing to count out and back.
# Names of rows: up to about 24 letters keep to one line.
teacher-knife-out = Knife out
teacher-knife-back = Knife back, capped
teacher-cells-in = Cells in, door screwed
teacher-cells-back = Cells counted back
# Underscores are room to write; $box is a box to tick.
teacher-counts = Out/back: knives ____/____ · new blades ____ · old blades in the container ____ · glue guns cold { $box }
teacher-counts-light = Out/back: knives ____/____ · cells ____/____ · new blades ____ · old blades in the container ____ · glue guns cold { $box }
teacher-home = What goes home unfinished goes without loose blades or cells. A light that goes home keeps its cells behind the screwed door and counts as out until it is back: seats ____________________. Anyone carrying on at home works beside a competent adult where the cautions above ask for one.

## Handout and seat cards

teacher-handout = Handout · { $class }
teacher-steps = { $kit }: the steps
# A step's or a caution's title in bold, before its sentence.
teacher-handout-title = { $title }.
teacher-done = Done for you before the class.
teacher-handout-foot = Your own leaves, marks and widths are in your packet. Stop after every batch, and compare at every checkpoint.
teacher-cards = Seat cards
teacher-cards-more = Seat cards, continued
teacher-no-code = This site has no address yet, so there is no code.

## Measuring card

card-over = Measuring card · { $class }
card-heading = Measure your book
# Before room to write the seat's number.
card-seat = Seat
card-ruler = A ruler at true scale: centimetres above, inches below. Cut along its upper line.
card-note = Print at “actual size” or 100% and check the ruler against another: 10 cm must be { $least } to { $most } mm. If a leaf is longer, make a pencil mark and go on from it. Then type height, width, thickness and leaves on the class’s page, which tells you at once whether the book fits. The kit’s page takes the rest.

## Cut sheets

# A part of one seat, or a gauge of several; $seats: "seat 2" or "seats 1, 3 and 4".
sheet-part = { $seats }: { $part }
# The same in short, on the part in the drawing; $seats is "2" or "1, 3, 4".
sheet-part-short = { $seats } { $part }
# On a part of many seats: the number of the first, and how many others.
sheet-seats-many = { $first } and { $more } more
# $name is the name of the sheet's files, $parts a list of sheet-part.
sheet-label = Sheet { $name }, { $width } × { $height } mm: { $parts }
sheet-title = { $class }: { $material }, { $size } sheet { $number }: { $parts }
# In the file's description; $layers are names in the file.
sheet-about = Leaflight class { $class }; parts of all seats; layers: { $layers }
