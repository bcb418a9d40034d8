### What stands in the head of a cut file: its title, and what it was made from. Programs for cutters show it; the cutter does not cut it.

# $part is a part's name, $material what it is cut from.
cut-part-title = { $title }: { $part }, { $count } of { $material }, seen from the front
# $size is a sheet's size, $number which sheet of it, $parts the parts on it.
cut-sheet-title = { $title }: { $material }, { $size } sheet { $number }: { $parts }
# $revision is a short code. $layers are the names of the file's layers; the last one holds a rectangle to measure, which
# is $width by $height mm.
cut-about = Leaflight kit { $slug }, revision { $revision }; { $panel ->
    [wrap] wrap
   *[flat] flat
 } panel, lip { $lip } mm, hinge { $hinge ->
    [left] left
   *[right] right
 }; layers: { $layers } ({ $width } x { $height } mm)
