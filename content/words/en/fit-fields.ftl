### The fit panel's fields: what is asked, how it is measured, and what is allowed.

fit-field-leaf-height = Leaf height
fit-help-leaf-height = Lay the ruler along the fore-edge: head to tail of one leaf, not of the boards.
fit-field-leaf-width = Leaf width
fit-help-leaf-width = From the fore-edge to where the leaf disappears in the gutter.
fit-field-block-thickness = Thickness
fit-help-block-thickness = All leaves pressed under a board, without the book’s own boards or cover, measured at the fore-edge.
fit-field-leaves = Leaves
fit-help-leaves = Sheets, not pages: half the page count. Or count 50 leaves and compare thicknesses.
fit-field-page-one-leaf = Leaf with page 1
fit-help-page-one-leaf = Count leaves from the front until the one whose front is page 1.
fit-field-last-page = Last page
fit-help-last-page = The last printed page number.
fit-field-plates = Plates
fit-help-plates = Unnumbered leaves between the pages, as page × leaves: 192 × 4, 300 × 2. Leave it empty where there are none.
fit-field-direction = Reading direction
fit-help-direction = Which way the pages turn.
fit-field-border-leaves = Border leaves
fit-help-border-leaves = Whole leaves before and after the picture: 12, 12.
fit-field-height = Picture height
fit-help-height = How tall the picture should be.
fit-field-opening = Opening
fit-help-opening = Degrees between the first and the last leaf of the opened book.
# $level is the name of a level, in the kit author's words.
fit-field-depth = Depth of { $level }
fit-help-depth = From the fore-edge to your gauge’s line.
fit-field-fold-style = Folds
fit-help-fold-style = Single: fold each strip once. Stepped: fold the whole leaf at the front line first. Corners: cut nothing, fold the corners beside one strip.
fit-field-mark-step = Mark step
fit-help-mark-step = The finest step on your ruler: 0.5 mm, 1 mm, 1/32 in, 1/16 in.
fit-field-light-diameter = Light width
fit-help-light-diameter = Your LED light at its widest.
fit-field-light-height = Light height
fit-help-light-height = With its tip.
# Figures that only an address carries.
fit-field-head = Head edge to the picture
fit-field-units = Units
fit-field-flap-bulk = Flap bulk
fit-field-lost-leaves = Leaves left out

fit-option-ltr = left to right
fit-option-rtl = right to left
fit-option-single = single
fit-option-stepped = stepped
fit-option-corner = corners, without a knife

fit-allowed-length-mm = a length like 216, 21.6 cm or 8 1/2 in
fit-allowed-length-in = a length like 8 1/2, 8.5 in or 216 mm
fit-allowed-length-between = { $least } to { $most }
fit-allowed-count = a whole number, { $least } to { $most }
fit-allowed-degrees = degrees, { $least } to { $most }
fit-allowed-number = a number, { $least } to { $most }
fit-allowed-plates = page × leaves, separated by commas: 192 × 4, 300 × 2; pages up to { $page }, leaves up to { $leaves }
fit-allowed-borders = two whole numbers up to { $most }: 12, 12
fit-allowed-depths = { $count } lengths, one for each level
fit-allowed-leaves = numbers of leaves up to { $most }, each once: 12_40
# Of a figure in the page's address, or of a book that this browser saved. $given is what stands there.
fit-ignored = { $figure }: “{ $given }” cannot be used and is ignored. Allowed: { $allowed }.
