### The window's motifs: what authors state of them and are told, how they are named, set and shown.

## Fields

field-insert-card = Card of base frame, door and closure tab.
field-insert-motifs = Silhouettes of card on the window; a kit that lists none has none.
field-motif = A silhouette of card: from the shelf, a file in the kit’s folder, words or an outline.
field-motif-shelf = Name of a motif on the site’s shelf: lantern for content/motifs/lantern.svg.
field-motif-file = A file beside index.md: of an SVG its shapes are the silhouette, of a photograph or a scan what trace: silhouette finds.
field-motif-name = What people call it.
field-motif-name-usual = the name of its file, or what it is
# Fields and values stay as they are typed.
field-motif-at = Where the middle of the motif is on the closed window: from the frame’s left edge, then from its upper edge.
field-motif-at-usual = before the light with covers: light; else high on the right, low on the left, high on the left, low on the right
field-motif-across = How far from the frame’s left edge, along the card.
field-motif-down = How far below the frame’s upper edge.
field-motif-width = Width of the motif on the window, before it is turned and without what is joined.
field-motif-height = Height of the motif on the window, before it is turned and without what is joined.
field-motif-size-usual = follows from the other side; without both, the light’s size and some more with covers: light, else a quarter of the hole
field-motif-spacers = Foam spacers between the glazing and the motif; 0 lies flat on it.
field-motif-spacers-usual = 0 with covers: light, else 1
field-motif-card = Card that it is cut from.
field-motif-covers = light: it stands before the light.
field-motif-turn = Degrees that it is turned clockwise, after it is mirrored.
field-motif-mirror = true: left and right change places.
field-motif-join = What is joined to the motif, placed in its box: shares of it, or mm where the motif is sized in mm.
field-motif-cut = What is cut out of the motif, placed in its box in the same way.
field-card = { $about } One of { $names }; or a colour as style sheets write it, with what people call it.
field-card-usual = any card that the maker likes
field-card-colour = The colour: teal, rgb(63 107 112), or a code after # …
field-card-name = What people call it, before the word “card”: sea-green.
# $help: field-length-help
field-window-length = { $about } { $help }; or a share of the frame: 50%.

## Card

# What stands before the word for card.
card-colour = { $name ->
    [white] white
    [cream] cream
    [sand] sand
    [yellow] yellow
    [orange] orange
    [red] red
    [pink] pink
    [violet] violet
    [blue] blue
    [night] night-blue
    [teal] teal
    [green] green
    [brown] brown
    [grey] grey
   *[black] black
  }
# $colour: one of card-colour, or the author's own word.
material-card-of = { $colour } card

# $count sheets of one colour of card, in a list of them: 2 teal, 1 of any colour
sheets-of-colour = { $count } { $colour }
sheets-of-any = { $count } of any colour
# $sheet and $gauge: why-card-window. $colours: such a list.
why-card-colours = { $sheet }, 250–300 g/m²: { $gauge } for the scoring gauge ({ $lines ->
    [one] one line
   *[other] { $lines } lines
 }) and small pieces; for the window and motifs { $colours }
# $packed: shopping-packed or shopping-too-small
shopping-colours = { $packed }: { $colours }

## How motifs are set

step-decorate-measure = Then set each motif at its number in the figure. Lengths run from the frame’s left edge to its left side, and from the frame’s upper edge to its top.
# $card: material-card or material-card-of. $left and $top are lengths.
step-decorate-motif = { $number }: { $motif }, { $card }, { $spacers ->
    [0] flat on the glazing
    [one] on one spacer
   *[other] on { $spacers } spacers, one on the other
  }; left { $left }, top { $top }.
# Beside a dimension.
draw-motif-distance = { $number }: { $length }
# In a list of what the figure shows.
draw-motif-number = { $number } { $motif }
draw-motifs = The closed window from the front, with its motifs: { $motifs }. Lengths run from the frame’s left and upper edge.
draw-lit-window = { $motifs ->
    [0] The closed window in the dark with its light on.
   *[other] The closed window in the dark with its light on; the motifs stand before it.
  }

## What authors are told of a motif that cannot be set

motif-nothing = nothing that is left to be cut from card
motif-something = a silhouette
motif-draw-something = draw a filled shape, or cut less out of it
motif-split = keep one, and give the others motifs of their own or put them under join
motif-on-shelf = a motif on the shelf: { $names }
motif-shelf-empty = a motif on the shelf, which is empty
motif-shelf-remedy = put an SVG into content/motifs, or state a file beside index.md
motif-write-name = write { $name }
motif-no-light = covers the light of a kit that states none
motif-light-allowed = covers: light in a kit with a light
motif-light-remedy = remove covers, or state the light
motif-seats-allowed = at most { $most } motifs without a place of their own
motif-colour-allowed = a colour as style sheets write it: teal, rgb(63 107 112), or a code after #
motif-colour-remedy = correct the colour
motif-loose = { $pieces ->
    [one] one piece that touches nothing
   *[other] { $pieces } pieces that touch nothing
  } of the motif “{ $motif }”
motif-loose-allowed = one connected silhouette, or pieces that each lie on the frame or on a motif with fewer spacers
motif-loose-remedy = join the pieces, as with a bar or a ring under join, or move the motif so that each has something to be glued to
# What is printed of a motif whose author gave it no name.
motif-usual-name = { $source ->
    [text] words
    [ring] ring
    [oval] oval
    [arch] arch
    [heart] heart
    [star] star
    [moon] moon
    [rectangle] rectangle
    [ground] ground
   *[border] border
  }
motif-stray-length = { $length } mm, in a motif without a size in mm
motif-shares = a share such as 10%; also mm, where width or height of the motif is in mm
motif-write-share = write a share, or state the motif’s width in mm
motif-turned-shares = turned, with width and height of which one is a share
motif-turned-size = with turn: one of width and height, or both in mm
motif-size-in-mm = leave one of them out, or state both in mm
motif-off = the motif “{ $motif }” lies beside the window
motif-off-allowed = a place on the window, which is { $width } wide and { $height } high
motif-off-remedy = state another place at { $field }

## What authors are told of motifs that may disappoint

# $field: the motif's place in the front matter.
note-motif-beyond = { $field }: the motif “{ $motif }” reaches { $by } beyond the frame. Move it or make it smaller.
note-motifs-overlap = { $field }: the motifs “{ $motif }” and “{ $other }” overlap on the same number of spacers. Move one, or give it another number.
note-motif-narrow = { $field }: the motif “{ $motif }” falls apart where it is narrower than { $least }. Make it larger, or its strips broader.
note-light-bare = insert.motifs: nothing covers the light; all of it shows in the window.
note-light-shows = insert.motifs: { $beside } of the light’s silhouette shows beside the motifs, and { $through } through openings in them.
