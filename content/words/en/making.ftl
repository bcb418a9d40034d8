### What the terminal says of making a site: of another build, of putting the site in place, and of the disk.

## Another build

# $number: of the process. $host: its machine. $lock: a folder.
making-wait = Another build of { $output } is running (process { $number } on { $host }). Waiting up to { $minutes ->
    [one] { $minutes } minute
   *[other] { $minutes } minutes
  }; Ctrl+C stops waiting. If it no longer runs, remove { $lock }
making-busy = another build of { $output } is running (process { $number } on { $host }): wait for it or end it. If it no longer runs, remove { $lock }
making-serving = the site is being served already (process { $number } on { $host }): stop that first. If it no longer runs, remove { $lock }

## Putting the site in place

# $leads: where the link leads.
making-link = { $output } is a link to { $leads }, which a build would have to replace. Remove the link, and copy { $output } there after the build
making-no-folder = { $output } is a file, and the site needs a folder there. Move the file away and build again
# $code: the system’s name of the fault.
making-unmovable = { $target } cannot be replaced ({ $code ->
    [EBUSY] it is in use, or another file system is mounted there
    [EACCES] permission is missing
    [EPERM] permission is missing, or a file in it is open
    [EXDEV] it belongs to another file system
   *[unknown] { $code }
  }). Close what uses it, or move or remove it, and build again
making-aside = { $target } could neither be replaced nor put back ({ $fault }). It is whole in { $before }, and the next build puts it back
# $path: the first of them.
making-left = warning: { $count ->
    [one] { $path } cannot be removed. It is
   *[other] { $path } and { $count } files in all cannot be removed. They are
  } no part of the site; the next build tries again

## The disk

disk-full = { $path }: the disk is full. Make room on it and build again
disk-quota = { $path }: your share of the disk is used up. Make room and build again
disk-file-size = { $path }: larger than the system lets a file become. Raise the limit (ulimit -f) and build again
disk-read-only = { $path }: the file system is read-only. Make it writable, or move the project, and build again
disk-forbidden = { $path }: permission is missing. Give yourself permission to read and write there, and build again
disk-open-files = { $path }: too many files are open. Close other programs or raise the limit (ulimit -n), and build again
disk-failing = { $path }: the disk cannot be read or written. Check the disk and build again
disk-no-folder = { $path }: a file stands where a folder is needed. Move the file away and build again

## What is kept from one build to the next

kept-damaged = warning: { $count ->
    [one] a file in { $folder } was damaged and is
   *[other] { $count } files in { $folder } were damaged and are
  } made anew
# $fault: what the system calls it.
kept-unusable = warning: nothing is kept in { $folder } for the next build, as it cannot be used ({ $fault })
