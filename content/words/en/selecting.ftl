### Which shapes of a drawing belong to which level, and what part of a drawing is the picture: fields, messages and notes.

## Fields

select-list-field = What picks shapes of the picture, or a list of such: ["#rim", "Waves"].
# { "{" } and { "}" } write braces.
select-field = "#id"; ".class"; any other text for a name, of a layer or an object; or a colour, { "{" } fill: "#c33" { "}" } or { "{" } stroke: "#c33" { "}" }.
select-colour-field = A colour as CSS writes it: "#c33" or "red".
crop-field = What part is the picture: canvas; drawing, the box of all that is drawn; or a rectangle, { "{" } x: 10, y: 5, width: 80, height: 60 { "}" }.
crop-x-field = Left edge of the rectangle, from the canvas’s left edge, in the picture’s own units.
crop-y-field = Upper edge of the rectangle, from the canvas’s upper edge, in the picture’s own units.
crop-width-field = Width of the rectangle, in the picture’s own units.
crop-height-field = Height of the rectangle, in the picture’s own units.

## Picking shapes

# $value: a colour as #cc3333, or a name. $share: percent of the picture.
select-found = { $kind ->
    [fill] fill: "{ $value }" ({ $share }%)
    [stroke] stroke: "{ $value }" ({ $share }%)
    [id] "#{ $value }" ({ $share }%)
    [class] ".{ $value }" ({ $share }%)
   *[name] "{ $value }" ({ $share }%)
  }
# $found: things of the picture with their shares of it, as a list.
# Told of a kit that is checked by name. $found: as in select-offers.
select-offers-of = { $file } can be picked by { $found }
select-nothing-in = { $file } paints nothing that can be picked
select-offers = what the picture has: { $found }
select-nothing = something that the picture has, and it paints nothing that can be picked
select-state = state for each level what picks its shapes, or name layers like the levels
select-correct = correct it, or give the shape this name in the drawing
select-did-you-mean = did you mean "{ $meant }"?
select-colour = a colour as CSS writes it: "#c33" or "red"
select-write-colour = correct the colour
# $levels: names in quotes, as a list.
select-by-name = no shapes are stated, so these levels take what is called like them: { $levels }
# $shape: a shape of no level: <path> under #gull. $colour: of its fill or stroke.
select-lost-colour = { $shape }, { $paint ->
    [stroke] stroke { $colour }
   *[fill] fill { $colour }
  }
# $shape: the last shape of no level that is told.
select-lost-more = { $shape }, and { $more ->
    [one] { $more } shape more
   *[other] { $more } shapes more
  }
select-name-shape = pick it in picture.levels by its id, name or colour, or give it no fill
# $found: what else can pick shapes, as a list.
select-pick-shape = pick it in picture.levels by its id, name or colour, or give it no fill; there is { $found }
# $id: its id or name with a space before it, or nothing.
select-shape = <{ $element }>{ $id }
# $shape: <path> #wave
select-shape-at = { $shape } (line { $line })
# The last part of a list of shapes.
select-more-shapes = { $more ->
    [one] { $more } shape more
   *[other] { $more } shapes more
  }
select-vanish = on level “{ $level }” nobody will see { $shapes }: what lies under them is of the same level. Give them another one

## The part that is the picture

# $x, $y: the upper left corner.
crop-box = x { $x }, y { $y }, { $width } × { $height }
# $drawing, $canvas: boxes: x 0, y 0, 80 × 60
crop-taken = the drawing ({ $drawing }) fills { $percent }% of its canvas ({ $canvas }), so it is taken without the rest. To keep the canvas, state crop: canvas
crop-empty = nothing visible: the drawing ({ $drawing }) lies outside ({ $canvas })
crop-other = state crop: drawing, or a rectangle that holds something of it
crop-nothing = a picture that paints nothing
crop-something = a picture with something visible in it
crop-draw-something = draw shapes with a fill or a stroke, and see that they are not hidden
