### Pictures that are photographs or scans, not drawings: what their keys mean, what is wrong with one, and what was done with it.
### $file is a name in quotes. Told to authors on the terminal and in the guide.

## Keys of the front matter

field-raster-trace = What of the picture becomes levels. silhouette: one shape; tones: its lightness; depth: how near it is; colours: the colours stated.
field-raster-trace-usual = colours where levels state some; tones where the kit has three levels or more and no level is stated; else silhouette
field-raster-near = Which side of a limit is nearer.
field-raster-near-usual = dark, and light for a depth picture
field-raster-limits = Where levels part, as lightness from 0 to 255, rising: [96, 171].
field-raster-limit = A lightness, 0 for black and 255 for white. It belongs to the darker side.
field-raster-limits-usual = found from the picture
field-raster-tolerance = How far a traced outline may stray from the picture, on the book.
field-raster-least = What is smaller than a disc of this diameter is left out, holes too, on the book.
field-raster-mm = { $mm } mm

## The file

# $kinds: endings of names: .jpg, .png
raster-kinds = a whole picture: { $kinds }
raster-save-as = save it as PNG or JPEG
# $fault: the words of the program that reads pictures, in English.
raster-unreadable = "{ $file }" cannot be read: { $fault }
raster-save-again = open it in a photo program and save it again
raster-pixels = "{ $file }" has { $megapixels } megapixels
raster-most-pixels = a picture of at most { $most } megapixels
raster-save-smaller = save it smaller: 2400 pixels on the longer side are enough

## What shows in it

raster-clear = "{ $file }" is transparent all over
raster-few-tones = "{ $file }" has { $tones ->
    [one] a single tone
   *[other] only { $tones } tones
  }
raster-tones-allowed = a picture of at least { $classes } tones, one for each level
raster-other-picture = take a picture with more contrast, or fewer levels
raster-nothing = { $trace ->
    [silhouette] no shape in "{ $file }"
   *[tones] no level in "{ $file }"
  }
# $least: a diameter in mm
raster-something = something that shows and is larger than a disc of { $least } mm on the book
raster-show-more = lower least, state other limits, or turn near round
raster-busy = "{ $file }" with { $parts ->
    [one] { $parts } part
   *[other] { $parts } parts
  }
raster-most-parts = at most { $most } parts and holes at a level
# $times: lengths of the picture’s edge.
raster-long = "{ $file }" with outlines { $times } times as long as its edge
raster-most-long = outlines at most { $most } times as long as its edge
raster-raise-least = raise least, or blur the picture before you save it

## Limits

raster-limit-after = { $limit } after { $before }
raster-limits-ascend = limits that rise from dark to light
raster-order-limits = put the limits in order
raster-limit-count = { $count ->
    [one] { $count } limit
   *[other] { $count } limits
  }
raster-limits-allowed = { $count ->
    [one] { $count } limit, between the two sides
   *[other] { $count } limits, one between each two levels
  }
raster-match-limits = state as many, or leave limits out
# $key: limits or near
raster-key-of-tones = { $key } beside trace: colours
raster-key-allowed = limits and near for silhouette, tones and depth only
raster-remove-key = remove it

## Colours

raster-no-colour = "{ $colour }" is no colour
raster-colour-allowed = a colour as style sheets write it: "#c33", teal or rgb(20 80 140)
raster-correct-colour = correct it
raster-colour-twice = "{ $colour }" at a second level
raster-colour-once = each colour at one level
raster-one-colour = remove one of the two
raster-colour-count = { $count ->
    [0] no colour
    [one] { $count } colour
   *[other] { $count } colours of one level
  }
raster-colours-allowed = colours of two levels at least, the ground’s among them
raster-add-colour = state the colour of another level: wall: { "{" } fill: "#fff" { "}" }

## Notes

raster-alpha = transparency carries the shape; to go by lightness instead, state limits
# $list: one or more limits as a list; $limits: the same as they are typed.
raster-limits = { $count ->
    [one] the lightness parts at { $list }; to move that, write limits: [{ $limits }]
   *[other] the lightness parts at { $list }; to move them, write limits: [{ $limits }]
  }
# $least: a diameter in mm
raster-specks = { $specks ->
    [one] { $specks } part or hole smaller than { $least } mm was left out
   *[other] { $specks } parts and holes smaller than { $least } mm were left out
  }
raster-frames = { $frames ->
    [one] the picture moves: the first of { $frames } frame was taken
   *[other] the picture moves: the first of { $frames } frames was taken
  }
# Pixels.
raster-reduced = taken at { $width } × { $height } pixels of { $savedWidth } × { $savedHeight }, which is as fine as a book shows
# $a and $b: colours as they are typed: #c33
raster-colours-near = the colours { $a } and { $b } hardly differ, so their levels may mix
raster-colours-far = { $percent }% of the picture is of other colours than those stated, and went to the nearest
