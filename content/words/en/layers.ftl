### A picture from several sources: what its fields are for, and what is wrong with them. Names of fields and their values are
### the same in every language. Numbers in the texts about fields are written as they are typed in the file.

## The picture and its sources

picture-field-file = The picture beside index.md, as a path inside the kit folder.
picture-field-file-usual = words, an outline or layers are the picture
# $shapes: how shapes are named.
picture-field-names = Which shapes of the file are taken, for one level. { $shapes }
picture-field-names-usual = all of them
picture-field-level = The level of it all, by name.
picture-field-level-usual = levels says it, or the first level
picture-field-levels = Which shapes belong to which level: a level’s name, and the shapes under it. For words: a level for each line.
picture-field-levels-usual = level says it
picture-field-width = Width of the box. Lengths in the layers are mm at this size; the book’s size follows from the fit.
picture-field-height = Height of the box.
picture-field-side-usual = as the picture is drawn; layers need both

## Layers

layer-layers = Layers from front to back, each from one source, placed in the box.
layer-layer = A layer: a level, one source (file, text or an outline), and where it stands.
layer-piece = A source that is joined to a layer or cut out of it: file, text or an outline, and where it stands.
layer-join = What is joined to the layer, placed in the same box.
layer-cut = What is cut out of the layer, placed in the same box.
layer-at = The middle of the layer: from the left and from the top of the box: [60, 70] or ["50%", "30%"].
layer-at-usual = the middle of the box
layer-across = From the left of the box.
layer-down = From the top of the box.
layer-width = How wide the layer is. With one of width and height it keeps its shape; with both it is stretched.
layer-height = How tall the layer is.
layer-side-usual = the other side says it; with neither, it fills the box as far as its shape allows
layer-turn = Degrees by which the layer is turned clockwise.
layer-mirror = true turns left and right around.
# $about: a sentence about the field.
layer-span = { $about } A length in the box: mm from { $least } to { $most }, text with a unit, or a share such as "50%".

## Outlines

outline-ring = A ring.
outline-ring-width = How wide the band is.
outline-oval = A full circle; with width and height, an oval. It has no numbers: { "{}" }.
outline-arch = An arch: straight sides under a bow.
outline-arch-rise = How far the bow rises above the straight sides.
outline-arch-rise-usual = half the width; of a pointed arch, as its sides are equally long
outline-arch-top = Whether the bow is round or pointed.
outline-heart = A heart. It has no numbers: { "{}" }.
outline-star = A star.
outline-star-points = How many points it has.
outline-star-inner = How far the inner corners are from the middle, as a share of the points.
outline-moon = The moon as it is lit; width and height are those of its full disc.
outline-moon-lit = The lit share: 0.1 a thin crescent, 0.5 a half moon, 1 a full moon.
outline-moon-side = The lit side.
outline-rectangle = A rectangle.
outline-corner = The radius of round corners.
outline-corner-usual = 0, sharp corners
outline-ground = Ground along the foot of its box.
outline-ground-height = How high it stands, in the middle of its waves.
outline-ground-wave = How far its waves rise and fall.
outline-ground-wave-usual = 0, a straight edge
outline-ground-waves = How many waves it has.
outline-border = A border along the edges of its box.
outline-border-width = How wide the band is.

## Words

letters-text = Words, or a list of lines: up to { $lines } lines of { $most } letters.
letters-line = A line of words, up to { $most } letters.
letters-font = literata, source-sans-3, a font of the site’s settings by its name, or a font file in the kit folder.
letters-font-usual = literata
letters-weight = How bold the letters are; the nearest weight that the font has is taken.
letters-weight-usual = 600
letters-align = How lines stand to each other.
letters-align-usual = centre
letters-line-height = From line to line, in heights of the letters.
letters-line-height-usual = 1.2
letters-spacing = Room between letters, in heights of the letters.
letters-spacing-usual = 0
letters-arc = Degrees over which the longest line is bent; below 0 it sags.
letters-arc-usual = 0, straight

## What is wrong with them

check-given-share = given { $value }, which is { $percent }%, outside { $least } to { $most }%
# $key: a key as it is typed, such as width.
layer-no-source = no source: nothing says what to draw
layer-one-source = one of { $sources }
layer-add-source = add one of them
layer-two-sources = { $sources } in one
layer-split = keep one, and give the others layers of their own
layer-foreign-key = "{ $key }", which belongs to { $owner ->
    [text] words
    [drawing] a drawing (SVG)
    [pixels] a photograph or a scan
    [file] a file
   *[level] something with levels
  }
layer-foreign-allowed = { $source } takes { $keys }
layer-foreign-none = { $source } takes none of these keys
layer-remove-key = remove it, or move it to where it belongs
layer-both-levels = both level and levels
layer-one-of-levels = level for all, or levels for parts
layer-level-allowed = the name of a level: { $levels }
layer-name-level = add level
layer-levels-list = a list of levels
layer-levels-map = a level’s name with its shapes
layer-levels-of-lines = a level for each of { $lines ->
    [one] its { $lines } line
   *[other] its { $lines } lines
  }
layer-levels-match = name a level for each line
layer-box-sides = width and height of the box, in mm
layer-outline-side = width or height of the box, in mm
layer-join-levels = join, while the layer has several levels
layer-join-one = join with one level
layer-join-remedy = state level, or move what is joined into a layer
layer-points = fewer points: all sources together may have as many as one picture file
layer-traced-more = one photograph or scan more than a kit may trace
layer-traced = up to { $most } photographs and scans in picture and motifs, pieces among them
layer-trace-once = trace it once and save the drawing as SVG, or leave some out
layer-level-undrawn = level "{ $level }", at which the picture has nothing
layer-level-hidden = level "{ $level }", of which nothing shows
layer-levels-show = every level but the background shows somewhere
layer-draw-level = give a layer level: { $level }, or remove the level
layer-bring-forward = move its layer further up in the list, or move it into the box
# $layer: its place in the list, from 1.
layer-hidden = Layer { $layer } of the picture shows nowhere: others lie over it, or it lies outside the box. Move it further up in the list, or move it in
layer-over = Layer { $layer } of the picture reaches out of its box: what lies there is not shown
outline-given = { $length } mm
outline-most = at most { $most } mm on an outline of { $width } × { $height } mm
outline-smaller = make it smaller, or the outline larger
outline-pointed = at least { $least } mm for a pointed arch of this width
outline-round-arch = raise it, or choose top: round

# $font: what was given as a font.
letters-no-font = "{ $font }" is no font
letters-fonts = { $families }, or a font file beside index.md (.ttf, .otf, .woff, .woff2)
letters-name-font = correct the name, or put the font file beside index.md
letters-broken-font = "{ $font }" cannot be read as a font
letters-other-font = take another font, or save this one again
letters-one-weight = no weight, as "{ $font }" has only its own
letters-no-weight = remove weight, or name the font file of that weight
# $letters: letters with their numbers, “月” (U+6708), as a list.
letters-uncovered = { $letters }{ $more ->
    [0] { "" }
   *[other] {" "}and { $more } more
  }, which the font does not have
letters-covered = letters that the font has
letters-with-font = { $count ->
    [one] write it otherwise, or name a font that has it
   *[other] write them otherwise, or name a font that has them
  }
letters-none = words without a letter that shows
letters-some = at least one letter
letters-add = write words, or remove the layer
letters-wild = letters with more points than letters have
letters-tame = letters of a sound font
letters-arc-room = lines that lie nearer to the longest one than the middle of its arc
letters-arc-less = bend them less, or let them stand closer

## Photographs and scans

layer-all-levels = trace: { $trace }, which goes over all levels
layer-silhouette-level = silhouette, which lies at one level
layer-colour-levels = a colour for each level, as { "{" } fill: "#c33" { "}" }
layer-only-fill = only colours of areas, as { "{" } fill: "#c33" { "}" }
layer-state-colours = state colours under levels
layer-piece-trace = silhouette, as one shape is asked for
