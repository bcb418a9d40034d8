### Words in the drawings of page and packet: labels beside lines, and what each drawing shows, told to those who cannot see it.
### Labels have little room: keep them about as long as here. Lengths come with their unit.

## Said in several drawings

draw-head = head
draw-tail = tail
draw-gutter = gutter
draw-fore-edge = fore-edge
# The edge that a leaf gets when it is folded whole at the front level's line.
draw-folded-edge = folded edge
draw-head-edge = head edge
draw-spine = spine
draw-flap = flap
draw-glue = glue
draw-light = light
draw-dot-of-glue = dot of glue
draw-this-leaf = this leaf
draw-next-leaf = next leaf
draw-from-front = from the front
draw-from-head = from the head
draw-look-from-here = you look from here
draw-hold-width = hold width { $width }
draw-cut = cut { $depth }

## The kinds of lines

draw-line-cut = cut
draw-line-score = score
draw-line-position = position

draw-legend = What the lines mean. Heavy: a cut. Thin: an edge. Dashed: a score line. Dash-dot: a position only. Grey band: a folded edge. Thin with ticks: a dimension. Narrow strip: a leaf seen edge-on. Arrow: move this way. White number on black: the order of the work. Filled dot: glue.
draw-legend-cut = cut
draw-legend-edge = edge
draw-legend-score = score line
draw-legend-position = position only
draw-legend-dimension = dimension
draw-legend-folded = folded edge
draw-legend-leaf = leaf edge-on
draw-legend-move = move this way
# Stands beside a white number on a black disc.
draw-legend-turn = order of work

## Calibration bars of a true-scale sheet: what a ruler must show on them, and what to do

draw-bar-across = { $length } across: { $least } to { $most } is good
draw-bar-upright = { $length } upright: { $least } to { $most } is good
draw-bar-print = 1 print at “actual size” or 100%
draw-bar-measure = 2 measure both bars with your ruler
draw-bar-change = 3 outside the band, change the scale
draw-bar-alike = 4 print all true-scale sheets alike

## The scoring gauges to cut out: the one that is pricked, and strips with one straight edge for each line

draw-gauge-flush = this edge flush with the fore-edge
draw-gauge-make = Print on card, or prick holes and corners through to card. Cut along the full outlines.
draw-gauge-pricked = The gauge: prick dots through the holes of a dashed line, and join them along a ruler.
draw-gauge-strips = Or the strips: lay one long edge flush with the fore-edge, and score along the other.
# A level by its number in the pattern table and its name.
draw-gauge-level = { $number } { $level }
# Beside a line: the levels folded at it, the line's number, its distance from the fore-edge.
draw-gauge-line = line { $line } · { $depth }
draw-gauge-used-line = { $levels } · line { $line } · { $depth }
draw-gauge-own-line = { $levels } · { $depth }
# On a strip: the levels folded at its edge, the line's number, its width.
draw-gauge-strip = { $levels }: line { $line }, { $depth }
draw-gauge-own-strip = { $levels }: { $depth }

## Marking strips

draw-strip-first = Cut apart, fold the tab over the head edge, copy the marks.
draw-strip-next = Lay the top line on your own mark at { $from } from the head.
draw-strip-key = Top: leaf, book page, (pattern page). Fields: level. › cut depth from the { $style ->
    [stepped] folded edge
   *[single] fore-edge
 }.
# On a leaf without a printed page number, where "p. 137" stands on others.
draw-strip-no-page = no p.
draw-strip-notch = notch, { $depth } deep

## Templates of the parts

draw-template-sheet = sheet { $number } of { $of }
draw-template-tile = { $part }, sheet { $number } of { $of }
# The letter by which a part is found on its sheet.
draw-template-letter = { $letter }
draw-template-key = { $letter } { $part }: { $count } of { $material }, { $face ->
    [either] either face
   *[front] face toward you
 }
# $marks are what the position lines on the part mean.
draw-template-key-marks = { $letter } { $part }: { $count } of { $material }, { $face ->
    [either] either face
   *[front] face toward you
 }; position: { $marks }
draw-template-cut-only = Cut on full lines only. Arrowheads: grain.
# Two sheets that belong side by side carry the same number at their match lines.
draw-template-match = match { $number }
draw-template-map = Black: this sheet. Lay the sheets so that match lines with the same number lie on each other, and tape them.

## The window's parts

# A part and what it is for.
draw-part = { $part }: { $use }
draw-layers = The window from the book outward: { $frame }, then { $glazing }, then { $door }.
draw-layers-book = book
draw-layers-you = you

## The pocket for the light

draw-pocket-plan = The pocket from above, { $height } from the head. { $notches ->
    [one] One leaf is
   *[other] { $notches } leaves are
 } cut back so that the light, { $diameter } wide, stands { $setback } behind the front with { $clearance } free all round. Every third leaf is drawn.
draw-pocket-diameter = Ø { $diameter }
draw-pocket-elevation = The pocket from the front. Its floor is { $floor } from the head edge. The light is { $height } tall, and the notches begin { $clearance } above it.

## The finished book

draw-front = { $title }: { $mood ->
    [lit] the finished book, lit from inside
   *[day] the opened book
 }, seen from the front, with { $levels ->
    [one] one level
   *[other] { $levels } levels
 } and { $leaves ->
    [one] one folded leaf
   *[other] { $leaves } folded leaves
 }

## Measuring the book

draw-measure = Measuring the book. Leaf height, head to tail: { $height }. Leaf width, fore-edge to gutter: { $width }. Thickness of all { $leaves } leaves, pressed together without the boards: { $thickness }. { $leaves } leaves are { $pages } pages.
draw-measure-height = leaf height { $height }
draw-measure-width = leaf width { $width }
draw-measure-thickness = thickness { $thickness }
draw-measure-leaves = { $leaves } leaves
draw-measure-pages = = { $pages } pages
draw-measure-one-leaf = one leaf
draw-measure-pressed = pressed, without boards

## One leaf is two pages

# $front and $back are printed pages ("p. 17") or "no number".
draw-pages = One leaf is two pages. Pattern page 1 is leaf { $leaf } of the book. Its front, the recto, is { $front }; its back, the verso, is { $back }. Pattern pages count fronts only: 1, 3, 5 and so on.
# $name is a leaf without a page number: "plate 1 of 4 after p. 192".
draw-pages-unnumbered = One leaf is two pages. Pattern page 1 is leaf { $leaf } of the book, { $name }. Neither of its pages has a printed number. Pattern pages count fronts only: 1, 3, 5 and so on.
draw-pages-front = its front, recto
draw-pages-back = turned: its back, verso
draw-pages-no-number = no number
draw-pages-pattern = pattern page { $page }
draw-pages-sheet = one sheet: leaf { $leaf } = { $front } and { $back }
draw-pages-sheet-unnumbered = one sheet: leaf { $leaf } = two pages without numbers
draw-pages-first = Pattern page 1 is leaf { $leaf }, page 3 the next leaf.

## Scoring

# $lines is a list of the gauge's lines.
draw-scoring = Scoring. Above: the gauge lies on the page, its edge flush with the fore-edge. Its lines, measured from the fore-edge: { $lines }. Press along a line with a bone folder. Below: the open book from the tail. The working side is lower, so packing goes under it and the gauge lies level, for example { $packing } at leaf { $leaf }. Thickness is exaggerated.
draw-scoring-line = line { $line } at { $depth }
draw-scoring-used-line = line { $line } at { $depth } for { $levels }
draw-scoring-own-line = { $depth } for { $levels }
draw-scoring-level = { $depth } { $level }
draw-scoring-gauge = gauge
draw-scoring-flush = flush with the fore-edge
draw-scoring-bone-folder = bone folder
draw-scoring-turned = turned leaves
draw-scoring-packing = packing { $packing } before leaf { $leaf }
draw-scoring-level-gauge = gauge lies level
draw-scoring-from-tail = seen from the tail

## The folds

# A step's number and what is done.
draw-fold-score = Score both lines
draw-fold-cut = Mark and cut
draw-fold-each = Fold each strip back
draw-fold-tuck = Tuck behind the leaf
draw-fold-whole = Fold it all at { $depth }
draw-fold-again = Fold again and tuck
draw-fold-mat = mat under this leaf
draw-fold-foot = Upper: the page before you. Lower: the same leaf edge-on, seen from the head; thickness exaggerated.
draw-fold-single = The single fold in four steps, for two neighbouring strips at levels { $upper } and { $lower }. 1: score the lines at { $nearer } and { $deeper } from the fore-edge. 2: mark, and cut from the fore-edge { $deeper } inward, on a mat. 3: fold each strip back at its own line, the upper one at { $upperDepth }, the lower one at { $lowerDepth }. 4: tuck the flaps between this leaf and the next.
draw-fold-stepped = The stepped fold in four steps, for two neighbouring strips at levels { $upper } and { $lower }. 1: score the lines at { $front } and { $deeper } from the fore-edge. 2: fold the whole leaf back at { $front }. 3: mark, and cut from the folded edge { $cut } inward, through both layers, on a mat. 4: fold the deeper strip back again at its line and tuck it between this leaf and the next. The other stays at the folded edge.

## How deep to cut

draw-cut-mark = mark { $mark } from the head
# $depth and $front are numbers without a unit.
draw-cut-rule-stepped = cut = { $depth } − { $front } = { $cut }
draw-cut-rule-single = cut = the deeper of { $upper } and { $lower }: { $cut }
draw-cut-depth-stepped = How deep to cut, on leaf { $leaf } at the mark { $mark } from the head. Above the mark the leaf is at level { $upper }, { $upperDepth } from the fore-edge; below it at level { $lower }, { $lowerDepth }. The cut reaches the deeper of the two. The leaf is already folded at { $front }, so the cut starts at the folded edge and is { $cut } long.
draw-cut-depth-single = How deep to cut, on leaf { $leaf } at the mark { $mark } from the head. Above the mark the leaf is at level { $upper }, { $upperDepth } from the fore-edge; below it at level { $lower }, { $lowerDepth }. The cut reaches the deeper of the two. It starts at the fore-edge and is { $cut } long.

## One leaf whole

draw-leaf-title = Leaf { $leaf }, p. { $page }, pattern page { $patternPage }
# $name is a leaf without a page number: "plate 1 of 4 after p. 192".
draw-leaf-title-unnumbered = Leaf { $leaf }, { $name }, pattern page { $patternPage }
draw-leaf-mark-cut = mark › cut
draw-leaf-fold = fold at level
draw-leaf-notch = notch for the light: { $from } to { $to }
draw-leaf-notch-depth = { $depth } deep from the unfolded fore-edge
# $title is the leaf with its pages; $units the symbol of the heights' unit; $spans (the strips) and $cuts are lists.
draw-leaf = One leaf whole: { $title }. Heights from the head in { $units }. Strips: { $spans }. Marks and cuts from the { $style ->
    [stepped] folded edge
   *[single] fore-edge
 }: { $cuts }.
draw-leaf-plain = One leaf whole: { $title }. Heights from the head in { $units }. Strips: { $spans }. There are no marks.
draw-leaf-span = { $from } to { $to } at level { $level }
draw-leaf-cut = { $at } cut { $depth }
draw-leaf-with-notch = A notch for the light goes from { $from } to { $to }, { $depth } deep from the unfolded fore-edge.

## Tucking flaps behind

draw-tucking = Two leaves edge-on, seen from the head. Leaf { $leaf } is folded at { $depth }. Its flap lies behind it, and the next leaf, folded at the same depth, holds it.
draw-tucking-all-held = Every flap of this kit is held like this: there is nothing to glue.
draw-tucking-deeper = Leaf { $leaf } is folded at { $depth }. The next leaf is deeper, folded at { $next }, so { $loose } of the flap is loose: put a dot of glue between flap and leaf.
draw-tucking-last = Leaf { $leaf } is folded at { $depth }. There is no next leaf behind it: put a dot of glue between flap and leaf.
draw-tucking-held-title = Held by the next leaf
draw-tucking-deeper-title = Loose, as the next leaf is deeper: glue it
draw-tucking-last-title = Loose, as no leaf follows: glue it
draw-tucking-loose = { $width } loose
draw-tucking-foot = seen edge-on from the head, thickness exaggerated

## Holding the book open

draw-hold = The opened book from above. The hold width is { $width }, straight across between the folded edges of the first picture leaf, leaf { $first }, and the last, leaf { $last }. The boards’ edges are then { $boards } apart.
draw-hold-boards = boards { $width }
draw-holder = The holder in place, seen from the front. The strip of card sits on the head edge. One slot is over the first picture leaf, leaf { $first }; the other, { $width } away, is over the last, leaf { $last }. It stays there until all glue is dry.
draw-holder-slot = slot over leaf { $leaf }

## Hanging and closing the door

draw-hinge = The hinge at the { $side ->
    [left] left
   *[right] right
 }, edge-on from the head, the viewer below. The flap, { $flap } wide, is folded back under the door along the score line. It is glued to the face of the base frame, which is glued on the book’s front tips. The glazing is glued behind the door. First closed, then open: only the door moves. Thickness is exaggerated.
draw-hinge-closed = closed
draw-hinge-open = open
draw-hinge-tips = front tips
draw-hinge-flap = flap { $width }
draw-hinge-moves = only the door moves
draw-hinge-stays = flap stays

draw-closing = Closing the door. From the front: a card tab, glued behind the base frame, stands out beyond the edge opposite the hinge. The button is glued on the door. A loop of { $string } of string goes through the tab’s hole and round the button. Below, the same from the head: front tips of the book, tab, base frame, door with button. Thickness is exaggerated.
draw-closing-string = string { $string }
draw-closing-button = button
draw-closing-tab = tab
draw-closing-tab-glued = tab, glued behind the base frame
