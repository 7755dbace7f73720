"""The words people use, and what each means to a reader. One table: a nickname is one line.

A meaning is "kind.value". Phrases are written as they come out of `clean.normalise`, words
separated by one space; the longest phrase wins. Misspellings within one or two letters need no
entry (see `phrases`); speech-to-text slips that are real words do.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from typing import Final

from intake.reading.vocabulary_of_ducts import OF_DUCTS

__all__ = ["MEANINGS", "meanings", "vocabulary_words"]

MEANINGS: Final[dict[str, str]] = {
    **OF_DUCTS,
    # --- roles ---
    "role.return": (
        "comin in|goin in|return|returning|rtn|ret|retn|returns|return air|r/a|ra|return side"
        "|return duct"
        "|re-turn|retern|ritern|suction|pull|intake|negative side|going back|coming back"
        "|goes back|back to the furnace|return static|cold air return|cold air"
        "|return grille|on the return|vacuum side|suction side|retrun|reutrn|rturn"
        "|return plenum|return drop|in the return|entering|going in|goes in|air in|inlet"
        "|rat|going into|incoming|going in the return|at the return|return temp"
        "|return temperature|rtrn|upstream|comes in|coming in|coming back in|enters"
        "|sucking|into the unit|going into the unit|going into the furnace|into it"
        "|before coil|before the coil|entering air|inlet side|to the unit"
        "|going in to the unit|back in|pulling|r"
    ),
    "role.supply": (
        "comin out|goin out|comin off|supply|sply|sup|supp|splly|supplies|supply side|supply air"
        "|s/a|sa|supply duct|suply"
        "|supply static|push|positive side|pressure side|coming out|comes out|goes out|leaving"
        "|discharge|outlet|blowing|going out|supply plenum|on the supply|supply temp"
        "|supply temperature|sat|air out|out of the register|at the register|out of the vent"
        "|at the vents|at the vent|register|registers|out the vents|supplly|supplu|supplied"
        "|spply|downstream|at the supply|out of the supply|in the supply|out of the vents"
        "|leaving air|blows out|blowing out|after coil|after the coil|outlet side"
        "|out of the unit|out the register|out of the registers|sup air|pushing|coming off"
        "|off the coil|comes off the coil|plenum|at the plenum|leaving the coil"
        "|leaves|leaves at|coming off the coil|coming out of the register"
        "|coming out of the vent|exits|exiting"
        "|s"
    ),
    "role.total": (
        "total|tot|tesp|total external|total static|external static|external|esp|t e s p"
        "|total external static|total external static pressure|all together|combined|together"
        "|sum|overall|altogether|exterior static|in all|total esp|adds up to|add up to"
        "|comes to|totals|totaling|total ext|all in|all in all|all told|all up"
    ),
    "role.filter": (
        "filter drop|across the filter|filter|pressure drop filter|over the filter"
        "|thru the filter|through the filter"
    ),
    "role.coil": "coil drop|across the coil|across coil|coil|over the coil|through the coil",
    "role.rise": (
        "rise|temp rise|temperature rise|riser|raise|rice|heat rise|delta|split|temp drop"
        "|temperature drop|drop|delta t|dt|difference|diff|td|cooling split|temp split"
        "|temperature split|dropping|drops|rising|rises|spit|splits|delta tea|delta-t"
        "|temp difference|temperature difference|deltat|d t|degree split|degree drop"
        "|degree rise|gain|gains|dropped|rose|delat t|spread|deltas|tr|degrees of split|warmer"
        "|cooler|colder|hotter|apart|change|lower|loses|losing|picks up|picking up|of rise"
        "|of drop|of split"
    ),
    # --- capacity words ---
    "heat.input": (
        "going in|goes in"
        "|input|in put|inp|inpt|btu in|btuh in|k in|gas input|burner input|rated input|inputs"
        "|imput|firing rate|in"
    ),
    "heat.output": (
        "coming out|comes out|going out|goes out"
        "|output|out put|outp|outpt|btu out|btuh out|k out|heating output|heat output"
        "|rated output|outputs|bonnet|oput|out"
    ),
    "heat.efficient": (
        "efficient|efficiency|eff|effic|efficent|effeciency|efficiancy|effeciancy"
        "|percent efficient|afue|annual fuel"
    ),
    "heat.stage": (
        "high fire|low fire|hi fire|lo fire|high stage|low stage|hi stage|lo stage|first stage"
        "|second stage|1st stage|2nd stage|stage 1|stage 2|stage one|stage two|on high|on low"
    ),
    # --- count nouns ---
    "noun.count": (
        "runs|ducts|pipes|branches|of them|of those|pcs|pieces|trunks|leads|lines|of these"
        "|identical|each|ea|ones|filters|grilles|grills|returns|registers|vents|side by side"
        "|in parallel|total|parallel|takeoffs|hoses|tubes|mains|the same|same size|like that"
        "|like it|units|drops|returns like that|legs|feeds|qty|quantity|grates|openings"
        "|altogether|of em|of 'em"
    ),
    "count.multi": (
        "pair|pair of|a pair of|twin|dual|double|both|couple|a couple of|couple of|a couple"
        "|twins|set of two|two of them|two of those|each side|both sides|one each side"
        "|one on each side|one each way"
    ),
    "word.none": (
        "double wall|double walled|dual wall|double-wall|one piece|single wall|one line"
        "|one of the|two by four|two by fours|two by six|two by sixes"
    ),
    "count.single": "single|just the one|only one|just one",
    # --- sides ---
    "side.width": "wide|width|w|widths|wid|in width|wide side|wd",
    "side.height": (
        "high|tall|height|h|hi|heigth|hight|in height|heighth|deep|depth|ht|up and down|up n down"
        "|hieght"
    ),
    "side.depth": "thick|thickness|deep|depth|thk|thik|d",
    # --- sizes joined ---
    "join.by": "x|by|ex|bite|buy|times|bye|*|bi|X|byt|buy a",
    # --- two values, or a change along the way ---
    "alt.or": "or|either|vs|versus|or maybe|or else|or possibly",
    "alt.change": (
        "reduces|reducing|reduces to|reducing to|reduced|reduced to|reduction|reducer"
        "|steps down|steps down to|step down|stepping down|then|tapers|tapering|tapers to"
        "|becomes|turns into|goes to|going to|down to|drops to|drops down to|necks|necks down"
        "|necks down to|transitions|transitions to|transition|splits|splits into|ends|starts"
        "|widens|opens up|later|after that|changes to|goes down to|shrinks|shrinks to"
        "|narrowing|narrows|narrows to|at the end|by the end|ending|starting|opens up to"
        "|expands to"
    ),
    # --- round by a wrong measure ---
    "measure.around": (
        "circumference|all the way around|around the outside|tape around|perimeter|girth"
        "|around it|wrapped around|all around"
    ),
    "measure.radius": "radius|rad",
    # --- vague amounts ---
    "vague.size": (
        "medium|big|small|large|standard|normal|regular|average|huge|tiny|little|typical"
        "|decent|whatever|same|usual|something|some|several|default|biggest|smallest|max"
        "|maximum|min|minimum|bigger|smaller|massive|giant|generic|common|ordinary|monster"
        "|skinny|fat|narrow|thin|full|size|sized|shoebox|mid|middle|factory|stock|original|oem"
        "|builder grade|residential|as big as|many|a lot|nothing special|kind|type|ones"
        "|way too big|midsize|mid size|medium sized|good sized|full size|double|single"
        "|ginormous|humongous|so so|never changed|sizes|types|style|model|brand|pretty big"
        "|oversized|undersized|jumbo"
    ),
    "vague.amount": (
        "bit|few|several|lots|plenty|bunch|long|short|roll|rolls|half|part|way|not much|heaps"
        "|loads|far|halfway|across the house|length of the house|length of the basement"
        "|the whole house|whole house|enough|couple|full length|all the way"
        "|across the basement|not far|not long|quite a ways|a ways|ways|forever|whole length"
        "|some|little|most of it|across|to the end|end to end|long way|short run|long run"
        "|room to room|tons|a lot|many|much|more|less|farther|further|longer|shorter"
    ),
    "vague.state": (
        "good|bad|fine|ok|okay|low|high|strong|weak|normal|enough|plenty|full|wide open"
        "|not much|poor|great|decent|average|so so|elevated|terrible|awful|excellent|typical"
        "|usual|medium|higher|lower|way up|way down|through the roof|sky high|healthy"
        "|acceptable|in range|within range|within spec|in spec|on spec|out of range"
    ),
    "vague.heat": (
        "hot|cold|warm|cool|freezing|chilly|boiling|comfortable|toasty|lukewarm|cooler|hotter"
        "|warmer|colder|icy|mild|nice|tepid|burning|frigid|roasting|room temp|room temperature"
        "|ambient|below freezing|above freezing|body temperature|normal|high|low|okay|ok|good"
    ),
    "vague.type": (
        "charcoal|washable|electrostatic|pleated|paper|media|carbon|hepa|cheap|reusable"
        "|disposable|allergen|allergy|metal mesh|permanent|foam|blue|fiberglass|mesh|the cheap"
        "|deep|thick|basic|good ones|expensive|cardboard|poly|polyester|aluminum|cloth"
        "|hog hair|odor|activated|ultra|high end|kind|type"
    ),
    # --- where measured ---
    "place.inside": (
        "inside|inside dimension|inside dimensions|i d|id|inside dia|inside diameter"
        "|inside measure|inside measurement|inside measurements|clear|clear inside"
        "|clear opening|inside to inside|inside dim|inside dims|inner|interior"
    ),
    "place.outside": (
        "outside|outside dimension|outside dimensions|o d|od|outside dia|outside diameter"
        "|outside measure|outside measurement|outside measurements|outside to outside"
        "|on the outside|exterior|outside dim|outside dims|outer"
    ),
    "place.over wrap": (
        "over wrap|over the wrap|over insulation|over the insulation|including wrap"
        "|including the wrap|with the wrap|with wrap|including insulation"
        "|including the insulation|with insulation|outside the wrap|over rap|over the rap"
        "|outside of the wrap|with the insulation|outside the insulation"
        "|outside of the insulation|over top of the insulation|over top of the wrap"
        "|on top of the insulation|counting the insulation|insulation and all|wrap and all"
        "|around the insulation"
    ),
    "place.liner": (
        "inside the liner|inside liner to liner|liner to liner|inside of the liner"
        "|clear of the liner|face of liner to face of liner"
    ),
    "place.frame": (
        "frame|face|faceplate|face plate|outer frame|edge of frame|outside the frame|flange"
        "|trim|over the frame|frame size|plate"
    ),
    "place.slots": (
        "slots|slotted|slotted part|just the slots|hole|the hole|opening|throat|duct opening"
        "|rough opening|neck|cutout|cut out"
    ),
    "place.jacket": (
        "jacket|over the jacket|outer jacket|outside jacket|over jacket|outside of the jacket"
        "|outside the jacket|jacket to jacket|jacket and all|including the jacket"
        "|with the jacket"
    ),
    "place.core": (
        "core|inner core|flex core|core size|inside core|inner liner|collar|coor|inner diameter"
    ),
    "place.bare": "bare metal|bare|on bare metal|bare duct|on the bare metal|to the bare metal",
}


@cache
def meanings() -> dict[tuple[str, ...], tuple[str, ...]]:
    """The words of each phrase, and everything it may mean."""
    table: dict[tuple[str, ...], tuple[str, ...]] = {}
    for meaning, phrases in MEANINGS.items():
        for phrase in phrases.split("|"):
            words = tuple(phrase.replace("-", " ").replace(".", " ").replace("/", " / ").split())
            had = table.get(words, ())
            if meaning not in had:
                table[words] = (*had, meaning)
    for words, senses in table.items():
        if len(words) > 1:
            table[words] = (*senses, *_inherited(words, senses, table))
    return table


_ROUND_WORDS: Final = {
    **dict.fromkeys(
        ("pipe", "pipes", "hose", "hoses", "tube", "tubes", "tubing", "spiral"), "shape.roundish"
    ),
    **dict.fromkeys(("round", "dia", "diameter"), "shape.round"),
}


def _inherited(
    words: tuple[str, ...],
    senses: tuple[str, ...],
    table: Mapping[tuple[str, ...], tuple[str, ...]],
) -> list[str]:
    """What the words of a longer phrase still mean: a "plastic pipe" is round, a liner lines."""
    found = {_ROUND_WORDS[word] for word in words if word in _ROUND_WORDS}
    if all(sense.startswith("shape.") for sense in senses):
        parts = [sense for word in words for sense in table.get((word,), ())]
        found.update(sense for sense in parts if sense.startswith("material."))
    if "place.liner" in senses:
        found.add("material.lined_metal")
    if "place.over wrap" in senses:
        found.add("material.wrapped")
    if "place.bare" in senses and "metal" in words:
        found.add("material.galvanized")
    return sorted(found - set(senses))


@cache
def vocabulary_words() -> frozenset[str]:
    """Every single word of the table; none is ever taken for a misspelling."""
    return frozenset(word for phrase in meanings() for word in phrase)
