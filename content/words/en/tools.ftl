### Tools and parts beside the steps of the work. Each stands in a list.

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

# Parts beside a step that are no parts of the window.
step-part-gauge = gauge
step-part-button = button
step-part-string = string
step-part-light = battery LED light
