### What is wrong with a picture (an SVG file): told to the author with file and line. Words in angle brackets and quotes are
### names and values of the file. $what is an attribute as `<rect> width`, $value its text in quotes.

## Files

picture-no-svg = not an SVG picture: it has no <svg> element
picture-other-root = not an SVG picture: its root is <{ $name }>
picture-no-namespace = not an SVG picture: add xmlns="{ $namespace }" to <svg>
# $fault: the words of the XML reader, in English.
picture-not-well-formed = not well-formed XML: { $fault }
picture-entity = entity { $entity } is not read: write its text in place
picture-external-sheet = <?xml-stylesheet?> is not supported: put the rules in a <style> element
# A note: both elements are meant where the id is named.
picture-id-twice = id { $id } is also that of <{ $name }> in line { $line }; where it is named, both count
picture-no-size = <svg> has no size: add viewBox="0 0 width height"
picture-many-points = the picture needs more than { $most } points: simplify it
picture-many-levels = more than { $most } levels of groups: flatten groups
picture-many-elements = the picture has more than { $most } elements, those shown again among them: simplify it
# $most counts widths and heights of the picture.
picture-long-outlines = the outlines together are more than { $most } times as long as the picture: remove hidden shapes
picture-many-styles = the picture has more styles than can be tried on its elements: simplify them
# Prefixes such as xlink in xmlns:xlink.
picture-prefixes = more than { $most } namespaces: save the drawing as plain SVG
picture-doctype = a document type of more than { $most } letters: save the drawing as plain SVG
# $encoding: a name in quotes: "UTF-16"
picture-encoding = it says encoding={ $encoding } of itself and is UTF-8: correct that, or save it anew
# Under twenty notes about a picture.
picture-more-notes = and { $more ->
    [one] { $more } note more
   *[other] { $more } notes more
  }

## Elements

picture-undrawn = <{ $name }> cannot be drawn: { $name ->
    [text] no font for it is at hand; turn the text into paths in the program that drew it
    [tspan] no font for it is at hand; turn the text into paths in the program that drew it
    [textPath] turn the text into paths in the program that drew it
    [flowRoot] turn the text into paths in the program that drew it
    [image] remove it here, and make it a picture of its own
    [foreignObject] remove it
   *[unknown] remove it or correct its name
  }
picture-animation = <{ $name }> is ignored; the picture is taken at rest
picture-script = <script> is ignored; the picture is taken as written
picture-other-namespace = <{ $name }> is ignored: it is outside the SVG namespace
picture-transform-origin = <{ $name }> transform-origin is not supported: write rotate(angle x y)
picture-outside-symbol = <{ $name }> is not painted: it lies outside its symbol’s viewBox
picture-no-area = <{ $name }> is not painted: it has no area

picture-use-no-href = <use> has no href: name the id of a shape or group
picture-use-elsewhere = <use> href { $href } is not in this file: write "#" and an id of it
picture-use-no-target = <use> href { $href } has no target: no element has this id
picture-use-cycle = <use> href { $href } shows itself: break the cycle
picture-use-idle = <use> href { $href } is a <{ $name }>: name a shape or group

## Values of attributes

picture-no-length = { $what } { $value } is not a length: write a number, or one with px, mm, cm, in, pt, pc, Q or %
picture-other-unit = { $what } { $value } has the unit { $unit }: use px, mm, cm, in, pt, pc, Q or %
picture-too-large = { $what } { $value } is too large
picture-part-of-nothing = { $what } { $value } has nothing to be a part of: write a length
picture-negative = { $what } { $value } is negative: write 0 or more
picture-not-above-zero = { $what } { $value } must be above 0
picture-no-number = { $what } { $value } has { $found } where a number belongs
picture-ends-in-comma = { $what } { $value } ends in a comma
picture-odd-points = { $what } { $value } has { $count } numbers: every x needs its y
picture-view-box-numbers = { $what } { $value } needs four numbers: x, y, width and height
picture-view-box-size = { $what } { $value } needs a width and a height above 0
picture-fitting = { $what } { $value } is unknown: write none or, for example, xMidYMid meet
picture-no-opacity = { $what } { $value } is no opacity: write a number from 0 to 1
picture-solid = { $what } { $value } counts as solid
picture-no-transform = { $what } { $value } is no transform: use { $names }
picture-transform-rest = { $what } { $value } has { $found } where a transform such as rotate(30) belongs
picture-transform-number = { $what } { $value } takes { $count ->
    [one] { $count } number
   *[other] { $count } numbers
  }
picture-transform-numbers = { $what } { $value } takes { $count } or { $more } numbers
picture-curve-too-large = { $what } has a curve thousands of times as large as the picture: draw it at the picture’s size
picture-coordinates = { $what } has coordinates too large to compute with
picture-outline-points = { $what } needs more than { $most } points: simplify it
# $at counts characters; $before is what stands before it.
picture-path-fault = { $what } has { $found } at character { $at } where { $expected ->
    [command] a path command
    [flag] an arc flag, 0 or 1,
    [move] "M"
   *[number] a number
  } belongs
picture-path-fault-after = { $what } has { $found } at character { $at } where { $expected ->
    [command] a path command
    [flag] an arc flag, 0 or 1,
    [move] "M"
   *[number] a number
  } belongs, after { $before }
# Found where a path’s text ends too early.
picture-path-end = the end

## Styles

# $fault: the words of the style sheet reader, in English.
picture-css = malformed CSS is skipped: { $fault }
picture-css-depth = malformed CSS: nested too deeply
picture-css-selector = selector { $selector } is too complex: use element names, .class, #id, [attribute], spaces and >
picture-css-import = @import is not supported: write the rules in this <style>
picture-no-value = { $property } "" has no value: write one or remove { $property }
picture-css-variable = { $property } { $value } has no value: state the variable, or write the value itself
picture-unknown-value = { $property } { $value } is unknown: use { $values }
picture-css-geometry = <{ $name }> { $property } { $value } in CSS is not supported: write it as an attribute
picture-unsupported = <{ $name }> { $property } { $value } is not supported: cut the shape itself
# $kind: the property fill or stroke.
picture-fill-elsewhere = { $kind } { $fill } is in another file: bring it into this one
picture-fill-no-server = { $kind } { $fill } points to no gradient or pattern: write a colour
picture-fill-solid = { $kind } { $fill } counts as solid
