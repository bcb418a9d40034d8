### What a build tells a teacher on the terminal. $class is the name of the class's folder, $kit the name of a kit's folder.

# $seats names the $count seats without a book: "seat 6" or "seats 2 and 6".
report-awaiting = { $class }: { $books } of { $all } seats have a book; { $count ->
    [one] the book for { $seats } is still to come.
   *[other] the books for { $seats } are still to come.
  }
report-misfit = { $class }, seat { $seat }: { $kit } does not fit its book. { $why } What would help:
report-help = {"  "}- { $help }
# A line to paste. $into: below “seats:” in the class's file, or in the table of books.
report-entry = {"    "}{ $into ->
    [table] row of the table:
   *[matter] below seats:
  } { $text }
report-doubt = warning  { $class }, seat { $seat }: { $doubt }
report-unused-stock = warning  { $class }: nothing on the shopping list is called “{ $item }”, which is in stock
