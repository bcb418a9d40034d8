### A site that a device keeps, so that it works without network.

offline-kit = On this device: works offline.
offline-kit-and-packet = On this device with its packet: works offline.
offline-keep-packet = Save the packet on this device
offline-keeping = Saving the packet …
# On a kit's card in the catalogue.
offline-tag = on this device
# $why is one of the sentences that follow.
offline-not-all = Not all of it could be saved on this device. { $why }
offline-absent = { $path } is not there.
offline-other-version = { $path } is of another version.
offline-no-kit = This version has no kit “{ $kit }”.
offline-full = There is no room left.
offline-unreachable = The site could not be reached.
offline-newer = A newer version is ready.
offline-reload = Reload
offline-later = Later
