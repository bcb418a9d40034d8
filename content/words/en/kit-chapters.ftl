### What stands closed on a kit's page, each with what is in it.

kit-chapter-cautions = { $count ->
    [one] { $count } caution in full
   *[other] { $count } cautions in full
}
kit-chapter-supplies = { $materials ->
    [one] { $materials } material
   *[other] { $materials } materials
}, { $tools ->
    [one] { $tools } tool
   *[other] { $tools } tools
}
kit-chapter-prepare = { $batches ->
    [one] leaves to find and to score, { $batches } batch
   *[other] leaves to find and to score, { $batches } batches
}
kit-chapter-window = { $parts ->
    [0] the light’s place
    [one] { $parts } part to cut, with files
   *[other] { $parts } parts to cut, with files
}
kit-chapter-steps = { $steps ->
    [one] { $steps } step
   *[other] { $steps } steps
}, about { $hours }
kit-chapter-pattern = { $leaves ->
    [one] { $leaves } leaf
   *[other] { $leaves } leaves
}, { $cuts ->
    [0] no cuts
    [one] { $cuts } cut
   *[other] { $cuts } cuts
}
kit-chapter-tacks = { $count ->
    [0] nothing to glue
    [one] { $count } dot of glue
   *[other] { $count } dots of glue
}

# What a kit takes, in short.
kit-takes = What it takes
kit-takes-all = All supplies, with amounts and prices
kit-takes-materials = Materials:
kit-takes-tools = Tools:
# Above the cautions in short.
kit-care = Before hands begin
kit-care-all = All cautions
# Leads to the page on which a piece is made.
kit-make = Make it, stage by stage
# Closed below the first links of a kit's page.
kit-more-files = More to print and to download
# Stands on paper alone, where a kit's page is printed.
kit-printed = Gauge, strips and templates are printed at true scale from the packet of this kit.
