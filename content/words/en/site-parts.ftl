### What the terminal says where a site is made in parts, on several machines, and joined.

# $given: what stood behind --shard.
site-part-no-shard = “{ $given }” is no part. Allowed is which part of how many, at most { $most }, such as --shard 2/3.
site-part-two-ways = Say --shard or --only, not both.
# Names of folders stood beside --shard or --only.
site-part-and-names = A part’s kits are named with --only: npm run build -- --only { $kit }
# $folder: the kit’s folder below the project.
site-part-draft = { $folder } is a draft, and no part of the site. Take draft out of its front matter, or leave it out of --only.
site-part-made = { $kits ->
    [0] No kit was dealt to this part
    [one] { $kits } kit
   *[other] { $kits } kits
  } in { $output }: join it with the other parts by npm run merge.

## Parts that cannot be joined: $folder, $other and $file are paths as they were given.

site-part-none = No part was named. Name the folders of all parts: npm run merge -- parts/1-of-2 parts/2-of-2
site-part-unreadable = { $folder } is no part of a site: { $why ->
    [missing] it has no { $file }
    [version] its { $file } is of another version of Leaflight
   *[damaged] its { $file } is damaged
  }. Make it again with npm run build -- --shard 2/3.
site-part-differs = { $folder } was made from { $what ->
    [content] other content (settings, words, motifs, fonts, or what pages link to)
    [kits] other kits: some were added, taken away, or made drafts
    [address] another address
    [browser] another browser, or without packets
   *[program] another version of the program, of its packages or of Node
  } than what is here. Make all parts and join them from the same files, with the same options.
site-part-kit-differs = { $kit } in { $folder } was made from another folder { $kit } than the one here. Make all parts and join them from the same files.
site-part-counts = { $folder } is one of { $of } parts, and { $other } one of { $others }. Make all parts with the same count.
site-part-twice = { $folder } and { $other } are the same part. Leave one of them out.
site-part-kit-twice = { $kit } is in { $folder } and in { $other }. Leave one of the parts out.
site-part-missing = Part { $number } of { $of } is missing. Name the folders of all parts.
# $names: of kits, or the beginning of a long list.
site-part-kits-missing = No part has { $names }. Name the folders of all parts.
site-part-file = { $file } is not what { $manifest } says: { $why ->
    [missing] it is not there
   *[changed] it has other contents
  }. Copy the part again, or make it again.
