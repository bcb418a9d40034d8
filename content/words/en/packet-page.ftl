### A packet's page on the screen; nothing of it is printed.

# Closed on a phone, and opened for printing.
packet-bundle-read = To read and to work by: cautions, supplies, steps, table
packet-bundle-cut = { $count ->
    [one] To cut out at true scale: { $count } sheet
   *[other] To cut out at true scale: { $count } sheets
}
packet-bundle-table = The table, batch by batch
# Where no script lays the sheets out for a reader's own book.
packet-whose = These sheets are for the kit’s own book: { $leaves } leaves, { $height } tall, { $width } wide, { $thickness } thick. Only scripts can fit them to another.
packet-home = Back to { $title }
