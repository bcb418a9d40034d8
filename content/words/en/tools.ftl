### Tools and parts beside the steps of the work, where the list of supplies says more than a step needs. Each stands in a list.

tool-book = the book
tool-glue = clear-drying glue
tool-baking-paper = baking paper
tool-light = battery LED light
tool-cells = cells
tool-blade = fresh blade
tool-button = button
tool-bone-folder = bone folder
tool-ruler = ruler
tool-weight = weight

# A part beside a step that is no part of the window.
step-part-gauge = gauge
