### Tools and parts beside the steps of the work. Each stands in a list.

tool-book = the book
tool-card = card
tool-acetate = acetate
tool-tape = narrow double-sided tape
tool-glue-dots = glue dots
tool-glue = clear-drying glue
tool-baking-paper = baking paper
tool-cells = cells
tool-blade = fresh blade
tool-spacers = spacers
tool-bone-folder = bone folder
tool-ruler = ruler
tool-pencil = pencil
tool-awl = awl or pin
tool-scissors = scissors
tool-slips = slips of paper
tool-craft-knife = craft knife
tool-mat = mat and safety ruler
tool-weight = weight
tool-packing = packing

# Parts beside a step that are no parts of the window.
step-part-gauge = gauge
step-part-button = button
step-part-string = string
step-part-light = battery LED light
