### The list of what to have at hand: only its headings; the things themselves are named elsewhere.

supply-materials = Materials
supply-tools = Tools
supply-total = Total of the prices given: { $total }.
