"""The language of a recipe, by the small words in it. Pure; what a page declares is often only its frame's language."""

import re
from collections import Counter
from collections.abc import Sequence

# Words of recipes that no other language here has in such numbers; a choice of ours.
_SMALL_WORDS = {
    "English": "the and with for until into then add of to in a over from heat cook minutes or cup",
    "German": "und die das den mit bei für auf eine einen etwa minuten lassen geben dann nach zum im wasser el tl",
    "French": "le la les des et dans avec une un pour à au du pendant jusqu ajouter puis faire cuire sur",
    "Spanish": "el la los las y con en una un de por durante hasta que añadir se agua minutos al del",
    "Italian": "il lo la gli e con una di per fino che aggiungere minuti nel della olio al le in acqua",
    "Portuguese": "o a os as e com uma um de por até que adicione minutos em no na do da água",
    "Dutch": "de het en een met op in van voor tot minuten voeg toe laat bij aan water eetlepel dan",
    "Swedish": "och i en ett med på till för minuter tills av den det rör tillsätt låt som sedan vatten",
    "Danish": "og i en et med på til for minutter indtil af den det rør tilsæt lad som derefter vand",
    "Polish": "i w z na do się przez minut aż oraz dodać po nie ze wody łyżka",
}
_OF = {language: frozenset(text.split()) for language, text in _SMALL_WORDS.items()}
_ENOUGH = 6  # small words; fewer tell nothing


def language_of(texts: Sequence[str]) -> str:
    """The language's name in English; "" for English, and where too little is said to tell."""
    said = Counter(re.findall(r"[^\W\d_]+", " ".join(texts)[:20_000].casefold()))
    letters = "".join(said)
    if letters and sum(not _is_latin(sign) for sign in letters) > len(letters) / 2:
        return "another script"
    counts = {language: sum(said[word] for word in small) for language, small in _OF.items()}
    best = max(counts, key=lambda language: counts[language])
    return best if counts[best] >= _ENOUGH and counts[best] > 1.5 * counts["English"] else ""


def _is_latin(sign: str) -> bool:
    return ord(sign) < 0x250 or 0x1E00 <= ord(sign) < 0x1F00
