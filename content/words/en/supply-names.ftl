### Supplies and tools: their names with a quantity, and why they are needed. Lengths come with their unit.

supply-book = { $quantity ->
    [one] second-hand book
   *[other] second-hand books
 }
supply-card = card
supply-acetate = acetate
supply-paper = paper
supply-tape = narrow double-sided tape
supply-string = string
supply-glue-dots = { $quantity ->
    [one] glue dot
   *[other] glue dots
 }
supply-button = { $quantity ->
    [one] button
   *[other] buttons
 }
supply-light = { $quantity ->
    [one] battery LED light
   *[other] battery LED lights
 }
supply-cells = cells for the light
supply-blades = { $quantity ->
    [one] craft-knife blade
   *[other] craft-knife blades
 }
supply-glue = { $quantity ->
    [one] bottle of clear-drying glue
   *[other] bottles of clear-drying glue
 }
supply-baking-paper = { $quantity ->
    [one] strip of baking paper
   *[other] strips of baking paper
 }
supply-spacers = { $quantity ->
    [one] foam spacer
   *[other] foam spacers
 }
supply-bone-folder = bone folder or other blunt scoring tool
supply-ruler = ruler with clear divisions
supply-pencil = soft pencil and eraser
supply-awl = awl or thick pin
supply-scissors = short sharp scissors
supply-slips = two slips of paper as bookmarks
supply-weight = a few heavy books as a weight
supply-knife = craft knife
supply-mat = cutting mat and metal safety ruler
supply-packing = packing

# A quantity with what it counts: "4 craft-knife blades", "2 sheets of card", "1.1 m of string", "1 set of cells".
supply-line-each = { $amount } { $item }
supply-line-sheet = { $quantity ->
    [one] { $amount } sheet of { $item }
   *[other] { $amount } sheets of { $item }
 }
supply-line-set = { $quantity ->
    [one] { $amount } set of { $item }
   *[other] { $amount } sets of { $item }
 }
supply-line-m = { $amount } m of { $item }
supply-line-ft = { $amount } ft of { $item }
# The author's own unit: "3 rolls of washi tape".
supply-line-own = { $amount } { $unit } of { $item }

# Units by themselves, as in a table or in data.
supply-unit-each = { $quantity ->
    [one] piece
   *[other] pieces
 }
supply-unit-sheet = { $quantity ->
    [one] sheet
   *[other] sheets
 }
supply-unit-set = { $quantity ->
    [one] set
   *[other] sets
 }
supply-unit-m = m
supply-unit-ft = ft

why-book = { $leaves } leaves, each { $leafHeight } tall and { $leafWidth } wide
why-blades = { $cuts } cuts in the book, a fresh blade every { $perBlade }
why-glue-dots-tacks = { $tacks } for tacks
why-glue-dots-window = { $window } for closure and motifs
why-glue-dots-both = { $tacks } for tacks, { $window } for closure and motifs
why-card-gauge = { $sheet }, 250–300 g/m²: { $gauge } for the scoring gauge ({ $lines ->
    [one] one line
   *[other] { $lines } lines
 }) and small pieces
why-card-window = { $sheet }, 250–300 g/m²: { $gauge } for the scoring gauge ({ $lines ->
    [one] one line
   *[other] { $lines } lines
 }) and small pieces, { $window } for the window and motifs
why-acetate = { $sheet }, clear, 0.2 mm thick, for the glazing
# $sheet is a sheet's name; $parts are parts that it has no room for.
why-sheet-too-small = { $sheet } (too small for { $parts })
why-light = at most { $diameter } wide and { $height } tall; measure it
why-cells = as the light’s maker says; battery door closed with a screw
why-tape = twice round the frame ({ $frame })
why-tape-waste = twice round the frame ({ $frame }), with { $waste } for waste
why-string = loop and knot of the closure
why-string-waste = loop and knot of the closure, with { $waste } for waste
why-button = flat, 12–15 mm wide, for the closure
why-bone-folder = to press creases and sharpen folds
why-ruler-mm = in millimetres
why-ruler-in = in sixteenths or thirty-seconds of an inch
why-pencil = for the marks
why-glue = for paper and card
why-baking-paper = behind each tack
why-awl = to prick the gauge’s lines
why-knife = with a cap
why-mat = under and beside every cut
why-packing = card, up to { $height } in all, to keep the gauge level
why-packing-pieces = { $pieces } packing pieces of { $piece }, { $height } in all, to keep the gauge level
