### Why a kit does not fit a book, and what may disappoint. Lengths come with their unit ("118 mm"), angles with their sign ("180°").
### For each reason: -why is told to a reader and a teacher, -given and -allowed to a kit's author, and -do-author, -do-reader and
### -do-teacher say to each of them what would help. Words such as lastPage are keys of a file and stay as they are.
### Straight quotes stand around what is typed in a file; everywhere else quotes are typographic.

## The book

fail-pages-need-more-leaves-why = Page { $lastPage }, with page 1 on leaf { $pageOneLeaf }, needs { $needed } leaves. This book has { $leaves }. A leaf is two pages.
fail-pages-need-more-leaves-given = page { $lastPage } of a book of { $leaves } leaves whose page 1 is on leaf { $pageOneLeaf }
fail-pages-need-more-leaves-allowed = { $needed } leaves would be needed (a leaf is two pages)
fail-pages-need-more-leaves-do-author = count the leaves again, or correct lastPage, pageOneLeaf or plates
fail-pages-need-more-leaves-do-reader = Count the leaves again, or correct the last page, the leaf with page 1, or the plates.
fail-pages-need-more-leaves-do-teacher = Count this seat’s leaves again, or correct its cell lastPage, pageOneLeaf or plates.

fail-no-page-why = { $plates ->
    [0] Page 1 cannot be on leaf { $pageOneLeaf }. This book has { $leaves } leaves.
   *[other] Page 1 on leaf { $pageOneLeaf } and { $plates } plates leave no leaf for a page. This book has { $leaves } leaves.
  }
fail-no-page-given = page 1 on leaf { $pageOneLeaf }, and { $plates ->
    [one] { $plates } unnumbered leaf
   *[other] { $plates } unnumbered leaves
  } between the pages
fail-no-page-allowed = at least one of the book’s { $leaves } leaves with a page
fail-no-page-do-author = count again from the first leaf; plates are counted in leaves, not pages
fail-no-page-do-reader = Count again from the first leaf. Plates are counted in leaves, not pages.
fail-no-page-do-teacher = Correct this seat’s cells pageOneLeaf and plates. Plates are counted in leaves, not pages.

fail-plates-after-last-page-why = Plates cannot come after page { $afterPage }. The last page is { $lastPage }.
fail-plates-after-last-page-given = plates after page { $afterPage }
fail-plates-after-last-page-allowed = a printed page, 1 to { $lastPage }
fail-plates-after-last-page-do-author = leaves after the last page need no entry: they are unnumbered end leaves
fail-plates-after-last-page-do-reader = Correct the last page or the plates. Leaves after the last page need no entry.
fail-plates-after-last-page-do-teacher = Correct this seat’s cell lastPage or plates. Leaves after the last page need no entry.

fail-too-few-leaves-why = { $before } border leaves, { $picture } picture leaves and { $after } border leaves make { $sum }. This book has { $leaves }.
fail-too-few-leaves-given = { $before } border leaves + { $picture } picture leaves + { $after } border leaves = { $sum }
fail-too-few-leaves-allowed = the book has { $leaves } leaves
fail-too-few-leaves-do-author = { $room ->
    [none] use narrower borders or a thicker book
   *[some] use at most { $most } picture leaves, narrower borders or a thicker book
 }
fail-too-few-leaves-do-reader = Fold fewer border leaves, or choose a book with more leaves.
fail-too-few-leaves-do-teacher = Lower this seat’s borderBefore and borderAfter, or give it a thicker book.

fail-levels-out-of-order-why = The level “{ $level }” is { $depth } deep. It must lie deeper than “{ $ahead }” at { $before }.
fail-levels-out-of-order-given = "{ $level }" at { $depth } after "{ $ahead }" at { $before }
fail-levels-out-of-order-allowed = depths that increase from level to level
fail-levels-out-of-order-do-author = put the levels in order, or deepen this one
fail-levels-out-of-order-do-reader = Make “{ $level }” deeper than { $before }, or “{ $ahead }” shallower.
fail-levels-out-of-order-do-teacher = Raise or lower this seat’s depths until each is more than the one before.

fail-flap-in-gutter-why = The level “{ $level }” is { $depth } deep, so its flap reaches { $reach } inward. The leaf is { $leafWidth } wide, and { $clearance } must stay free at the gutter.
fail-flap-in-gutter-given = level "{ $level }" is { $depth } deep, its flap reaches { $reach } inward
fail-flap-in-gutter-allowed = leaf width { $leafWidth } less { $clearance } clearance at the gutter
# $room: none where no fold at all has room.
fail-flap-in-gutter-do-author = { $room ->
    [none] choose a wider book, or lower fit.gutterClearance
   *[some] the deepest fold possible is { $deepest } ({ $style ->
        [stepped] stepped folds
       *[single] single folds
    })
 }
fail-flap-in-gutter-do-reader = { $room ->
    [none] Choose a wider book.
   *[some] The deepest fold possible is { $deepest }. Make the levels shallower, or choose a wider book.
 }
fail-flap-in-gutter-do-teacher = { $room ->
    [none] Give this seat a wider book.
   *[some] The deepest fold possible is { $deepest }: lower this seat’s depths, or give it a wider book.
 }

## Picture and opening

fail-needs-knife-why = { $part ->
    [light] The room for a light is cut, and nothing is cut where corners are folded.
   *[window] A window closes an opening that is cut, and nothing is cut where corners are folded.
 }
fail-needs-knife-given = { $part ->
    [light] a light, in a kit with foldStyle: corner
   *[window] an insert, in a kit with foldStyle: corner
 }
fail-needs-knife-allowed = nothing that is cut: no light and no insert
fail-needs-knife-do-author = { $part ->
    [light] take light out, or set foldStyle to single or stepped
   *[window] take insert out, or set foldStyle to single or stepped
 }
fail-needs-knife-do-reader = Choose single or stepped folds.
fail-needs-knife-do-teacher = Set this seat’s foldStyle to single or stepped.

fail-background-shown-why = The level “{ $level }” is the background, so there is no outline for folded corners to show.
fail-background-shown-given = "{ $level }" as the background and as a level that folded corners show
fail-background-shown-allowed = shown levels that stand out from the background
fail-background-shown-do-author = make a deeper level the background, or set foldStyle to single or stepped
fail-background-shown-do-reader = Choose single or stepped folds.
fail-background-shown-do-teacher = Set this seat’s foldStyle to single or stepped.

fail-no-room-for-corners-why = The leaf is { $leafWidth } wide, and { $clearance } must stay free at the gutter. A folded corner needs { $least }.
fail-no-room-for-corners-given = leaf width { $leafWidth } less { $clearance } clearance at the gutter
fail-no-room-for-corners-allowed = at least { $least } for a folded corner
fail-no-room-for-corners-do-author = lower fit.gutterClearance, or choose a wider book
fail-no-room-for-corners-do-reader = Choose a book with wider leaves.
fail-no-room-for-corners-do-teacher = Give this seat a book with wider leaves.

fail-nothing-to-show-why = At { $height } tall, every strip that folded corners would show is shorter than { $leastTab }.
fail-nothing-to-show-given = the picture, of which no leaf would show a strip
fail-nothing-to-show-allowed = shapes of the shown levels that are at least { $leastTab } tall on the leaves
fail-nothing-to-show-do-author = see that they lie inside the viewBox and are not covered, raise the height, or join levels with fit.corner.levels
fail-nothing-to-show-do-reader = Make the picture taller.
fail-nothing-to-show-do-teacher = Raise this seat’s height.

fail-opening-too-wide-why = The book cannot be opened to { $opening } for this picture; { $widest } is the widest.
fail-opening-too-wide-given = an opening of { $opening }
fail-opening-too-wide-allowed = at most { $widest }
fail-opening-too-wide-do-author = open the book to { $widest } or less
fail-opening-too-wide-do-reader = Open the book to { $widest } or less.
fail-opening-too-wide-do-teacher = Choose another kit for this seat: its opening belongs to the kit.

fail-picture-off-leaf-why = The picture would end { $end } from the head. The leaf is { $leafHeight } tall.
fail-picture-off-leaf-given = head { $head } + height { $height }{ $solved ->
    [yes] {" "}(solved)
   *[no] {""}
 }
fail-picture-off-leaf-allowed = the leaf is { $leafHeight } tall
# $place: none where no picture has room below the head.
fail-picture-off-leaf-do-author = { $place ->
    [none] lower the head, or choose a taller book
    [solved] lower the opening or use fewer picture leaves until the height is at most { $room }, or choose a taller book
   *[some] lower the height to at most { $room }{ $stated ->
        [yes] {" "}or the head
       *[no] {""}
    }, or choose a taller book
 }
fail-picture-off-leaf-do-reader = { $place ->
    [none] Choose a taller book.
   *[some] Make the picture at most { $room } tall, or choose a taller book.
 }
fail-picture-off-leaf-do-teacher = { $place ->
    [none] Lower this seat’s head, or give it a taller book.
   *[some] Set this seat’s height to at most { $room }, or give it a taller book.
 }

fail-picture-too-narrow-why = A picture { $height } tall is { $width } wide. Even closed, { $leaves } picture leaves of this book are { $least } thick.
fail-picture-too-narrow-given = a picture { $height } tall is { $width } wide
fail-picture-too-narrow-allowed = even closed, { $leaves } picture leaves of this book are { $least } thick
# $room: none where the leaf has no room for the least height.
fail-picture-too-narrow-do-author = { $room ->
    [none] use fewer picture leaves
   *[some] raise the height to at least { $leastHeight } or use fewer picture leaves
 }
fail-picture-too-narrow-do-reader = { $room ->
    [none] Fold more leaves as borders.
   *[some] Make the picture at least { $leastHeight } tall, or fold more leaves as borders.
 }
fail-picture-too-narrow-do-teacher = { $room ->
    [none] Raise this seat’s borderBefore and borderAfter.
   *[some] Set this seat’s height to at least { $leastHeight }, or raise its borderBefore and borderAfter.
 }

fail-picture-too-wide-why = A picture { $height } tall is { $width } wide. Opened to { $widest }, { $leaves } picture leaves of this book fill only { $most }.
fail-picture-too-wide-given = a picture { $height } tall is { $width } wide
fail-picture-too-wide-allowed = at { $widest } this book can show at most { $most } with { $leaves } picture leaves
# $help: leaves where more picture leaves would do, and with -only where no lower height would.
fail-picture-too-wide-do-author = { $help ->
    [leaves-only] use { $enough } picture leaves (smaller borders)
    [book-only] choose a book with more or wider leaves
    [leaves] lower the height to { $mostHeight }, or use { $enough } picture leaves (smaller borders)
   *[book] lower the height to { $mostHeight }, or choose a book with more or wider leaves
 }
fail-picture-too-wide-do-reader = { $help ->
    [leaves] Make the picture { $mostHeight } tall, or fold fewer border leaves, so that { $enough } leaves carry it.
    [book] Make the picture { $mostHeight } tall, or choose a book with more or wider leaves.
   *[only] Choose a book with more or wider leaves.
 }
fail-picture-too-wide-do-teacher = { $help ->
    [leaves] Set this seat’s height to { $mostHeight }, or lower its borderBefore and borderAfter, so that { $enough } leaves carry the picture.
    [book] Set this seat’s height to { $mostHeight }, or give it a book with more or wider leaves.
   *[only] Give this seat a book with more or wider leaves.
 }

fail-leaves-show-too-little-why = A picture { $height } tall is { $width } wide. At { $opening }, the { $leaves } leaves between the borders fill only { $most }.
fail-leaves-show-too-little-given = a picture { $height } tall and { $width } wide at { $opening }
fail-leaves-show-too-little-allowed = the { $leaves } leaves between the borders fill only { $most }
fail-leaves-show-too-little-do-author = { $help ->
    [opening-only] open the book to { $openingNeeded }, or choose a book with more leaves
    [book-only] choose a book with more leaves
    [opening] open the book to { $openingNeeded }, or lower the height to { $mostHeight }, or choose a book with more leaves
   *[book] lower the height to { $mostHeight }, or choose a book with more leaves
 }
fail-leaves-show-too-little-do-reader = { $help ->
    [opening] Open the book to { $openingNeeded }, make the picture { $mostHeight } tall, or choose a book with more leaves.
    [book] Make the picture { $mostHeight } tall, or choose a book with more leaves.
   *[only] Choose a book with more leaves.
 }
fail-leaves-show-too-little-do-teacher = { $help ->
    [opening] Set this seat’s height to { $mostHeight }, or give it a book with more leaves.
    [book] Set this seat’s height to { $mostHeight }, or give it a book with more leaves.
   *[only] Give this seat a book with more leaves.
 }

fail-picture-flat-why = At { $height } tall, all strips are shorter than { $leastTab }, too short to fold. No leaf would be cut.
fail-picture-flat-given = the picture, which gives no leaf a cut
fail-picture-flat-allowed = a picture with at least two levels that the leaves show
fail-picture-flat-do-author = see that shapes lie inside the viewBox, do not cover all of each other, and are higher than leastTab
fail-picture-flat-do-reader = Make the picture taller.
fail-picture-flat-do-teacher = Raise this seat’s height.

fail-lost-leaf-outside-why = Leaf { $leaf } carries no picture: the picture leaves run from { $first } to { $last }.
fail-lost-leaf-outside-given = leaf { $leaf }
fail-lost-leaf-outside-allowed = picture leaves are { $first } to { $last }
fail-lost-leaf-outside-do-author = a border leaf changes nothing in the picture: take it off the list
fail-lost-leaf-outside-do-reader = A border leaf that is left out changes nothing in the picture. Go on with the next one.
fail-lost-leaf-outside-do-teacher = A border leaf that is left out changes nothing in the picture.

fail-too-few-remain-why = { $lost } of { $leaves } picture leaves are left out, and two must remain.
fail-too-few-remain-given = { $lost } of { $leaves } picture leaves
fail-too-few-remain-allowed = two picture leaves remain
fail-too-few-remain-do-author = start again with another book
fail-too-few-remain-do-reader = Start again with another book.
fail-too-few-remain-do-teacher = Start again with another book.

## Light

fail-no-room-for-light-why = A light { $diameter } wide and { $height } tall with { $clearance } of free space does not fit: { $obstacle }.
fail-no-room-for-light-given = a light { $diameter } wide and { $height } tall with { $clearance } clearance: { $obstacle }
# $choice says which of the two largest lights there are: both, only a width, only a height, or none.
fail-no-room-for-light-allowed = { $choice ->
    [both] the largest that can stand here: one { $height } tall may be { $mostDiameter } wide, or one { $diameter } wide may be { $mostHeight } tall
    [width] the largest that can stand here: one { $height } tall may be { $mostDiameter } wide
    [height] the largest that can stand here: one { $diameter } wide may be { $mostHeight } tall
   *[none] no light of this width or height can stand in "{ $level }"
 }
fail-no-room-for-light-do-author = { $choice ->
    [none] choose another region for light.in, a larger picture or a wider book
   *[some] choose a smaller light, a larger picture or a wider region
 }
fail-no-room-for-light-do-reader = { $choice ->
    [both] Here, a light { $height } tall may be up to { $mostDiameter } wide, or one { $diameter } wide up to { $mostHeight } tall. Or make the picture larger.
    [width] Here, a light { $height } tall may be up to { $mostDiameter } wide. Or make the picture larger.
    [height] Here, a light { $diameter } wide may be up to { $mostHeight } tall. Or make the picture larger.
   *[none] No light of this width or height has room here. Make the picture larger, or choose a wider book.
 }
fail-no-room-for-light-do-teacher = { $choice ->
    [both] Give this seat a light up to { $mostDiameter } wide (light: diameter), or up to { $mostHeight } tall (light: height), or raise its height.
    [width] Give this seat a light up to { $mostDiameter } wide (light: diameter), or raise its height.
    [height] Give this seat a light up to { $mostHeight } tall (light: height), or raise its height.
   *[none] Raise this seat’s height, or give it a wider book.
 }

obstacle-nowhere-wide = “{ $level }” is nowhere { $need } wide over { $height } of height
obstacle-level-absent = “{ $level }” is not there at { $floor } from the head
obstacle-above-head = it would reach { $by } above the head
obstacle-little-paper = leaf { $leaf } would keep { $remaining } of paper at the gutter, and { $least } is needed

fail-light-near-window-why = The light would stand only { $free } behind the closed window. It needs { $clearance }.
fail-light-near-window-given = the light would stand { $free } behind the closed { $panel ->
    [flat] door
   *[wrap] window
 }
fail-light-near-window-allowed = at least its clearance, { $clearance }
# $room: none where a setback as large as that cannot be stated.
fail-light-near-window-do-author = { $room ->
    [none] use a narrower light
   *[some] raise the setback by { $more }
 }
fail-light-near-window-do-reader = Use a narrower light.
fail-light-near-window-do-teacher = Give this seat a narrower light (light: diameter).

## Window

fail-outline-hidden-why = The level “{ $level }”, which the window follows, cannot be seen in the picture.
fail-outline-hidden-given = "{ $level }" cannot be seen in the picture
fail-outline-hidden-allowed = a level that shows as one region
fail-outline-hidden-do-author = name another level
fail-outline-hidden-do-reader = This is a fault of the kit. Its author can name another level.
fail-outline-hidden-do-teacher = This is a fault of the kit. Its author can name another level.

fail-hole-breaks-why = { $fate ->
    [closes] With a lip of { $lip }, the window’s hole closes up.
   *[breaks] With a lip of { $lip }, the window’s hole falls into pieces.
 }
fail-hole-breaks-given = a lip of { $lip } { $fate ->
    [closes] closes the hole up
   *[breaks] breaks the hole into pieces
 }
fail-hole-breaks-allowed = { $holds ->
    [yes] a lip of at most { $most } for "{ $level }"
   *[no] "{ $level }" takes a lip of at most { $most }, and { $least } is the least that holds
 }
fail-hole-breaks-do-author = { $holds ->
    [yes] make the lip smaller or the hole’s narrow places wider
   *[no] make the hole’s narrow places wider or choose another outline
 }
fail-hole-breaks-do-reader = Make the picture larger, so that the hole’s narrow places grow wider.
fail-hole-breaks-do-teacher = Raise this seat’s height, so that the hole’s narrow places grow wider.

fail-no-hinge-why = { $side ->
    [left] The window’s left side has no straight stretch of { $shortest } for a hinge.
   *[right] The window’s right side has no straight stretch of { $shortest } for a hinge.
 }
fail-no-hinge-given = { $side ->
    [left] no straight stretch of { $shortest } at the left of "{ $level }" with card for a flap behind it
   *[right] no straight stretch of { $shortest } at the right of "{ $level }" with card for a flap behind it
 }
fail-no-hinge-allowed = a side where at most { $bulge } of the outline bulges beyond a straight hinge
fail-no-hinge-do-author = hinge the other side, widen the lip or choose another outline
fail-no-hinge-do-reader = Make the picture larger, so that the hinge has room.
fail-no-hinge-do-teacher = Raise this seat’s height, so that the hinge has room.

fail-glazing-too-small-why = With a lip of { $lip }, the glazing would not reach { $overlap } past the hole all round.
fail-glazing-too-small-given = with a lip of { $lip } the glazing would not reach { $overlap } past the hole all round
fail-glazing-too-small-allowed = an outline wider than its hole by twice that
fail-glazing-too-small-do-author = choose another outline or lip
fail-glazing-too-small-do-reader = Make the picture larger, so that the frame grows wider.
fail-glazing-too-small-do-teacher = Raise this seat’s height, so that the frame grows wider.

## What can be made but may disappoint

doubt-caliper-thin = Check the book: one leaf would be { $caliper } thick, and { $least } to { $most } is usual. Pages may have been counted as leaves: { $leaves } pages are { $half } leaves.
doubt-caliper-thick = Check the book: one leaf would be { $caliper } thick, and { $least } to { $most } is usual. Measure the leaves pressed, without the boards, and count every leaf.
doubt-unnumbered-leaves = Check the book: { $unnumbered } leaves after page { $lastPage } would carry no number. If { $leaves } is the number of pages, the book has { $half } leaves.
doubt-springs-open = The folded flaps will push the book open to about { $resting }. The picture has its true shape at { $opening }. Press the folds well, and tie the book while it settles. Shallower folds, fewer folded leaves or a taller picture would help.
doubt-springs-open-round = The folded flaps will push the book open all the way round. The picture has its true shape at { $opening }. Shallower folds, fewer folded leaves or a taller picture would help.
doubt-coarse = Only { $leaves } leaves carry the picture. Each step is { $column } wide, so curves look jagged and small details disappear. A book with more leaves, or a smaller picture, would help.
doubt-wider-than-drawn = The picture comes out { $percent } wider than drawn.
doubt-narrower-than-drawn = The picture comes out { $percent } narrower than drawn.
doubt-out-of-shape-do-author = Let one of height, opening and pictureLeaves be "solve" to keep its shape.
doubt-narrow-floor = Where the light stands, “{ $level }” is only { $width } wide at its narrowest, and the light needs { $need }. Paper beside the level is cut away too.
doubt-narrow-floor-do-author = A floor that is not stated (floor: auto) is put where the level is wide enough.
doubt-light-wider-than-hole = The light is { $diameter } wide and the window’s hole { $width } × { $height }: the light is too wide to go in. Use a narrower light, or a larger hole.
doubt-level-out-of-reach = The last { $missing } of “{ $level }” at the side will look too deep, or vanish: its folds cannot reach so far out.
doubt-merged-spans = { $spans ->
    [one] One strip was shorter than { $leastTab }, too short to fold, and was merged with the next.
   *[other] { $spans } strips on { $leaves ->
        [one] one leaf
       *[other] { $leaves } leaves
    } were shorter than { $leastTab }, too short to fold, and were merged with the next.
 }
doubt-left-without-knife = { $part ->
    [both] Light and window need a knife, so they are left out.
    [light] A light needs a knife, so it is left out.
   *[window] A window needs a knife, so it is left out.
 }
doubt-level-name = “{ $level }”
# $levels is a list of names.
doubt-levels-left-out = { $count ->
    [one] Folded corners show one outline, and { $levels } is no part of it.
   *[other] Folded corners show one outline, and { $levels } are no part of it.
 }
doubt-levels-left-out-do-author = To join a level to the outline, name it in fit.corner.levels.
doubt-striped = On { $leaves } of { $of } leaves the outline is in several pieces, so it looks striped from the front. An outline that most leaves meet once comes out better.
doubt-turns = { $leaves ->
    [one] On one leaf the picture has up to { $most } strips, and a leaf can show only one.
   *[other] On { $leaves } leaves the picture has up to { $most } strips, and a leaf can show only one. Neighbouring leaves take turns, so each strip is on at least one leaf in { $every }.
 }
doubt-unseen-parts = { $parts ->
    [one] One part of the picture is so narrow that no leaf has a turn for it. A wider picture or a book with more leaves would help.
   *[other] { $parts } parts of the picture are so narrow that no leaf has a turn for them. A wider picture or a book with more leaves would help.
 }
doubt-steep-creases = { $leaves ->
    [one] On one leaf a corner is longer than the { $reach } that it may reach inward. It is folded along a steeper crease, so its edge does not lie level.
   *[other] On { $leaves } leaves a corner is longer than the { $reach } that it may reach inward. It is folded along a steeper crease, so its edge does not lie level.
 }
doubt-off-centre = { $unfolded ->
    [one] One leaf stays unfolded after the last border leaf, so the picture sits off-centre. Fold { $before } leaves before and { $after } after to centre it.
   *[other] { $unfolded } leaves stay unfolded after the last border leaf, so the picture sits off-centre. Fold { $before } leaves before and { $after } after to centre it.
 }
doubt-off-centre-do-author = In the front matter: borderLeaves: [{ $before }, { $after }].

reason-narrow-margins = Little paper stays free: { $head } at the head and { $tail } at the tail. A lower picture would help.

## Changes that help

offer-height = Make the picture { $height } tall
offer-opening = Open the book to { $opening }
offer-borders = Fold { $before } border leaves before and { $after } after
offer-picture-leaves = Let { $leaves } leaves carry the picture
offer-depths = Make the levels shallower: { $depths }
offer-folds = { $style ->
    [stepped] Use stepped folds
    [corner] Fold corners only, without a knife
   *[single] Use single folds
 }
offer-light-width = Use a light { $diameter } wide
offer-light-height = Use a light { $height } tall
offer-book-least = Choose a book with at least { $leaves } leaves of this paper ({ $thickness } thick)
offer-book-most = Choose a book with at most { $leaves } leaves of this paper ({ $thickness } thick)
# Two changes that go together: $first is a whole offer from above, $more the second one with a small letter.
offer-both = { $first }; also: { $more }
offer-springs-open = { $offer }. The flaps will then push this book open beyond flat
