### What a build tells a teacher on the terminal. $class is the name of the class's folder, $kit the name of a kit's folder.

report-misfit = { $class }, seat { $seat }: { $kit } does not fit its book. { $why } What would help:
report-help = {"  "}- { $help }
report-doubt = warning  { $class }, seat { $seat }: { $doubt }
report-unused-stock = warning  { $class }: nothing on the shopping list is called “{ $item }”, which is in stock
