### How well a picture can be made on its book: what its author is told on the terminal, in makeability.json and on the author’s page,
### which is only there while the site is served. Lengths come with their unit, shares with %, angles with °.

## On the terminal

# Under the line of its kit. $trouble: a sentence or two of below; $way: one with what would help.
makeable-line = to look at: { $trouble }
# $against: one of the next eight.
makeable-line-help = what helps against { $against }: { $way }
makeable-against-hidden = hidden parts of “{ $level }”
makeable-against-out-of-reach = “{ $level }” out of reach
makeable-against-slivers = merged strips
makeable-against-narrow = narrow parts
makeable-against-many-cuts = leaves with many cuts
makeable-against-springs-open = springing open
makeable-against-unseen = parts that no leaf shows
makeable-against-turned = steep creases

## What is hard to make or to see

# A share too small to write. $share: the least that is written.
makeable-under = under { $share }
# $percent of a level’s area.
makeable-hidden = Seen from the front, sides of prouder leaves hide { $percent } of “{ $level }”.
# $places: where, as in “31 to 42 mm left of the middle”.
makeable-hidden-at = It is hidden { $places }.
makeable-hidden-left = { $from } to { $to } left of the middle
makeable-hidden-right = { $from } to { $to } right of the middle
# A place that lies on both sides of the middle.
makeable-hidden-across = from { $left } left to { $right } right of the middle
makeable-out-of-reach = “{ $level }” goes on { $missing } further at the side than its folds reach.
makeable-slivers = { $strips ->
    [one] One strip is too short to fold and is merged.
   *[other] { $strips } strips at { $places ->
        [one] one place
       *[other] { $places } places
    } are too short to fold and are merged.
 } “{ $level }” loses most by it: { $percent } of its area.
makeable-narrow = { $parts ->
    [one] One part of the picture is
   *[other] { $parts } parts of the picture are
 } narrower than two leaves. A leaf’s column is { $pitch } wide.
# Added where some of these parts fall between two leaves.
makeable-narrow-unseen = { $parts ->
    [one] One of them falls between the leaves and is not seen at all.
   *[other] { $parts } of them fall between the leaves and are not seen at all.
 }
makeable-many-cuts = { $leaves ->
    [one] One leaf has
   *[other] { $leaves } leaves have
 } more than { $comfortable } cuts, up to { $most }. Such leaves tear easily.
makeable-springs-open = The flaps push the book open to { $resting }, { $by } more than the picture needs.

## Ways out

# $offer: a change, as in “Make the picture 105 mm tall”. What stands in brackets is the trouble with it and without it.
makeable-way-hidden = { $offer } ({ $after } hidden instead of { $before }).
makeable-way-out-of-reach = { $offer } ({ $after } out of reach instead of { $before }).
makeable-way-slivers = { $offer } ({ $after } of the picture merged instead of { $before }).
# $count: the number of $after, which is the same as written.
makeable-way-narrow = { $offer } ({ $count ->
    [one] { $after } narrow part
   *[other] { $after } narrow parts
 } instead of { $before }).
makeable-way-many-cuts = { $offer } ({ $count ->
    [one] { $after } such leaf
   *[other] { $after } such leaves
 } instead of { $before }).
makeable-way-merged = { $offer } ({ $count ->
    [one] { $after } strip
   *[other] { $after } strips
 } merged instead of { $before }).
makeable-way-unseen = { $offer } ({ $count ->
    [one] { $after } such part
   *[other] { $after } such parts
 } instead of { $before }).
makeable-way-springs-open = { $offer } ({ $after } too far open instead of { $before }).
makeable-merge-levels = Fold “{ $level }” together with “{ $into }”
makeable-simplify = Smooth the outlines by up to { $tolerance }
# In place of ways out.
makeable-slight = Too little to be seen: nothing need be changed.
makeable-no-way = No change that was tried helps enough without harm elsewhere.

## The author’s page

makeable-title = For the author of { $title }
makeable-summary = What is hard to make or to see in { $title }, and what would help.
makeable-lede = This page is only there while you work. It is not part of the published site.
makeable-drawing = The picture on the book, with what is hard to make or to see. The numbers are those of the list.
makeable-drawing-along = The picture, unrolled along the tips. The numbers are those of the list.
# In place of the list.
makeable-all-well = Nothing here is hard to make or to see.
makeable-troubles = What to look at
makeable-ways = What helps, as it was tried
makeable-levels = What each level keeps
makeable-levels-note = Seen straight from the front, by area. Paper and flaps are taken as thin as lines.
makeable-levels-along = A piece that is read while walking round is seen from everywhere, so only its areas are told.
makeable-column-level = Level
makeable-column-area = Area
makeable-column-kept = Seen
makeable-column-hidden = Hidden
makeable-column-unreached = Out of reach
makeable-column-changed = Another level
makeable-column-gutter = Room at the gutter
# cm² or in².
makeable-area = { $area } { $unit ->
    [in] in²
   *[mm] cm²
 }
makeable-found = Everything else that was found
makeable-found-nothing = Nothing else was found.
makeable-to-kit = To the kit’s page
makeable-to-index = All kits
makeable-index-title = For authors
makeable-index-summary = What is hard to make or to see in each kit.
makeable-index-count = { $troubles ->
    [0] nothing to look at
    [one] { $troubles } thing to look at
   *[other] { $troubles } things to look at
 }
