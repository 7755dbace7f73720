"""Everyday words that stand near a trade word and are never a misspelling of one.

Without this list "the brown house on the corner" holds a "hose". Words that are also in the
vocabulary need no entry here.
"""

from __future__ import annotations

from typing import Final

from intake.reading.words import words

__all__ = ["PLAIN_WORDS"]

PLAIN_WORDS: Final = words(
    """
    abduction abnormal aboard about above acceptance according across actually addition adjust
    adjusted after again ago aires alain alex all almighty almost along also altering always am
    an and another any anyone anything approximate are area aren't arise around as ask asked at
    attic atypical averaged averages away back backed baked ball banged banned bard basement
    basics basil basin basis bathroom batted batter bayer be beard bears beater beating because
    bedroom been beet before behaving behind being believe below beside best bette better
    between beverage beyond big bird bitter black blacked blacks bland blank blankets bleak
    blinding blinking block blockade blocker blockers blower blown blue boar board boards
    boasting boating boats boiled bolted books boost boot booty bore bored born borrowed boss
    bother bottom bound box braid brands brandt brandy break breaking breeding brighten brighter
    brighton broke brother brown bruh bucky bugged building bully bummed buried burned busted
    but butter by cakes call called came camping camps can can't canned cannot capacity car
    cards cared carpets case cased catering cats cause ceiling change chanting charting chase
    chatting cheating check checked choice choke choose choosing chopping chore chose christine
    chuck circulate clean cleaners cleaning cleans cleansing clear cleared clearer clearing
    clears clinging clock clocked cloned close closed closet clothing cloud clown clustered
    coaching coal coalition coast coatings coefficient cognition coin coins colon colorado
    coloring colors colour combating come comes coming commented committed communicate
    communicates communication communications complete completed completes conditional
    conditioned conditioner conditions conor cons consonant constance constantly constants
    constraint constructed consulate consultant contestant controller controllers controls
    convened convention conventionally conventions converted converter conveyed conviction
    cooked cooking cooks coral cores corn corned corner cornered corners cost costing costly
    couch cough could couldn't counting coupling courting cousin coverage coveted crafting
    cramps crap crawl creating creeping crime cristina crop cross crown cuddling cultured curry
    customer cut day dead deal debating deceit decree decrees deduction deeds deficiency
    deficient definite definitely delia della den derive descent deter diabetes did didn't
    differences different dine dined diner dining directed directly director directs dirty
    discharged discharges discussing disrupting dive do docked does doesn't doesnt dog dogs
    doing don't donating done dons door doors dough douse down downstairs drip dripping drive
    drooling drove drown drowning drunk dry dull dust dusted each early east easy eating
    ecstatic efficiently eighteenth eighties either elastic electric electrical electron
    electronics electrons eleventh else encrypted end endearing enduring enough ensuring
    enticing entrusted equipment eternal eternally ether even ever every everything exact
    exactly except face fact factor factors fair fairy faked fall family far fashions fast fave
    feed feeds feel fees felt fermented ferry fest fetal fever few fide fife fifteenth fifth
    fight fighters file filed fillers filly filtered filth finch find fine fined finer finish
    fired fires first fives fix fixes flat flattered flax flea flecked fled flee fleet fleeting
    flesh flew flexed floating flock floor flour flow flowed flower flows flurry flux fly foam
    foist folds follow folly font food fool fooling footy for foray fore forget formal fort
    forte forth forts foul found four fourteenth frame free freeing frequent frequently fresh
    fret friend from front fronted frosty froze full funniest furnace gala gale gals game garage
    gas gave get getting girl give given glad gleaming glitches glock gloss go goes going golds
    gone good goose gore gorillas got gould governed grand grasping grass gray grease great
    greats green greet greeting greta grilled grimes gripping ground grounds grouping grown
    grows guess guest gully guy hacked half hall hallway hallways hand hang hard has hasn't
    hasty hate hating have haven't having he head heading healed healing healy hear heard
    hearing hearings heat heavenly heavy heights held help her here hid hidden hides high him
    hindered hires his hit hive hoard hoes hoist hold hole holes home honoured hoods hooks hope
    horn horribly horse hosed hot hound hour hours house housed houses how however hundreds
    hurry hype i i'd i'll i'm i've idea if ill impaired impeached imperfect implanted imported
    impossible in inaction incl inclined incubation indecent indefinite indefinitely indication
    indifference indirect inefficient infection inference infinity inflated inflation informal
    inhalation injection injunction inserted inside insider insiders insides instead instructed
    into intuition invented inventor inverted invested investor ions irregular is isn't isolated
    isolation it it's itch its itself jacked jingle jive job jock join joined joins joint joints
    joist just keating keep kept kilda kind kinds kitchen knew know known kristina lack lacked
    lady lager lamented lamps laser last late later laundry lawful lawyer layers lead leading
    leaking leaned leaning leaping learning leasing least leave leaves leaving leeds left length
    less let let's letter lettering level lever leverage lick lie lied life lift light lights
    like liked likely liking linda line lined linen liner's liners lines linger linked linking
    lint linus list live lived liver living locating loch locke locks loco logged loner long
    look looked looking looks looms loops loose loot lore lose lost lot loud louse low lower
    luck lucky made madly main make makes mall man manned manor mantle many mark mastered mater
    maternal matte matteo matter mattered may maybe mayer mclean me meal mean means measure
    measured medal meddling mediums meet melted men mental mentoring menus mere meta metals
    meteor meter meters meyer meyers might mighty minds mine mined miner mines mingle mining
    minors mins minute miss mixed mock mocked modeling moderated moderates moderator modulation
    modules moist molds molly mons moody moot more morning morse morty most mother motors mould
    mound mouse move moved much multiples multiplied multiplier multiply must my naked name near
    nearly need needy negatively negatives nerds never new newer next nice niches nifty night
    nightly nike nile nina nineteenth nineties nino no nobody none nope nor norma normally
    norman norse north nose not note nothin nothing noticing noting now number obstruct of off
    office often oh oiled old on once one only opal open or oral order ordinarily other others
    otter our ousted out outer outlined outsider outsiders oven over own owner paced packaged
    packer packet page paid painless paint palin panel panicked parable parked part party past
    paternal payer peaking peeked penned people pepe perfected perfectly perhaps permanently
    person pertinent pet petal petals peter peters pets petty phased phases phone photo phrase
    pick picked picture pies pike pile piles pinch pine pined pines pinned pint piper pipes
    place plaid plains plan plastics play player playin pleading please pleasing plugs plus
    point points pointy pont poor pope popes porch pore portable position positively positives
    possible post potty pouch pound pour prefect prepping prestige pretty prime print printing
    probably problem programme programmer programmers programmes prop pulled punitive put
    quarterly quartet quick quiet quite quits quote rack rally rambling ramos ran rapid raping
    rapping rascal rather reacting read reading ready real really realty reason recent recovered
    red redirect reduction reflex registered registrar registry regularly regulars regulate
    regulator reilly relating relative reliable rendering rendition resisted rest rested
    returned reversal ride rides rife right rightly rights rinse ripe ripped risen risk rite
    roasting rock rocked roll roof room root rose rotating rotor rouge rough round rouse run
    ruse rushed rust ruthless sadly said sailed same sampling saw say says scaled schooled
    schooling schools score scorer scots scotty scouting scrapped seated seater seating
    seduction see seeds seem seems seen sell send sent serenity set sevens seventeenth seventh
    seventies sever several severely severity shade shades shake shale shall shame shamed shane
    shaped shapes share shared sharpe shave shaved she sheet shine shingles shock shocked shop
    shopping shore short shots should show shut side sided sides sidle sight sign since sine
    single singled singles sinus sir sister sit site sixteenth sixth size sized sketches skip
    slack slain slap slayer sleek slit slots slower sludge small smell smiled snag snaps
    sneaking snuff so soaked soap sock socket soft solids some somebody someone somethin
    something somethings sometimes sons soon soothing sore sorry sort sorts sound sounds sour
    south space spanking spanned sparking sparkle sparring sparsely speak speaking specs spend
    spends spied spinal spiral spits splits spoiled spoilers sports sporty spot sprawling spray
    squarely squire squirrels stack stacks staff staffed stage stair stairs stake stale stamping
    stand standards stanford star stare start started startling state stay steal steam steel
    steele steep steer step stepped stern steven stew stick sticks stiff still stitched stitches
    stock stocked stole stone stool stop stopper stopping store storm story stove straight
    strapped straw stray stream street strip stripped strips strong struck stub stuck students
    studio studs study stuff stuffs stun styled styles such sucked sufficient suite sully summed
    sunlight suppose sure surfaced surfaces sven swap sweaters sweating sweeter switched table
    take taken talk tall tank tanned tape tasty tell temperate temperatures ten tens tents
    terribly than thank thanks that that's the thee their them theme then there there's these
    theses they theyre thick thin thing things think thirsty thirteenth thirties this thistle
    thorough those though thought thousands three threw through tides tight tightly till time
    tins tiny tipped tires to today toes together told tolerate tomorrow toms tonal tone tones
    tong toni tony too took top topical topped tops torah torch tore torn toss touch touchy tour
    toward town towns toys trap trapped trapping traps treat treating tree trial tribal trick
    tried tripping tropical truck true trusted try turn tweaking two type types typically
    unacceptable uncontrolled unconventional uncovered under unfairly unit unlocked unplugged
    unsigned until up upon upstairs us use used usually valuables van variance very vine vined
    voice volumes vouch wait walk wall walls wally walt want wards wares warm warp warped was
    wasn't watch water watering way we we're weak wear wearable weaving weeds week weight weird
    well went were west wet what whatever wheel wheels when where whether which while whistler
    whistles white who whole wholly whopping whose why wide wider wight wild wildly will wind
    window winds wine wined wines winter wipe wipes wire wired wires wise wish witches with
    within without wives won't wood woody woolf word words wore work works world worn worst
    would wouldn't wound wrapped wrapper wrapping wraps write wrong yall yard year yellow yes
    yesterday yet you young your
    """
)
