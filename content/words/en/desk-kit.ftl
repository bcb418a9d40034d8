### The view of one kit on the desk: the author changes it by looking. Lengths come with their unit, angles with °.
### Things on the table are named by the craft; the names stand on small paper tags and begin with “The”.

## The ribbon: what changed, and writing it

desk-kit-back = All kits and classes
# A switch. On: the kit is not published.
desk-kit-draft = Draft
desk-kit-undo = Undo
desk-kit-redo = Redo
# Opens the difference; nothing is written yet.
desk-kit-look-and-write = Look and write
desk-kit-told-same = Nothing to write
desk-kit-told-changed = { $changes ->
    [one] One change, not written yet
   *[other] { $changes } changes, not written yet
 }
desk-kit-told-written = Written. Undo goes back behind it.
desk-kit-told-writing = Writing …
desk-kit-difference = What will be written
# $file: a path.
desk-kit-difference-in = In { $file }, lines with a minus go and lines with a plus come.
desk-kit-write = Write it
desk-kit-not-yet = Not yet
# Of a text that cannot be read; in place of “Write it”.
desk-kit-write-anyway = Write it all the same
desk-kit-write-broken = The site cannot be made of this text, but it can be written.
desk-kit-broken-title = This text cannot be read
desk-kit-broken-lede = Everything on the table is the last state that could be read.
# Opens the file in the author’s editor.
desk-kit-open-at = Open { $place }
desk-kit-opened = Your editor was asked to open it.
desk-kit-foreign-title = The file was changed outside the desk
desk-kit-foreign-lede = Your changes here are not lost, and neither are those.
desk-kit-foreign-meet = Both change the same keys, so only one of them can stay.
desk-kit-keep-mine = Keep mine
desk-kit-take-theirs = Take theirs
desk-kit-merge = Put both together
# While the site is still being read.
desk-kit-loading = The kit is being laid out …
desk-kit-no-kit = There is no kit of this name.

# A kit that is made without a knife: nothing of it is laid out.
desk-kit-corner-title = This kit is folded by corners
desk-kit-corner-lede = Its figures are changed here. Which shapes are joined stands in its file.
# How leaves are folded that show nothing of the picture.
desk-kit-corner-empty = Empty leaves
desk-kit-corner-empty-fold = { $fold ->
    [line] straight, at the ground’s depth
    [half] straight, fore-edge to gutter
   *[middle] both corners to the middle
  }

## The sheet

desk-kit-sheet = The sheet
desk-kit-sheet-show = What lies on the sheet
desk-kit-show-both = Both
desk-kit-show-seen = What will be seen
desk-kit-show-drawn = What is drawn
# The picture for readers of the screen.
desk-kit-sheet-alt = The picture on the front of the book, { $leaves } leaves wide. What differs is listed below it.
desk-kit-sheet-press = Press on a shape to choose it, and the leaf below it.
desk-kit-leaf-slider = Leaf on the table
# $at: as in “leaf 13, p. 17”. $cuts: how many.
desk-kit-leaf-told = { $at }, { $cuts ->
    [0] no cut
    [one] one cut
   *[other] { $cuts } cuts
 }
desk-kit-marks = Where it will look different
desk-kit-marks-none = It will look as it is drawn.
desk-kit-marks-step = { $number } of { $of }
desk-kit-marks-before = Before
desk-kit-marks-next = Next
desk-kit-key-slivers = merged strips
desk-kit-key-hidden = hidden by a side
desk-kit-key-out-of-reach = out of reach
desk-kit-key-narrow = lost or thin details
# $at: as in “leaf 13, p. 17”.
desk-kit-mark-slivers = { $strips ->
    [one] One strip of “{ $level }” is merged with “{ $into }”, { $at }.
   *[other] { $strips } strips of “{ $level }” are merged with “{ $into }”, from { $at }.
 }
desk-kit-mark-hidden = Part of “{ $level }” hides behind a prouder leaf, { $at }.
desk-kit-mark-unreached = “{ $level }” does not reach this far out, { $at }.
desk-kit-mark-narrow = A part of “{ $level }” is shown by one leaf only, { $at }.
desk-kit-mark-unseen = A part of “{ $level }” falls between the leaves, { $at }.

## Shapes and their levels

desk-kit-shapes = The shape
desk-kit-shape-choose = Shape
# $name: as in “<path> #wave”. $level: a level’s name.
desk-kit-shape-option = { $name } · { $level }
desk-kit-shape-none = No shape is chosen.
desk-kit-shape-level = Its level
# A shape that stands in no file, such as a word, has its level in the picture’s own keys.
desk-kit-shape-fixed = This shape’s level is stated for its whole layer; change it in the file.
desk-kit-shape-of-whole = It changes together with everything in its group.

## The leaf

desk-kit-leaf = The leaf
desk-kit-leaf-alt = One leaf from its side: how far each strip is folded, and where it is cut.
desk-kit-leaf-unfolded = This leaf stays as it is.
# $level: its name; read to whoever moves the line.
desk-kit-depth = Depth of { $level }
desk-kit-depths = Depths

## The gauge

desk-kit-gauge = The gauge
desk-kit-gauge-top = Head edge to the picture
desk-kit-gauge-foot = Picture’s height
desk-kit-gauge-solved = { $height }, worked out

## The front and the piece in the round

desk-kit-piece = The piece
desk-kit-piece-alt = The finished book from the front.
desk-kit-front = Front
desk-kit-round = In the round
desk-kit-lamp-on = Lamp lit
desk-kit-round-loading = The view is being fetched …

## The slip: the numbers that matter

desk-kit-slip = The slip
desk-kit-cuts = Cuts
desk-kit-time = Time
desk-kit-merged = Merged strips
desk-kit-hold = Hold width
desk-kit-angle = Opening
desk-kit-leaves = Picture leaves
desk-kit-working = Being worked out …
desk-kit-verdict-fits = It will come out well
desk-kit-verdict-check = Look at this first
desk-kit-verdict-poor = It will come out poorly
desk-kit-verdict-unfit = It cannot be made so
desk-kit-ways = What helps
desk-kit-no-way = No change that was tried helps enough.
desk-kit-more-findings = { $count ->
    [one] One thing more
   *[other] { $count } things more
 }

## The opening

desk-kit-opening = The opening
desk-kit-solve = Worked out from the rest
desk-kit-solve-opening = how far it opens
desk-kit-solve-height = the picture’s height
desk-kit-solve-leaves = the picture leaves
desk-kit-solve-nothing = nothing: stretch it
desk-kit-border-before = Border leaves before
desk-kit-border-after = Border leaves after
desk-kit-picture-leaves = Picture leaves
desk-kit-fill = all between
desk-kit-least-tab = Least strip
desk-kit-centre = Centre it on the leaf

## The book

desk-kit-book = The book

## The lamp

desk-kit-lamp = The lamp
desk-kit-lamp-none = No light stands in this book.
desk-kit-lamp-add = Put a light in
desk-kit-lamp-out = Take the light out
desk-kit-lamp-in = Stands in
desk-kit-lamp-diameter = Width
desk-kit-lamp-height = Height
desk-kit-lamp-setback = Behind the front
desk-kit-lamp-clearance = Free all round
desk-kit-lamp-floor = Floor, from the head
desk-kit-lamp-auto = Lowest that is wide enough

## The door

desk-kit-door = The door
desk-kit-door-none = No window closes this book.
desk-kit-door-add = Hang a window
desk-kit-door-out = Take the window away
desk-kit-door-alt = The closed window from the front.
desk-kit-door-outline = Cut along
desk-kit-door-lip = Glue lip
desk-kit-door-hinge = Hinge
desk-kit-door-left = left
desk-kit-door-right = right
desk-kit-door-panel = Panel
desk-kit-door-wrap = bent round
desk-kit-door-flat = flat
desk-kit-motif-add = Add a motif
desk-kit-motif-choose = Choose one
desk-kit-motif-shelf-empty = There are no motifs in content/motifs.
desk-kit-motif = Motif
desk-kit-motif-across = From the left
desk-kit-motif-down = From above
desk-kit-motif-width = Width
desk-kit-motif-out = Take it out
desk-kit-motif-covers = Covers the light
# For who moves it by keys: $name is the motif’s.
desk-kit-motif-move = { $name }: move it with the arrow keys
desk-kit-motif-at = { $across } from the left, { $down } from above

## Help

# Keys of all handles.
desk-kit-keys = Arrow keys move a handle by the finest step, with Shift by a large one.
