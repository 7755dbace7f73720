"""Everyday words that stand near a trade word and are never a misspelling of one.

Without this list "the brown house on the corner" holds a "hose". Words that are also in the
vocabulary need no entry here.
"""

from __future__ import annotations

from typing import Final

__all__ = ["PLAIN_WORDS"]

PLAIN_WORDS: Final = frozenset(
    """
    about above across actually after again ago all almost along also always am an and another any
    anyone anything are area aren't around as ask asked at attic away back basement be because been
    before behind believe below beside best better between beyond big black blue boss bottom box brown
    building but by call called came can can't cannot car case cause ceiling change check checked
    clean clear close closed closet coal come comes coming corner cost could couldn't crawl customer
    cut day dead deal den did didn't dirty do does doesn't doing don't done door doors down drive dry
    dust each early east easy either else end enough equipment even ever every everything exact
    exactly except face fact fair family far fast feed feel felt few find fine finish first fix flat
    floor fly follow for forget found four frame free fresh friend from front full furnace game garage
    gas gave get getting girl give given glad go goes going gone good got gray great green ground
    guess guest guy half hall hand hang hard has hasn't hate have haven't having he head hear heard heat
    heavy held help her here hid high him his hit hold hole home hope hot hour house how however i i'd
    i'll i'm i've idea if ill in inside instead into is isn't it it's its itself job just keep kept
    kind kitchen knew know known lady last late later laundry lead least leave leaves left length less
    let let's letter level lie life lift light like likely line list live living long look looked
    looking looks loose lost lot loud low made main make makes man many mark matter may maybe me mean
    means measure measured meet men might mine minute miss more morning most mother move moved much
    must my name near nearly need never new next nice night no nobody none nope nor north not note
    nothing now number of off office often oh old on once one only open or order other our out outer
    over own owner page paid paint part past people perhaps person phone photo pick picture place plan
    play please plus point poor porch possible post pretty probably problem put quick quiet quite rack
    ran rather read reading ready real really reason red rest right roll roof room rough round run
    rust said same saw say says see seem seems seen sell send sent set several shall she sheet shop
    short should show shut side sign since single sir sit site size skip small smell so soft some
    somebody someone something sometimes soon sorry sort sound south space spot stand start started
    state stay step still stop story straight street such suppose sure table take taken talk tall tank
    tape tell ten than thank thanks that that's the their them then there there's these they thick thin thing
    things think this those though thought three through till time tiny to today together told tomorrow
    too took top touch toward town tree tried truck true try turn two under unit until up upon us use
    used usually van very wait walk wall want warm was wasn't watch water way we we're weak wear week
    well went were west wet what whatever wheel when where whether which while white who whole why wide
    will window wish with within without won't wood word words work works world would wouldn't write
    wrong yard year yellow yes yesterday yet you young your bedroom bathroom upstairs downstairs
    addition spray foam buried hidden crown blown grown clown drown hours horse nose rose lose goose
    these choose those hoes hosed housed houses mouse louse rouse douse hound sounds bound pound
    found wound mound grounds around corners corned corned scorer horn born torn worn corn cores
    store score shore more bore chore fore tore wore gore lore pore sore metals medal petal mental
    petals mantle meter meters peter liners linen diner finer miner liner's lines lined fined mined
    wined dined pined vined boats boot boost board boards bored hoard beard bears bird pipes piper
    wipe ripe type types hype ripped tipped flew flow flows flower flowed floor flexed reflex fleet
    flesh flecked flax sleek bleak break broke spiral spinal trial tribal oral coral oven opal dull
    sized sides sided sidle tides rides hides wider wired weird wild wind winds winter wire wires
    studs study studio students staff stuff stock sticks stick stack stacks stage stair stairs stake
    stale star stare steal steam steep steer steel stew stern stone stool store storm stove straw
    stray stream strip strips strong struck stuck rapid wrapped crap trap traps wraps warped warp
    joints joint joist hoist moist foist voice choice join joins joined coin coins going doing being
    """.split()
)
