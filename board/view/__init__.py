"""What a board shows, as data.

For the other rooms: `bars`, `behind`, `board`, `changed`, `choice`, `closing`, `costs`, `countdown`, `days`, `first`,
`keys_now`, `look`, `marks`, `offer`, `onlooker`, `plan_tree`, `present`, `reading`, `ribbon`, `said`, `short`,
`slipped`, `slips`, `tried`, `wrap_words`.
"""
