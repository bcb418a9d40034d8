### The catalogue: all kits and classes.

catalogue-kits = Kits
catalogue-classes = Classes
# Those that are over.
catalogue-past = Past classes
# On a kit's card.
catalogue-levels = { $count ->
    [one] { $count } level
   *[other] { $count } levels
}
catalogue-leaves = { $count ->
    [one] { $count } leaf
   *[other] { $count } leaves
}
# On the card of a kit whose leaves are folded by their corners.
catalogue-knife-free = without a knife
catalogue-hours = about { $hours }
# A class's day and place.
catalogue-class = { $date } · { $place }
# Told to the site's author; $folder and $file are names of files, $guide is a link.
catalogue-empty = There is no kit yet. Make a folder under { $folder } with { $file } and a picture; the { $guide } says what goes into it.
# The link in the message above.
catalogue-guide = guide
