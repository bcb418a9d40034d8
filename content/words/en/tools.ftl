### Tools and parts beside the steps of the work, the window's parts, and what they are cut from. Each stands in a list.

tool-ruler = ruler
tool-metal-ruler = metal ruler
tool-ruler-or-strips = ruler or marking strips
tool-pencil = pencil
tool-craft-knife = craft knife
tool-mat = mat
tool-bone-folder = bone folder
tool-gauge = gauge
tool-packing = packing
tool-glue-dots = glue dots
tool-tape = double-sided tape
tool-glue = clear-drying glue

part-gauge = gauge
part-holder = holder
part-base-frame = base frame
part-glazing = glazing
part-door = door
part-closure-tab = closure tab
part-decoration-guide = decoration guide
# $name is the author's own name of the motif.
part-motif = motif { $name }
part-button = button
part-string = string
part-light = battery LED light

# What each part of the window is for.
part-use-base-frame = glued on the front tips
part-use-glazing = glued behind the door, { $lip } inside its edge
part-use-door = over the base frame; the flap folds back under it
part-use-closure-tab = string through the hole, looped round the button
part-use-decoration-guide = under the glazing while you place motifs
part-use-holder = slots over the first and last picture leaf at the head, just behind their folded edges
part-use-motif-largest = the largest: low on the glazing, in front of the light
part-use-motif = raised on card spacers, above or beside the largest

material-card = card
material-acetate = acetate
material-paper = paper
