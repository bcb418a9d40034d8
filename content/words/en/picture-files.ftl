### What a picture's file holds that is drawn otherwise, or counts otherwise: told to the author with file and line. Words in
### angle brackets and quotes are names and values of the file.

## Notes

# $note: another note. $more counts lines.
picture-note-again = { $note } (and in { $more ->
    [one] { $more } more line
   *[other] { $more } more lines
  })
# $box: four numbers: x, y, width and height.
picture-own-box = <svg> has no size, so the drawing’s own box is taken: { $box }
picture-stroke-area = a stroke counts as the area that it covers
picture-text-stroke = the stroke of <text> is left out; its letters count as they are
picture-filter = the filter of <{ $name }> is left out; the shape counts as it is
picture-marker = the markers of <{ $name }> are left out: draw them as shapes
picture-cut-away = <{ $name }> is not painted: its clip path or mask leaves nothing of it
picture-cut-missing = <{ $name }> { $property } { $value } is left out: it points to nothing of its kind
picture-mask-solid = <{ $name }> in a mask counts as all open: masks here are open or closed

## Errors

picture-cut-cycle = <{ $name }> { $property } { $value } cuts itself: break the cycle
picture-many-cuts = clip paths and masks with more crossings than can be computed: simplify them
picture-many-dashes = { $what } has more than { $most } dashes: make them longer
picture-many-entities = entities that make the file much longer: save the drawing as plain SVG
