"""The words of yes and no, and of doubt."""

import re
from typing import Final

from intake.reading.words import words

__all__ = [
    "ALL",
    "ALONE",
    "ANY",
    "ASKING",
    "BOTH",
    "CLAUSES",
    "CLAUSE_STARTS",
    "DOES",
    "DOES_NOT",
    "FILLER",
    "GIVEN",
    "HAPPENED",
    "IN_HAND",
    "MIXED",
    "NEGATED_QUESTION",
    "NEGATIONS",
    "NOT_IN_HAND",
    "NO_DOUBT",
    "NO_START",
    "SLIPS",
    "SOFT",
    "TURN",
    "UNSURE",
    "WORD",
    "YES_START",
]

YES: Final = (
    r"(?:yes+|yessir|yes sir|yessum|yep+|yup+|yeah+|yea+h?|yas+|ya|yah|ye|y|yus|yeh"
    r"|yeppers|yessiree|uh ?huh|uhuh|mhm+|mm ?h+m+|mmhm|affirmative|affirm|correct|right"
    r"|true|truth|absolutely|definitely|definately|definitly|certainly|indeed|totally"
    r"|of course|course|you bet|u bet|you betcha|you know it|for sure|sure|surely"
    r"|sure thing|sure is|sure does|sure do|sure are|sure can|sure has|certainly is"
    r"|it sure is|oh yeah|hell yes|hell yeah|heck yeah|heck yes|10 ?4|ten four|10-4"
    r"|ten-four|roger(?: that)?|aye|si|oui|ja|da|positive|always|bingo|exactly|agreed"
    r"|most definitely|no doubt|no question|without (?:a )?doubt|no doubt about it"
    r"|without question|fo sho|very much so|very much|i (?:do|did|have|can|could|will|am"
    r"|would)|we (?:do|did|have|can|could|are)|they (?:do|did|have|can|are|were|sure do"
    r"|sure are)|(?:it|that|he|she|this) (?:is|does|did|has|can|was|will|would|sure does"
    r"|sure is|really is|really does)|it'?s (?:there|true)|there (?:is|are|was|were"
    r"|sure is)|(?:it|they) always (?:do|does|has|have|is|are)|(?:it|that)'?s right"
    r"|that'?s correct|that'?s true|(?:it|they|that) (?:should|oughta|ought to)(?: be)?"
    r"|i (?:believe|think|guess|suppose|imagine|reckon|assume|hope|would say|expect"
    r"|presume|wanna say)(?: so| yes| it is| it does| they do| they are| it has| there is"
    r"| there are| that's right| yeah| they have)|i'd say (?:so|yes|yeah)|id say (?:so|yes"
    r"|yeah)|pretty sure(?: it is| it does| they do| they are| so| yes| there is)?"
    r"|fairly sure(?: it is| it does)?|fairly certain|probably|prob|probly|prolly"
    r"|most likely|likely|very likely|more than likely|should be|should|ought to be"
    r"|seems so|seems to be|seems like it|seems to|appears so|appears to|appears to be"
    r"|looks like it|looks like it is|looks like|looks that way|sounds like it"
    r"|sounds right|could be yes|far as i (?:know|can tell)|as far as i (?:know"
    r"|can tell)(?: yes)?|afaik|to my knowledge|presumably|supposedly|allegedly|apparently"
    r"|evidently|assume so|assuming so|guess so|i'?d (?:guess|think) (?:so|yes|yeah)"
    r"|id (?:guess|think) (?:so|yes|yeah)|i guess|i suppose|i reckon|i think|i believe"
    r"|i assume|think so|believe so|suppose so|reckon so|hope so|sounds about right"
    r"|feels like it|i'm pretty sure|why not|sure why not|ok|okay|okey dokey|k|yes'm"
    r"|100 ?%|(?:a |one )?(?:100|hundred) percent|each and every one|thumbs up|every time|all the"
    r" time|constantly|all of them|every one|both"
    r"|both of them|everywhere|oh yes|confirmed|confirm|done|checked|correctomundo|yuppers"
    r"|damn right|darn right|you got it|obviously|naturally|clearly|yes indeed|yes i do"
    r"|all good there|duh|quite|very|frequently|often|regularly|plenty|lots|tons|several"
    r"|a few|a couple|two of them|does indeed|is indeed|a lot|so i'?m told|so they say|extremely"
    r"|incredibly|big time"
    r"|both are|they all are|they all do|all are|all do|every single one|yes it does"
    r"|yes it is|yes there is)"
)

NO: Final = (
    r"(?:no+|nope+|nah+|naw|na+h|nay|n|noo+|nup|negative|negatory|never|none|nada|nothing"
    r"|zip|zilch|nein|nyet|non|not at all|not really|not even close|no way|not a chance"
    r"|no chance|no sir|no siree|nosir|nosiree|no siree bob|nossir|no ma'?am|not one"
    r"|not once|not a single one|nopers|nopey|does not|is not|do not|did not|has not"
    r"|are not|was not|not yet|not any|not a one|not any more|not anymore|no longer|(?:it"
    r"|that|this|he|she) (?:isn'?t|doesn'?t|hasn'?t|can'?t|ain'?t|wasn'?t|won'?t|didn'?t"
    r"|is not|does not|has not|cannot|was not|never (?:is|does|did|has|was)|doesnt|isnt)"
    r"|(?:they|we|i|you) (?:don'?t|didn'?t|haven'?t|can'?t|aren'?t|couldn'?t|do not"
    r"|are not|ain'?t|won'?t|never (?:do|did|have)|cannot|dont|arent|wouldn'?t)"
    r"|there (?:isn'?t|aren'?t|ain'?t|is not|are not|is none|are none|wasn'?t|weren'?t"
    r"|isnt|is no|are no|'?s no|'?s none|'?s not)|there'?s (?:no|none|not)|isn'?t|doesn'?t"
    r"|can'?t|ain'?t|don'?t|aren'?t|hasn'?t|haven'?t|won'?t|isnt|doesnt|cant|aint|hasnt"
    r"|i (?:don'?t|dont|do not) (?:think|believe|reckon|suppose|guess|imagine)(?: so"
    r"| it is| it does| they do| they are| it has| there is| there are| they have| that"
    r"| he did)?|(?:don'?t|dont) (?:think|believe|reckon) so|i wouldn'?t (?:say so"
    r"|think so)|i doubt (?:it|that)|doubt it|i'?d (?:guess|say|think) (?:no|not)"
    r"|id (?:guess|say|think) (?:no|not)|doubtful|highly doubtful|very doubtful"
    r"|i highly doubt it|unlikely|not likely|very unlikely|highly unlikely|probably not"
    r"|prob not|probly not|prolly not|most likely not|likely not|maybe not|perhaps not"
    r"|i (?:think|guess|believe|suppose|hope|'?d say) not|guess not|think not|hope not"
    r"|suppose not|don't suppose so|pretty sure (?:not|no|it (?:isn'?t|doesn'?t|is not)"
    r"|there (?:isn'?t|aren'?t)|they (?:don'?t|aren'?t))|shouldn'?t be|should not be"
    r"|seems not|apparently not|evidently not|obviously not|definitely not|absolutely not"
    r"|certainly not|of course not|course not|hell no|heck no|i'd say (?:no|not)"
    r"|not that (?:i|we|they|he|she|anyone|anybody)(?:'?ve| have|'?m| am| can| could| do"
    r"| did|'d)? ?(?:know|aware|see|seen|saw|tell|find|found|noticed|notice|hear|heard"
    r"|remember|recall|be aware|think|smell)?(?: of)?|not to my knowledge"
    r"|not as far as i (?:know|can tell)|not that i'?m aware(?: of)?|none that (?:i"
    r"|we)(?:'?ve| have| can| could)? ?(?:know|see|seen|saw|find|found|noticed|notice"
    r"|remember|tell)?(?: of)?|not yet|not now|not today|false|incorrect|wrong|hardly"
    r"|hardly ever|barely(?! hear)|barely ever|seldom|rarely|uh ?uh|nuh ?uh|nuh-uh|unh ?uh"
    r"|thumbs down|never has|never have|never did|never does|never seen (?:it|any|one)"
    r"|never noticed|never heard (?:it|any|one)|neither|neither one|nowhere|zero"
    r"|not so far|not in the least|not in a million years|far from it|i wish|no it'?s not"
    r"|not the case|not since|nobody|not so much|not particularly|not very|i've never"
    r"|ive never|fraid not|afraid not|i'm afraid not|denied|can not|it'?s not|its not"
    r"|they'?re not|theyre not|that'?s not|we'?ve never|wouldn'?t|couldn'?t)"
)

MIXED: Final = re.compile(
    r"\b(?:yes and no|yes or no|sometimes|some times|sort of|sorta|kind of|kinda|somewhat"
    r"|partly|partially|partial|depends|depending|half|halfway|in places|in spots"
    r"|some of (?:it|them)|part of (?:it|them)|used to|maybe|mabye|mayb|perhaps|possibly"
    r"|might|could go either way|either|now and then|once in a while|on and off|off and on"
    r"|occasionally|every so often|only (?:when|if|in|on|at|with|the|some|one|part)|mostly"
    r"|more or less|not all|not always|not every|not entirely|not completely|not fully"
    r"|not quite|almost|nearly|(?<!every )one is|one of them|to a degree|to some extent|in a way"
    r"|ish"
    r"|hit or miss|hit and miss|50 ?/ ?50|fifty fifty|so so|so-so|could be|may be"
    r"|upstairs only|downstairs only|last (?:year|summer|winter|week|month)|it did"
    r"|did once|in the past|before|so[- ]?and[- ]?so|barely(?! hear)|varies|a bit of both|both ways"
    r"|up to a point|except|unless|intermittent\w*|one side|other side|not the|most"
    r"|all but|just the|just one|a little|a bit|slightly|(?<!not )once|twice|a few times"
    r"|couple of times|couple times|every (?:summer|winter|year|month|time|so often)"
    r"|(?:two|three|one|some|most|few|half) of (?:the |them|those)?(?:two|three|four|five"
    r"|six)?)\b"
)

UNSURE: Final = re.compile(
    r"\b(?:think|thinking|believe|guess|guessing|probably|prob|probly|prolly|maybe|should"
    r"|suppose|pretty sure|fairly sure|fairly certain|likely|unlikely|seems?|appears?"
    r"|assum\w+|far as|as i know|afaik|that i know|that i'?m aware|my knowledge|doubt\w*"
    r"|i'd say|id say|might|reckon|imagine|hope|presum\w+|perhaps|not certain|not positive"
    r"|not sure|not 100|looks like|looks that way|sounds like it|sounds right|i can tell"
    r"|i remember|i recall|apparently|supposedly|supposed to|ought|expect|wanna say"
    r"|not that (?:i|we)|none that (?:i|we)|ish|i'?m told|they say|evidently|feels like"
    r"|from memory|can'?t be (?:sure|certain)|unsure|as best i|last i (?:knew|checked"
    r"|looked)|so i hear|highly doubt|allegedly)\b"
)

TURN: Final = re.compile(
    r"\b(?:no wait|wait|scratch that|actually|i mean|correction|sorry|oops|make that"
    r"|strike that)\b,?"
)

CLAUSES: Final = re.compile(
    r"[,;.!?:()]+|\s-+\s|\b(?:but|although|though|except|because|cause|since|however|and then)\b"
)

FILLER: Final = re.compile(
    r"^(?:(?:god|lord|gosh|geez|jeez|well|um+|uh+(?! ?u?h)|hmm+|oh|so|ah|er|like|honestly|i mean"
    r"|you know|hey|man"
    r"|boy|sure thing|to be honest|tbh|ok so|okay so|and|also|then|i'm gonna say"
    r"|im gonna say|gonna say|i'm going to say|i would say|the answer is|answer is|it'?s a"
    r"|that'?s a|that would be a?|big|put|put down|(?:the |my )?(?:customer|owner|homeowner"
    r"|landlord|tenant|wife|husband|he|she|they|(?:last |other )?guy|tech|contractor)"
    r"(?:'s)? (?:said|says|say|told me|thinks|tells me)|say|we'?ll say|hard|definite|solid|firm"
    r"|just|let'?s say|let'?s go with|i'll say|i'd go with|going with|go with)\s+)+"
)

NEGATIONS: Final = words(
    """
    no not isn't isnt aint ain't without never don't dont doesn't doesnt zero any hasn't haven't
    wasn't weren't didn't didnt wouldn't wouldnt nobody nor aren't arent non hardly free can't
    cant couldn't cannot won't nothing none
    negative negatory
    """
)

WORD: Final = re.compile(r"[a-z]+(?:'[a-z]+)?|\d+")

YES_START: Final = re.compile(YES + r"\b(?!')")

NO_START: Final = re.compile(NO + r"\b(?!')")

ASKING: Final = words(
    """
    does this that there have been with from your were they what when which where will would could
    should into over about unit duct ducts furnace house main the plenum metal attic blower filter
    coil system return supply trunk grille right like just still here only very more
    """
)

GIVEN: Final = words(
    """
    drain line pipe thermostat stat flue boot boots register registers vent vents crawl
    crawlspace hatch door panel
    wheel motor joist joists branch branches drop outside inside installer manual
    """
)
"""Things that a question speaks of as known; naming them again affirms nothing, unless it is asked
whether they are there."""

DOES: Final = re.compile(
    r"(?:the|that|this|one|two|three|a|only|just|some|they|it|we|i|my"
    r"|our)\b[a-z ']{0,40}\b(?:does|do|is|are|has|did|can|have|was|were|will|doesn't|don't"
    r"|isn't|aren't|hasn't|didn't|can't|won't)$"
)

DOES_NOT: Final = re.compile(r"(?:n't|not|never)\b|n't$|\bonly\b")

BOTH: Final = re.compile(
    r"\b(?:yes (?:and|or|&|/) no|yes ?/ ?no|y ?/ ?n|yeah,? no|no,? yeah|yes,? no"
    r"|nope?,? yes|no and yes|both yes and no|yes nor no|y and n)\b"
)

NO_DOUBT: Final = re.compile(
    r"\b(?:no|without(?: a)?|beyond(?: a)?) doubt\b|\bmake sure\b|\bi'?m sure\b"
)

IN_HAND: Final = re.compile(
    r"^(?:have you (?:got|a|any)|do you have|have you|did you bring|you got|got"
    r"|do you carry|is there an? .* (?:with you|on you|in your))"
)

NOT_IN_HAND: Final = re.compile(
    r"\b(?:left (?:it|mine|them|that|the|my)|forgot|haven'?t got|havent got|don'?t have"
    r"|dont have|don'?t own|dont own|broke|broken|busted|lost|at home"
    r"|in the (?:other )?(?:van|truck|shop|office)|back at|out for|loaned|lent|borrowed"
    r"|need to get|wish i|never had|dead|stolen|on order|not with me|not on me|not in front of me"
    r"|not handy"
    r"|didn'?t bring|didnt bring|no such|ain'?t got|aint got)\b"
)

NEGATED_QUESTION: Final = re.compile(
    r"\b(?:no|not|isn'?t|aren'?t|doesn'?t|don'?t|never|without|hasn'?t|haven'?t)\b(?! longer)"
)

ANY: Final = re.compile(r"\b(?:any|ever|anywhere|anything|at all|some)\b")

ALL: Final = re.compile(
    r"\b(?:all|every|each|everywhere|always|both|entire|whole|fully|completely)\b"
)

HAPPENED: Final = re.compile(
    r"\b(?:once|twice|times|every|last|did|in (?:january|february|march|april|may|june"
    r"|july|august|september|october|november|december|summer|winter|spring|fall|(?:19"
    r"|20)[0-9][0-9])|ago|years? back)\b"
)

SLIPS: Final = {
    "yse": "yes",
    "eys": "yes",
    "yez": "yes",
    "yesd": "yes",
    "yess": "yes",
    "yws": "yes",
    "ues": "yes",
    "ofc": "of course",
    "noep": "nope",
    "npoe": "nope",
    "nop": "nope",
    "noo": "no",
    "yp": "yep",
    "ywp": "yep",
    "yaeh": "yeah",
    "yeha": "yeah",
    "yhea": "yeah",
    "yeh": "yeah",
    "ys": "yes",
    "ya'll": "yes",
    "on": "on",
    "dnt": "don't",
    "noope": "nope",
    "nawp": "nope",
    "yuo": "you",
    "froze": "frozen",
    "def": "definitely",
    "deff": "definitely",
    "abs": "absolutely",
    "obv": "obviously",
    "obvs": "obviously",
    "nuthin": "nothing",
    "nuttin": "nothing",
    "yessum": "yes",
    "ye": "yes",
    "knot": "not",
    "theres": "there's",
    "thats": "that's",
    "dont": "don't",
    "doesnt": "doesn't",
    "isnt": "isn't",
    "cant": "can't",
    "wont": "won't",
    "hasnt": "hasn't",
    "havent": "haven't",
    "didnt": "didn't",
    "wasnt": "wasn't",
    "arent": "aren't",
    "couldnt": "couldn't",
    "wouldnt": "wouldn't",
    "werent": "weren't",
    "im": "i'm",
    "ive": "i've",
    "id": "i'd",
    "theyre": "they're",
    "aint": "ain't",
    "weve": "we've",
    "shes": "she's",
    "hes": "he's",
    "shoud": "should",
    "shuld": "should",
    "shld": "should",
    "nothin": "nothing",
    "drippin": "dripping",
    "leakin": "leaking",
    "runnin": "running",
    "workin": "working",
    "its": "it's",
    "yeees": "yes",
    "yasss": "yes",
    "definately": "definitely",
    "absolutley": "absolutely",
    "absolutly": "absolutely",
    "deffinitely": "definitely",
    "defiantly": "definitely",
    "correctly": "correct",
    "affirmitive": "affirmative",
    "affirmativ": "affirmative",
}

SOFT: Final = re.compile(
    r"(?:both|ok|okay|lots|plenty|right|a few|several|two|always|everywhere|all|every"
    r"|positive|clearly|true|quite|very|looks|seems|appears|sounds|far)\b"
)

ALONE: Final = words("nope nah naw negative nay nup noo")

CLAUSE_STARTS: Final = words("it it's its they they're that that's there there's the this i we")
