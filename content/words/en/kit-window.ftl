### Light and window of a kit: the pocket for the light, its notches, the window's parts and their files.

kit-light = Room for the light
kit-light-text = Mark each notch together with the leaf’s other marks, from the unfolded fore-edge. Cut it after folding, batch by batch, through body and flap. The pocket’s floor is { $floor } from the head edge. At least { $paper } of paper stays at the gutter.
kit-light-most = This kit’s light is { $given } wide. At that height, this book has room for up to { $width }. At that width, it has room for a light { $height } tall. Measure yours first.
kit-light-share = Share of the widest light that fits
kit-notches = { $count ->
    [one] Notch table, { $count } leaf
   *[other] Notch table, { $count } leaves
}
# A leaf and its notch.
kit-notch = { $leaf }: { $notch }
kit-notch-place = { $from }–{ $to }, { $depth } { $unit } deep

kit-panes = The window
kit-panes-wrap = The parts are cut as if unrolled along the front, for card that bends round it.
kit-panes-flat = The parts are cut as seen from the front, for a stiff panel.
kit-part = { $count } of { $material }, { $size }: { $use }.
kit-part-size = { $width } × { $height }
# Kinds of files to cut by; $unit is mm or inch.
kit-file-unit = { $format }, { $unit }
kit-file-short-unit = { $format } { $unit }
kit-file-inch = inch
kit-file-72 = SVG, 72 dpi
kit-file-short-72 = 72 dpi
kit-sheets = All parts laid out on sheets
kit-sheet-too-small = too small for { $parts }
# $layers and $check are names of layers as they stand in the files.
kit-files-text = Layers: { $layers }, and { $check }, a rectangle of { $size } to measure before you cut. The 72 dpi variant is for programs that ignore units.
