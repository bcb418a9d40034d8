### The view of a kit's book from all sides: its controls.

kit-round-text = The whole book as this pattern makes it, on a turntable: { $parts }.
kit-round-leaves = every leaf with its folds, cuts and flaps
kit-round-corners = every leaf with its folded corners
kit-round-light = the light in its pocket
kit-round-window = the window and its door
kit-round-script = This view needs JavaScript; the front picture above shows the same book.
kit-round-role = turntable
kit-round-alt = { $title }, the whole book in three dimensions
kit-round-help = Drag to turn and tilt. Spread two fingers, or hold Ctrl and turn the wheel, to zoom. Keys: arrows turn and tilt, + and − zoom, 0 looks from the front.
kit-round-from = Look from
kit-round-front = Front
kit-round-left = Left
kit-round-right = Right
kit-round-above = Above
kit-round-behind = Behind
kit-round-nearer = Nearer
kit-round-further = Further
kit-round-opening = Opening
kit-round-angle = Angle between first and last leaf
kit-round-own = Back to the kit’s opening
kit-round-show = Show
kit-round-show-light = Light on
kit-round-show-window = Window
kit-round-show-motifs = Motifs
kit-round-show-door = Door, closed to wide open
kit-round-show-levels = Colours by level
