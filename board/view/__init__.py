"""What a board shows, as data.

For the other rooms: `bars`, `behind`, `board`, `changed`, `choice`, `closing`, `costs`, `countdown`, `first`, `look`,
`marks`, `offer`, `onlooker`, `present`, `reading`, `ribbon`, `said`, `slipped`, `slips`, `wrap_words`.
"""
