"""Food-safety rule sets, a file each; the folder is the list of them."""
