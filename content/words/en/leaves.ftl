### How leaves and pages are named. A leaf is one sheet; its number counts from the front of the book. A page is what is printed on it.

leaf-number = leaf { $leaf }
# A printed page, short.
leaf-page = p. { $page }
leaf-front = front leaf { $index } of { $of }
leaf-plate = plate { $index } of { $of } after p. { $page }
leaf-end = end leaf { $index } of { $of }
leaf-with-page = leaf { $leaf }, p. { $page }
# A leaf without a page number; $name is one of front leaf, plate, end leaf.
leaf-with-name = leaf { $leaf } ({ $name })
leaf-not-folded = leaf { $leaf } (not folded)
leaf-run = leaves { $first } to { $last }
# $from and $to are pages, or names of leaves without a page number.
leaf-run-pages = leaves { $first } to { $last } ({ $from } to { $to })
