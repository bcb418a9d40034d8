### The window's parts: their names, what they are for, and what their position lines mean.

part-base-frame = base frame
part-glazing = glazing
part-door = door
part-closure-tab = closure tab
part-decoration-guide = decoration guide
part-holder = holder
part-scoring-gauge = scoring gauge
part-corner-gauge = corner gauge
part-folding-card = folding card
# $name is the motif's own name, in its author's words.
part-motif = motif { $name }

use-base-frame = glued to the front tips of the leaves
use-glazing = glued behind the door, { $lip } inside its edge
use-door = hangs over the base frame; its flap folds back under it
use-closure-tab = takes the string through its hole; the loop goes round the button
use-decoration-guide = lies under the glazing while you place the motifs
use-holder = its slots go over the first and last picture leaf at the head, just behind their folded edges
use-scoring-gauge = the packet’s gauge is printed on it, or pricked through to it
use-corner-gauge = corners are folded over its slanted side
use-folding-card = leaves that show nothing are folded over it
use-largest-motif = set on the window, in front of the light
use-motif = set on the window where its figure shows

mark-tab-behind = closure tab behind here
mark-button = button
mark-glue-behind-frame = glue this end behind the base frame
mark-light-here = the light stands behind
mark-first-picture-leaf = first picture leaf
mark-last-picture-leaf = last picture leaf

material-card = card
material-acetate = acetate
material-paper = paper
