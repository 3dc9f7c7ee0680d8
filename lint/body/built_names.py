"""Written by python -m spotline.lint.body.build from data/*.yaml: change those, not this."""

# ruff: noqa
# fmt: off

from __future__ import annotations

SPELLINGS: dict[str, tuple[str, ...]] = {
    '1-1/2': ('one-and-a-half',),
    '1-1/4': ('one-and-a-quarter',),
    '1/2': ('half',),
    '1/2kn': ('half-kneeling',),
    '1/2kneel': ('half-kneeling',),
    '1/2kneeling': ('half-kneeling',),
    '1/4': ('quarter',),
    '1arm': ('one-arm',),
    '1hand': ('one-arm',),
    '1leg': ('one-leg',),
    '2arm': ('two-arm',),
    '2cm': ('two-leg',),
    '2hand': ('two-arm',),
    '2leg': ('two-leg',),
    '2man': ('partner',),
    '2person': ('partner',),
    '4man': ('partner',),
    '4person': ('partner',),
    '4wayneck': ('four-way', 'neck'),
    '6man': ('partner',),
    'BS': ('back', 'squat'),
    'BSS': ('rear-foot-elevated', 'split', 'squat'),
    'CS': ('chest-supported',),
    'FFESS': ('front-foot-elevated', 'split', 'squat'),
    'FS': ('front', 'squat'),
    'HBBS': ('high-bar', 'back', 'squat'),
    'HPS': ('hang', 'power', 'snatch'),
    'KBS': ('kettlebell', 'swing'),
    'LBBS': ('low-bar', 'back', 'squat'),
    'OHS': ('overhead', 'squat'),
    'RFESS': ('rear-foot-elevated', 'split', 'squat'),
    'SSBS': ('safety-bar', 'squat'),
    'STS': ('sit-to-stand',),
    'a-skip': ('a-skip',),
    'a-skipping': ('a-skip',),
    'ab': ('ab',),
    'abdmach': ('abduction', 'machine'),
    'abdmachine': ('abduction', 'machine'),
    'abdominal': ('ab',),
    'abduction': ('abduction',),
    'abductionmachine': ('abduction', 'machine'),
    'abductor': ('abduction',),
    'abovechest': ('off-chest',),
    'addedweight': ('weighted',),
    'addmach': ('adduction', 'machine'),
    'addmachine': ('adduction', 'machine'),
    'addsqueeze': ('adduction', 'squeeze'),
    'adduction': ('adduction',),
    'adductionmachine': ('adduction', 'machine'),
    'adductionsqueeze': ('adduction', 'squeeze'),
    'adductor': ('adduction',),
    'aeroplane': ('airplane',),
    'airplane': ('airplane',),
    'allfour': ('quadruped',),
    'alt': ('alternating',),
    'altarm': ('alternating',),
    'alternate': ('alternating',),
    'alternatearm': ('alternating',),
    'alternated': ('alternating',),
    'alternatefoot': ('alternating',),
    'alternateleg': ('alternating',),
    'alternating': ('alternating',),
    'alternatingarm': ('alternating',),
    'alternatingfoot': ('alternating',),
    'alternatinggrip': ('mixed-grip',),
    'alternatingleg': ('alternating',),
    'altleg': ('alternating',),
    'angledbar': ('angled-bar',),
    'ankleev': ('ankle', 'eversion'),
    'ankleever': ('ankle', 'eversion'),
    'ankleeversion': ('ankle', 'eversion'),
    'ankleinv': ('ankle', 'inversion'),
    'ankleinversion': ('ankle', 'inversion'),
    'ankleweight': ('ankle-weight',),
    'anklewt': ('ankle-weight',),
    'antirotation': ('anti-rotation',),
    'antirotationpress': ('anti-rotation', 'press'),
    'armbar': ('arm', 'bar'),
    'assist': ('assisted',),
    'assisted': ('assisted',),
    'asst': ('assisted',),
    'axle': ('thick-bar',),
    'axlebar': ('thick-bar',),
    'backext': ('back', 'extension'),
    'backextension': ('back', 'extension'),
    'backfootelevated': ('rear-foot-elevated',),
    'backfootonbed': ('rear-foot-elevated',),
    'backfootonbench': ('rear-foot-elevated',),
    'backfootonbox': ('rear-foot-elevated',),
    'backfootonchair': ('rear-foot-elevated',),
    'backfootoncouch': ('rear-foot-elevated',),
    'backfootonottoman': ('rear-foot-elevated',),
    'backfootonsofa': ('rear-foot-elevated',),
    'backfootonstool': ('rear-foot-elevated',),
    'backfootraised': ('rear-foot-elevated',),
    'backfootup': ('rear-foot-elevated',),
    'backhyper': ('hyperextension',),
    'backoff': ('back-off',),
    'backpack': ('sandbag',),
    'backpackmarch': ('ruck',),
    'backpackwalk': ('ruck',),
    'backraise': ('back', 'extension'),
    'backsquat': ('back', 'squat'),
    'backward': ('backward',),
    'bal': ('balance',),
    'balance': ('balance',),
    'band': ('band',),
    'bandabd': ('band', 'abduction'),
    'bandabduction': ('band', 'abduction'),
    'bandadd': ('band', 'adduction'),
    'bandadduction': ('band', 'adduction'),
    'banded': ('band',),
    'bandev': ('band', 'eversion'),
    'bandeversion': ('band', 'eversion'),
    'bandinv': ('band', 'inversion'),
    'bandinversion': ('band', 'inversion'),
    'barbell': ('barbell',),
    'barbellhipthrust': ('barbell', 'hip', 'thrust'),
    'baronback': ('barbell',),
    'battlerope': ('battle-rope',),
    'battlingrope': ('battle-rope',),
    'bb': ('barbell',),
    'bbflat': ('flat', 'barbell', 'bench', 'press'),
    'bearcrawl': ('bear', 'crawl'),
    'behindback': ('behind-back',),
    'behindbody': ('behind-back',),
    'behindhead': ('behind-head',),
    'behindneck': ('behind-neck',),
    'behindneckpress': ('behind-neck', 'press'),
    'benching': ('bench', 'press'),
    'benchpress': ('bench', 'press'),
    'benchpresslightened': ('bench', 'press', 'lightened'),
    'bentbar': ('bent-bar',),
    'bentknee': ('bent-knee',),
    'bentleg': ('bent-knee',),
    'bentover': ('bent-over',),
    'bentoverrow': ('bent-over', 'row'),
    'bentrow': ('bent-over', 'row'),
    'bergen': ('sandbag',),
    'betw': ('between',),
    'between': ('between',),
    'betweenleg': ('between-the-legs',),
    'bht': ('barbell', 'hip', 'thrust'),
    'bi': ('biceps',),
    'bicep': ('biceps',),
    'bilateral': ('two-leg',),
    'birddog': ('bird', 'dog'),
    'bj': ('broad', 'jump'),
    'bn': ('behind-neck',),
    'bodyhorizontal': ('level-body',),
    'bodylevel': ('level-body',),
    'bodyparalleltofloor': ('level-body',),
    'bodyupright': ('upright-body',),
    'bodyweight': ('bodyweight',),
    'bolster': ('bolster',),
    'botharm': ('two-arm',),
    'bothfoot': ('two-leg',),
    'bothhand': ('two-arm',),
    'bothleg': ('two-leg',),
    'bottle': ('dumbbell',),
    'bottomup': ('bottoms-up',),
    'boxjump': ('box', 'jump'),
    'boxsquat': ('box', 'squat'),
    'bp': ('bench', 'press'),
    'bridge': ('bridge',),
    'bridging': ('bridge',),
    'broadjump': ('broad', 'jump'),
    'bsq': ('back', 'squat'),
    'bstance': ('staggered-stance',),
    'btn': ('behind-neck',),
    'btnp': ('behind-neck', 'press'),
    'btw': ('between',),
    'btwn': ('between',),
    'bu': ('bottoms-up',),
    'buffalobar': ('cambered-bar',),
    'bulg': ('rear-foot-elevated',),
    'bulgarian': ('rear-foot-elevated',),
    'bulgarianlunge': ('rear-foot-elevated', 'split', 'squat'),
    'bulgariansquat': ('rear-foot-elevated', 'split', 'squat'),
    'bulgarianss': ('rear-foot-elevated', 'split', 'squat'),
    'bulgss': ('rear-foot-elevated', 'split', 'squat'),
    'bw': ('bodyweight',),
    'bwd': ('backward',),
    'cable': ('cable',),
    'cableabd': ('cable', 'abduction'),
    'cableabduction': ('cable', 'abduction'),
    'cableadd': ('cable', 'adduction'),
    'cableadduction': ('cable', 'adduction'),
    'calfraise': ('calf', 'raise'),
    'cambered': ('cambered-bar',),
    'camberedbar': ('cambered-bar',),
    'candj': ('clean', 'jerk'),
    'candp': ('clean', 'press'),
    'cg': ('close-grip',),
    'cgbench': ('close-grip', 'bench', 'press'),
    'cgbp': ('close-grip', 'bench', 'press'),
    'chairassist': ('assisted',),
    'chairassisted': ('assisted',),
    'chaircalfraise': ('seated', 'calf', 'raise'),
    'chaircurl': ('seated', 'curl'),
    'chairheelraise': ('seated', 'calf', 'raise'),
    'chairkneeextension': ('seated', 'leg', 'extension'),
    'chairlegextension': ('seated', 'leg', 'extension'),
    'chairmarch': ('seated', 'march'),
    'chairpress': ('seated', 'press'),
    'chairrise': ('sit-to-stand',),
    'chairrow': ('seated', 'row'),
    'chairsquat': ('sit-to-stand',),
    'chairstand': ('sit-to-stand',),
    'chestheight': ('chest-height',),
    'chestonbench': ('chest-supported',),
    'chestonincline': ('chest-supported',),
    'chestonpad': ('chest-supported',),
    'chestsup': ('chest-supported',),
    'chestsupp': ('chest-supported',),
    'chestsupport': ('chest-supported',),
    'chestsupported': ('chest-supported',),
    'chestsupportedrow': ('chest-supported', 'row'),
    'chestupright': ('upright-body',),
    'chinup': ('chin-up',),
    'chop': ('chop',),
    'chopper': ('chop',),
    'cj': ('clean', 'jerk'),
    'cl': ('clean',),
    'clam': ('clamshell',),
    'clamshell': ('clamshell',),
    'clean': ('clean',),
    'cleangrip': ('clean-grip',),
    'cleanjerk': ('clean', 'jerk'),
    'cleanpress': ('clean', 'press'),
    'clgrip': ('clean-grip',),
    'closegrip': ('close-grip',),
    'closegripbenchpress': ('close-grip', 'bench', 'press'),
    'closehand': ('close-grip',),
    'cmj': ('countermovement', 'jump'),
    'conc': ('concentration',),
    'concentration': ('concentration',),
    'contra': ('contralateral',),
    'contralat': ('contralateral',),
    'contralateral': ('contralateral',),
    'conv': ('conventional',),
    'conventional': ('conventional',),
    'countermovementjump': ('countermovement', 'jump'),
    'crooklie': ('hook-lying',),
    'crooklying': ('hook-lying',),
    'crossbody': ('cross-body',),
    'crossed': ('crossed',),
    'crossover': ('crossover',),
    'csr': ('chest-supported', 'row'),
    'curlbar': ('bent-bar',),
    'curlup': ('curl-up',),
    'curtsey': ('curtsy',),
    'curtsy': ('curtsy',),
    'daypack': ('sandbag',),
    'daypackwalk': ('ruck',),
    'db': ('dumbbell',),
    'dbflat': ('flat', 'dumbbell', 'bench', 'press'),
    'dbl': ('double',),
    'deadarmhang': ('dead-hang',),
    'deadbug': ('dead', 'bug'),
    'deadhang': ('dead-hang',),
    'deadlift': ('deadlift',),
    'deadlifting': ('deadlift',),
    'deadliftlightened': ('deadlift', 'lightened'),
    'deadstart': ('dead-start',),
    'deadstop': ('dead-stop',),
    'dec': ('decline',),
    'decl': ('decline',),
    'decline': ('decline',),
    'declined': ('decline',),
    'deficit': ('deficit',),
    'delt': ('delt',),
    'deltoid': ('delt',),
    'dev': ('deviation',),
    'deviation': ('deviation',),
    'df': ('dorsiflexion',),
    'dhandle': ('d-handle',),
    'disc': ('plate',),
    'dj': ('drop', 'jump'),
    'dl': ('deadlift',),
    'dooranchor': ('band',),
    'dooranchored': ('band',),
    'doorframe': ('door-frame',),
    'dorsiflexion': ('dorsiflexion',),
    'double': ('double',),
    'doublearm': ('two-arm',),
    'doubleleg': ('two-leg',),
    'downonly': ('lowering-only',),
    'downphase': ('lowering-only',),
    'downphaseonly': ('lowering-only',),
    'dropjump': ('drop', 'jump'),
    'dropset': ('drop-set',),
    'dumbbell': ('dumbbell',),
    'ecc': ('eccentric',),
    'eccentric': ('eccentric',),
    'eccentriconly': ('lowering-only',),
    'ecconly': ('lowering-only',),
    'edgelift': ('edge', 'lift'),
    'elastic': ('band',),
    'elasticband': ('band',),
    'elevatedfoot': ('foot-elevated',),
    'er': ('external', 'rotation'),
    'erg': ('ergometer',),
    'ergo': ('ergometer',),
    'ergometer': ('ergometer',),
    'exerciseball': ('stability-ball',),
    'ext': ('extension',),
    'extension': ('extension',),
    'externalrotation': ('external', 'rotation'),
    'extn': ('extension',),
    'extrot': ('external', 'rotation'),
    'extrotation': ('external', 'rotation'),
    'eyelevel': ('eye-level',),
    'ez': ('bent-bar',),
    'ezbar': ('bent-bar',),
    'ezcurlbar': ('bent-bar',),
    'facedown': ('prone',),
    'facedownonincline': ('chest-supported',),
    'facedownoninclinebench': ('chest-supported',),
    'facepull': ('face', 'pull'),
    'fallout': ('fallout',),
    'fatbar': ('thick-bar',),
    'fatgrip': ('thick-grip',),
    'ffe': ('front-foot-elevated',),
    'ffess': ('front-foot-elevated', 'split', 'squat'),
    'fingerextension': ('finger', 'extension'),
    'fingerextensor': ('finger', 'extension'),
    'firstpull': ('first-pull',),
    'fitnessball': ('stability-ball',),
    'fixedtrack': ('guided-bar',),
    'flatbarbell': ('flat', 'barbell', 'bench', 'press'),
    'flatbarbellbenchpress': ('flat', 'barbell', 'bench', 'press'),
    'flatbb': ('flat', 'barbell', 'bench', 'press'),
    'flatdb': ('flat', 'dumbbell', 'bench', 'press'),
    'flatdumbbell': ('flat', 'dumbbell', 'bench', 'press'),
    'flatdumbbellbenchpress': ('flat', 'dumbbell', 'bench', 'press'),
    'flex': ('flexion',),
    'flexion': ('flexion',),
    'floorpr': ('floor', 'press'),
    'floorpress': ('floor', 'press'),
    'fly': ('fly',),
    'flye': ('fly',),
    'footballbar': ('multi-grip-bar',),
    'footelev': ('foot-elevated',),
    'footelevated': ('foot-elevated',),
    'footin': ('toe-in',),
    'footinair': ('feet-up',),
    'footinward': ('toe-in',),
    'footloaded': ('ankle-weight',),
    'footofffloor': ('feet-up',),
    'footoffground': ('feet-up',),
    'footonbed': ('foot-elevated',),
    'footonbench': ('foot-elevated',),
    'footonblock': ('foot-elevated',),
    'footonbox': ('foot-elevated',),
    'footonchair': ('foot-elevated',),
    'footoncouch': ('foot-elevated',),
    'footonottoman': ('foot-elevated',),
    'footonsofa': ('foot-elevated',),
    'footonstep': ('foot-elevated',),
    'footonstool': ('foot-elevated',),
    'footout': ('toe-out',),
    'footoutward': ('toe-out',),
    'footraised': ('foot-elevated',),
    'footturnedin': ('toe-in',),
    'footturnedout': ('toe-out',),
    'footup': ('feet-up',),
    'forbalance': ('for-balance',),
    'forward': ('forward',),
    'forwardandback': ('forward-back',),
    'forwardback': ('forward-back',),
    'forwardorback': ('forward-back',),
    'forwardorbackward': ('forward-back',),
    'fourman': ('partner',),
    'fourperson': ('partner',),
    'fourpoint': ('quadruped',),
    'fourway': ('four-way',),
    'fourwayneck': ('four-way', 'neck'),
    'frogpump': ('frog', 'pump'),
    'fromaboveknee': ('from-mid-thigh',),
    'fromabvknee': ('from-mid-thigh',),
    'frombelowknee': ('from-mid-thigh',),
    'fromblwknee': ('from-mid-thigh',),
    'fromhighthigh': ('from-mid-thigh',),
    'fromhip': ('from-mid-thigh',),
    'fromknee': ('kneeling',),
    'frommidthigh': ('from-mid-thigh',),
    'frompowerposition': ('from-mid-thigh',),
    'frontfootelev': ('front-foot-elevated',),
    'frontfootelevated': ('front-foot-elevated',),
    'frontfootelevatedsplitsquat': ('front-foot-elevated', 'split', 'squat'),
    'frontfootonblock': ('front-foot-elevated',),
    'frontfootonbox': ('front-foot-elevated',),
    'frontfootondeck': ('front-foot-elevated',),
    'frontfootonplate': ('front-foot-elevated',),
    'frontfootonstep': ('front-foot-elevated',),
    'frontfootraised': ('front-foot-elevated',),
    'frontfootsplitsquat': ('front-foot-elevated', 'split', 'squat'),
    'frontfootup': ('front-foot-elevated',),
    'frontheelelevated': ('heel-elevated',),
    'frontheelraised': ('heel-elevated',),
    'frontheelup': ('heel-elevated',),
    'frontrack': ('front-rack',),
    'frontsquat': ('front', 'squat'),
    'fsq': ('front', 'squat'),
    'fwd': ('forward',),
    'fwdorback': ('forward-back',),
    'fwdorbwd': ('forward-back',),
    'getup': ('get-up',),
    'ghd': ('glute-ham-bench',),
    'ghr': ('glute-ham', 'raise'),
    'gi': ('towel',),
    'gliding': ('slider',),
    'glidingdisc': ('slider',),
    'glute': ('glute',),
    'gluteal': ('glute',),
    'glutebridge': ('glute', 'bridge'),
    'gluteham': ('glute-ham',),
    'glutehambench': ('glute-ham-bench',),
    'glutehamraise': ('glute-ham', 'raise'),
    'gluteu': ('glute',),
    'gm': ('good', 'morning'),
    'goblet': ('goblet',),
    'gobletheld': ('goblet', 'held'),
    'goblethold': ('goblet', 'held'),
    'gobletposition': ('goblet',),
    'gobletsquat': ('goblet', 'squat'),
    'goodmorning': ('good', 'morning'),
    'guidedbar': ('guided-bar',),
    'guidedbarbell': ('guided-bar',),
    'gymball': ('stability-ball',),
    'gymnasticring': ('ring',),
    'hacksquat': ('hack', 'squat'),
    'half': ('half',),
    'halfkn': ('half-kneeling',),
    'halfkneel': ('half-kneeling',),
    'halfkneeling': ('half-kneeling',),
    'halted': ('paused',),
    'halting': ('paused',),
    'ham': ('hamstring',),
    'hamcurl': ('leg', 'curl'),
    'hammercurl': ('hammer', 'curl'),
    'hammergrip': ('neutral-grip',),
    'hammy': ('hamstring',),
    'hammycurl': ('leg', 'curl'),
    'hamstring': ('hamstring',),
    'hamstringcurl': ('leg', 'curl'),
    'handandknee': ('quadruped',),
    'handelev': ('hand-elevated',),
    'handelevated': ('hand-elevated',),
    'handle': ('handle',),
    'handonbar': ('hand-elevated',),
    'handonbarinrack': ('hand-elevated',),
    'handonbed': ('hand-elevated',),
    'handonbench': ('hand-elevated',),
    'handonbox': ('hand-elevated',),
    'handonchair': ('hand-elevated',),
    'handoncouch': ('hand-elevated',),
    'handondesk': ('hand-elevated',),
    'handonottoman': ('hand-elevated',),
    'handonsofa': ('hand-elevated',),
    'handonstool': ('hand-elevated',),
    'handontable': ('hand-elevated',),
    'handstandpushup': ('handstand', 'push-up'),
    'hang': ('hang',),
    'hanging': ('hang',),
    'hangkneeraise': ('hang', 'knee', 'raise'),
    'hanglegraise': ('hang', 'leg', 'raise'),
    'hangpowerclean': ('hang', 'power', 'clean'),
    'hangpowersnatch': ('hang', 'power', 'snatch'),
    'hb': ('high-bar',),
    'hbdl': ('trap-bar', 'deadlift'),
    'hdl': ('handle',),
    'heavyrope': ('battle-rope',),
    'heelelev': ('heel-elevated',),
    'heelelevated': ('heel-elevated',),
    'heelonblock': ('heel-elevated',),
    'heelonplate': ('heel-elevated',),
    'heelonwedge': ('heel-elevated',),
    'heelraised': ('heel-elevated',),
    'heelup': ('heel-elevated',),
    'hexbar': ('trap-bar',),
    'hi': ('high',),
    'high': ('high',),
    'highbar': ('high-bar',),
    'highbarbacksquat': ('high-bar', 'back', 'squat'),
    'highhang': ('hang',),
    'highincline': ('steep-incline',),
    'highlow': ('high-to-low',),
    'highplank': ('high', 'plank'),
    'hightolow': ('high-to-low',),
    'hilo': ('high-to-low',),
    'hipabd': ('hip', 'abduction'),
    'hipabduction': ('hip', 'abduction'),
    'hipabductor': ('hip', 'abduction'),
    'hipadd': ('hip', 'adduction'),
    'hipadduction': ('hip', 'adduction'),
    'hipadductor': ('hip', 'adduction'),
    'hipext': ('hip', 'extension'),
    'hipextension': ('hip', 'extension'),
    'hipheight': ('hip-height',),
    'hipthrust': ('hip', 'thrust'),
    'hipwidth': ('hip-width',),
    'hitolo': ('high-to-low',),
    'hkr': ('hang', 'knee', 'raise'),
    'hlr': ('hang', 'leg', 'raise'),
    'hndl': ('handle',),
    'hold': ('isometric',),
    'hookgrip': ('hook-grip',),
    'hooklie': ('hook-lying',),
    'hooklying': ('hook-lying',),
    'hpc': ('hang', 'power', 'clean'),
    'hspu': ('handstand', 'push-up'),
    'hyper': ('hyperextension',),
    'hyperext': ('hyperextension',),
    'hyperextension': ('hyperextension',),
    'imtp': ('isometric', 'mid-thigh', 'pull'),
    'inc': ('incline',),
    'inchair': ('seated',),
    'incl': ('incline',),
    'incline': ('incline',),
    'inclined': ('incline',),
    'indip': ('in-dip',),
    'insidekneedown': ('half-kneeling',),
    'insidekneeup': ('half-kneeling',),
    'internalrotation': ('internal', 'rotation'),
    'introt': ('internal', 'rotation'),
    'introtation': ('internal', 'rotation'),
    'inv': ('inverted',),
    'invband': ('band', 'inversion'),
    'inverted': ('inverted',),
    'ir': ('internal', 'rotation'),
    'iso': ('isometric',),
    'isohold': ('isometric',),
    'isom': ('isometric',),
    'isometric': ('isometric',),
    'isometrichold': ('isometric',),
    'isometricmidthighpull': ('isometric', 'mid-thigh', 'pull'),
    'ity': ('i-y-t', 'raise'),
    'ityw': ('i-y-t', 'raise'),
    'iyt': ('i-y-t', 'raise'),
    'iytraise': ('i-y-t', 'raise'),
    'iytw': ('i-y-t', 'raise'),
    'jerk': ('jerk',),
    'jk': ('jerk',),
    'jrk': ('jerk',),
    'judogi': ('towel',),
    'jumprope': ('jump', 'rope'),
    'kb': ('kettlebell',),
    'kbrack': ('kettlebell', 'front-rack'),
    'kettlebell': ('kettlebell',),
    'kettlebellfrontrack': ('kettlebell', 'front-rack'),
    'kettlebellrack': ('kettlebell', 'front-rack'),
    'kettlebellswing': ('kettlebell', 'swing'),
    'kickback': ('kickback',),
    'kickstand': ('staggered-stance',),
    'kimono': ('towel',),
    'kneebent': ('bent-knee',),
    'kneeext': ('leg', 'extension'),
    'kneeextension': ('leg', 'extension'),
    'kneeheight': ('knee-height',),
    'kneel': ('kneeling',),
    'kneeling': ('kneeling',),
    'knext': ('leg', 'extension'),
    'lapel': ('towel',),
    'latbandwalk': ('lateral', 'band', 'walk'),
    'latbearcrawl': ('lateral', 'bear', 'crawl'),
    'latbound': ('lateral', 'bound'),
    'latdrag': ('lateral', 'drag'),
    'lateralbandwalk': ('lateral', 'band', 'walk'),
    'lateralbearcrawl': ('lateral', 'bear', 'crawl'),
    'lateralbound': ('lateral', 'bound'),
    'lateraldrag': ('lateral', 'drag'),
    'lateralflexion': ('lateral', 'flexion'),
    'lateralhop': ('lateral', 'hop'),
    'lateralhurdle': ('lateral', 'hurdle'),
    'lateraljump': ('lateral', 'jump'),
    'laterallunge': ('lateral', 'lunge'),
    'lateralraise': ('lateral', 'raise'),
    'lateralshuffle': ('lateral', 'shuffle'),
    'lateralsleddrag': ('lateral', 'sled', 'drag'),
    'lateralslide': ('lateral', 'slide'),
    'lateralsquat': ('lateral', 'squat'),
    'lateralstepdown': ('lateral', 'step-down'),
    'lateralstepup': ('lateral', 'step-up'),
    'lateralwalk': ('lateral', 'walk'),
    'latflex': ('lateral', 'flexion'),
    'latflexion': ('lateral', 'flexion'),
    'lathop': ('lateral', 'hop'),
    'lathurdle': ('lateral', 'hurdle'),
    'latjump': ('lateral', 'jump'),
    'latlunge': ('lateral', 'lunge'),
    'latpd': ('lat', 'pulldown'),
    'latpull': ('lat', 'pulldown'),
    'latpulldown': ('lat', 'pulldown'),
    'latpullover': ('lat', 'pullover'),
    'latraise': ('lateral', 'raise'),
    'latshuffle': ('lateral', 'shuffle'),
    'latsleddrag': ('lateral', 'sled', 'drag'),
    'latslide': ('lateral', 'slide'),
    'latsquat': ('lateral', 'squat'),
    'latstepdown': ('lateral', 'step-down'),
    'latstepup': ('lateral', 'step-up'),
    'latwalk': ('lateral', 'walk'),
    'laying': ('lying',),
    'lb': ('low-bar',),
    'legcurl': ('leg', 'curl'),
    'legextension': ('leg', 'extension'),
    'legfree': ('feet-up',),
    'leginair': ('feet-up',),
    'legless': ('feet-up',),
    'legpress': ('leg', 'press'),
    'legraise': ('leg', 'raise'),
    'legstraight': ('feet-up',),
    'legup': ('feet-up',),
    'levelbody': ('level-body',),
    'leverarm': ('lever-arm',),
    'llc': ('lying', 'leg', 'curl'),
    'lo': ('low',),
    'loaded': ('weighted',),
    'log': ('log',),
    'lohi': ('low-to-high',),
    'longlever': ('long-lever',),
    'longsit': ('long-sit',),
    'loopband': ('band',),
    'lotohi': ('low-to-high',),
    'low': ('low',),
    'lowbar': ('low-bar',),
    'lowbarbacksquat': ('low-bar', 'back', 'squat'),
    'loweringonly': ('lowering-only',),
    'loweronly': ('lowering-only',),
    'lowhang': ('hang',),
    'lowhigh': ('low-to-high',),
    'lowincline': ('incline',),
    'lowtohigh': ('low-to-high',),
    'lpd': ('lat', 'pulldown'),
    'lsit': ('l-sit',),
    'lying': ('lying',),
    'lyinglegcurl': ('lying', 'leg', 'curl'),
    'lyingonback': ('supine',),
    'lyingonside': ('side-lying',),
    'mach': ('machine',),
    'machine': ('machine',),
    'mb': ('medicine-ball',),
    'medball': ('medicine-ball',),
    'medicineball': ('medicine-ball',),
    'midhang': ('hang',),
    'midthigh': ('mid-thigh',),
    'militarypress': ('military', 'press'),
    'milkjug': ('dumbbell',),
    'milpress': ('military', 'press'),
    'miniband': ('band',),
    'mixed': ('mixed-grip',),
    'mixedgrip': ('mixed-grip',),
    'mp': ('military', 'press'),
    'multigripbar': ('multi-grip-bar',),
    'multipress': ('guided-bar',),
    'muscleup': ('muscle-up',),
    'narrowgrip': ('close-grip',),
    'neg': ('negative',),
    'negative': ('negative',),
    'negativeonly': ('lowering-only',),
    'negonly': ('lowering-only',),
    'neutral': ('neutral-grip',),
    'neutralgrip': ('neutral-grip',),
    'neutralgripbar': ('multi-grip-bar',),
    'ng': ('neutral-grip',),
    'nhe': ('nordic', 'curl'),
    'nohanglift': ('edge', 'lift'),
    'nolegdrive': ('feet-up',),
    'nomoney': ('no-money',),
    'nordic': ('nordic', 'curl'),
    'nordiccurl': ('nordic', 'curl'),
    'nordicham': ('nordic', 'curl'),
    'nordichamcurl': ('nordic', 'curl'),
    'nordichamstring': ('nordic', 'curl'),
    'nordichamstringcurl': ('nordic', 'curl'),
    'nordichamstringexercise': ('nordic', 'curl'),
    'nordiclegcurl': ('nordic', 'curl'),
    'nosebreaker': ('nose', 'breaker'),
    'o/h': ('overhead',),
    'o/hgrip': ('overhand',),
    'offchest': ('off-chest',),
    'oh': ('overhead',),
    'ohgrip': ('overhand',),
    'ohp': ('overhead', 'press'),
    'onallfour': ('quadruped',),
    'onback': ('supine',),
    'onchair': ('seated',),
    'oneandhalf': ('one-and-a-half',),
    'oneandquarter': ('one-and-a-quarter',),
    'onearm': ('one-arm',),
    'onearmattime': ('one-arm',),
    'onearmed': ('one-arm',),
    'oneattime': ('one-side',),
    'onefoot': ('one-leg',),
    'onefooted': ('one-leg',),
    'onehand': ('one-arm',),
    'onehanded': ('one-arm',),
    'onekneedown': ('half-kneeling',),
    'oneleg': ('one-leg',),
    'onelegattime': ('one-leg',),
    'onelegged': ('one-leg',),
    'oneside': ('one-side',),
    'onesideattime': ('one-side',),
    'onesided': ('one-side',),
    'oorhead': ('overhead',),
    'oppositearm': ('opposite-arm',),
    'oppositehand': ('contralateral',),
    'outsidekneedown': ('half-kneeling',),
    'outsidekneeup': ('half-kneeling',),
    'overhand': ('overhand',),
    'overhandgrip': ('overhand',),
    'overhead': ('overhead',),
    'overheadpress': ('overhead', 'press'),
    'overheadsquat': ('overhead', 'squat'),
    'pallof': ('anti-rotation', 'press'),
    'pallofpress': ('anti-rotation', 'press'),
    'palmdown': ('overhand',),
    'palmfacing': ('neutral-grip',),
    'palmfacingeachother': ('neutral-grip',),
    'palmfacingin': ('neutral-grip',),
    'palmin': ('neutral-grip',),
    'palmup': ('underhand',),
    'parallelbar': ('parallel-bar',),
    'parallelgrip': ('neutral-grip',),
    'partial': ('partial',),
    'partialafterfailure': ('partials-after-failure',),
    'partialatend': ('partials-at-end',),
    'partialtofailure': ('partials-to-failure',),
    'partner': ('partner',),
    'pause': ('paused',),
    'paused': ('paused',),
    'pausing': ('paused',),
    'pc': ('power', 'clean'),
    'pcandj': ('power', 'clean', 'and', 'jerk'),
    'pcandjerk': ('power', 'clean', 'and', 'jerk'),
    'pcl': ('power', 'clean'),
    'pclean': ('power', 'clean'),
    'pec': ('pec',),
    'pecdec': ('pec', 'deck'),
    'pecdeck': ('pec', 'deck'),
    'pectoral': ('pec',),
    'pf': ('plantarflexion',),
    'physioball': ('stability-ball',),
    'pigeontoed': ('toe-in',),
    'pj': ('push', 'jerk'),
    'pjerk': ('power', 'jerk'),
    'pl': ('plank',),
    'plank': ('plank',),
    'plantarflexion': ('plantarflexion',),
    'plate': ('plate',),
    'plateloaded': ('plate-loaded',),
    'plie': ('plie',),
    'plié': ('plie',),
    'plyo': ('plyometric',),
    'plyometric': ('plyometric',),
    'poleassist': ('assisted',),
    'poleassisted': ('assisted',),
    'power': ('power',),
    'powerband': ('band',),
    'powerclean': ('power', 'clean'),
    'powercleanandjerk': ('power', 'clean', 'and', 'jerk'),
    'powerjerk': ('power', 'jerk'),
    'powersnatch': ('power', 'snatch'),
    'pp': ('push', 'press'),
    'pressdown': ('pushdown',),
    'pressup': ('push-up',),
    'pressupplu': ('scapular', 'push-up'),
    'pron': ('pronation',),
    'pronated': ('overhand',),
    'pronatedgrip': ('overhand',),
    'pronation': ('pronation',),
    'pronationorsupination': ('pronation', 'supination'),
    'pronationsupination': ('pronation', 'supination'),
    'prone': ('prone',),
    'proneincline': ('chest-supported',),
    'proneiyt': ('i-y-t', 'raise'),
    'proneonincline': ('chest-supported',),
    'proneoninclinebench': ('chest-supported',),
    'pronet': ('t', 'raise'),
    'pronets': ('t', 'raise'),
    'pronew': ('w', 'raise'),
    'proney': ('y', 'raise'),
    'proneys': ('y', 'raise'),
    'proneytw': ('i-y-t', 'raise'),
    'pronorsup': ('pronation', 'supination'),
    'pronsup': ('pronation', 'supination'),
    'proorsup': ('pronation', 'supination'),
    'prosup': ('pronation', 'supination'),
    'prowler': ('sled',),
    'psn': ('power', 'snatch'),
    'psnatch': ('power', 'snatch'),
    'pullapart': ('pull-apart',),
    'pulldown': ('pulldown',),
    'pulley': ('cable',),
    'pulleyassist': ('assisted',),
    'pulleyassisted': ('assisted',),
    'pullover': ('pullover',),
    'pullthrough': ('pull-through',),
    'pullthru': ('pull-through',),
    'pullup': ('pull-up',),
    'pushdown': ('pushdown',),
    'pushjerk': ('push', 'jerk'),
    'pushpress': ('push', 'press'),
    'pushup': ('push-up',),
    'pushupplu': ('scapular', 'push-up'),
    'pwr': ('power',),
    'quad': ('quad',),
    'quadext': ('leg', 'extension'),
    'quadextension': ('leg', 'extension'),
    'quadricep': ('quad',),
    'quadruped': ('quadruped',),
    'quarter': ('quarter',),
    'railassist': ('assisted',),
    'railassisted': ('assisted',),
    'rdl': ('romanian', 'deadlift'),
    'reardelt': ('rear', 'delt'),
    'rearfootelev': ('rear-foot-elevated',),
    'rearfootelevated': ('rear-foot-elevated',),
    'rearfootelevatedsplitsquat': ('rear-foot-elevated', 'split', 'squat'),
    'rearfootonbed': ('rear-foot-elevated',),
    'rearfootonbench': ('rear-foot-elevated',),
    'rearfootonbox': ('rear-foot-elevated',),
    'rearfootonchair': ('rear-foot-elevated',),
    'rearfootoncouch': ('rear-foot-elevated',),
    'rearfootonottoman': ('rear-foot-elevated',),
    'rearfootonsofa': ('rear-foot-elevated',),
    'rearfootonstool': ('rear-foot-elevated',),
    'rearfootraised': ('rear-foot-elevated',),
    'rearfootsplitsquat': ('rear-foot-elevated', 'split', 'squat'),
    'rearfootup': ('rear-foot-elevated',),
    'rearshoulder': ('rear', 'delt'),
    'resistanceband': ('band',),
    'rev': ('reverse',),
    'reverse': ('reverse',),
    'reversebandbench': ('bench', 'press', 'lightened'),
    'reversebandbenchpress': ('bench', 'press', 'lightened'),
    'reversebanddeadlift': ('deadlift', 'lightened'),
    'reversebandedbench': ('bench', 'press', 'lightened'),
    'reversebandedbenchpress': ('bench', 'press', 'lightened'),
    'reversebandeddeadlift': ('deadlift', 'lightened'),
    'reversebandedsquat': ('squat', 'lightened'),
    'reversebandsquat': ('squat', 'lightened'),
    'reversegrip': ('reverse-grip',),
    'revgrip': ('reverse-grip',),
    'rfe': ('rear-foot-elevated',),
    'rfess': ('rear-foot-elevated', 'split', 'squat'),
    'rg': ('reverse-grip',),
    'ring': ('ring',),
    'rolledtowel': ('bolster',),
    'rolleduptowel': ('bolster',),
    'rollout': ('rollout',),
    'romaniandeadlift': ('romanian', 'deadlift'),
    'ropeassist': ('assisted',),
    'ropeassisted': ('assisted',),
    'ropepd': ('rope', 'pushdown'),
    'ropepushdown': ('rope', 'pushdown'),
    'rot': ('rotation',),
    'rotation': ('rotation',),
    'rotational': ('rotational',),
    'row': ('row',),
    'rowing': ('row',),
    'ruck': ('ruck',),
    'rucksack': ('sandbag',),
    'rucksackmarch': ('ruck',),
    'rucksackwalk': ('ruck',),
    'rv': ('reverse',),
    's/a': ('one-arm',),
    's/l': ('side-lying',),
    'sa': ('one-arm',),
    'safetybar': ('safety-bar',),
    'safetybarsquat': ('safety-bar', 'squat'),
    'safetysquatbar': ('safety-bar',),
    'sandbag': ('sandbag',),
    'sapd': ('straight-arm', 'pulldown'),
    'sbj': ('standing', 'broad', 'jump'),
    'scap': ('scapular',),
    'scapula': ('scapular',),
    'scapular': ('scapular',),
    'scapularpushup': ('scapular', 'push-up'),
    'sdl': ('sumo', 'deadlift'),
    'seated': ('seated',),
    'seatedcalfraise': ('seated', 'calf', 'raise'),
    'seatedcurl': ('seated', 'curl'),
    'seatedlegcurl': ('seated', 'leg', 'curl'),
    'seatedlegextension': ('seated', 'leg', 'extension'),
    'seatedmarch': ('seated', 'march'),
    'seatedpress': ('seated', 'press'),
    'seatedrow': ('seated', 'row'),
    'secondpull': ('second-pull',),
    'semisupinated': ('neutral-grip',),
    'serr': ('serratus',),
    'serratu': ('serratus',),
    'sg': ('snatch-grip',),
    'sgdl': ('snatch-grip', 'deadlift'),
    'sgl': ('single',),
    'sglleg': ('one-leg',),
    'shallowincline': ('incline',),
    'shld': ('shoulder',),
    'shldr': ('shoulder',),
    'shortlever': ('short-lever',),
    'shotput': ('shot', 'put'),
    'shoulder': ('shoulder',),
    'shoulderblade': ('scapular',),
    'shoulderheight': ('shoulder-height',),
    'shoulderpr': ('shoulder', 'press'),
    'shoulderpress': ('shoulder', 'press'),
    'shoulderwidth': ('shoulder-width',),
    'sideflex': ('lateral', 'flexion'),
    'sideflexion': ('lateral', 'flexion'),
    'sidelateral': ('lateral', 'raise'),
    'sidelie': ('side-lying',),
    'sidelying': ('side-lying',),
    'sideon': ('side-on',),
    'sideplank': ('side', 'plank'),
    'sim': ('simulator',),
    'simulation': ('simulator',),
    'simulator': ('simulator',),
    'single': ('single',),
    'singlearm': ('one-arm',),
    'singlearmed': ('one-arm',),
    'singlehand': ('one-arm',),
    'singlehanded': ('one-arm',),
    'singleleg': ('one-leg',),
    'singlelegged': ('one-leg',),
    'singleside': ('one-side',),
    'sit': ('seated',),
    'sitstand': ('sit-to-stand',),
    'sitting': ('seated',),
    'sittostand': ('sit-to-stand',),
    'situp': ('sit-up',),
    'sixman': ('partner',),
    'sj': ('squat', 'jump'),
    'skippingrope': ('jump', 'rope'),
    'skull': ('skull', 'crusher'),
    'skullcrusher': ('skull', 'crusher'),
    'sl': ('one-leg',),
    'slc': ('seated', 'leg', 'curl'),
    'sldl': ('stiff-leg', 'deadlift'),
    'sled': ('sled',),
    'slideboard': ('slider',),
    'slider': ('slider',),
    'sliding': ('slider',),
    'slidingdisc': ('slider',),
    'slightincline': ('incline',),
    'sling': ('suspension',),
    'slingtrainer': ('suspension',),
    'slj': ('standing', 'long', 'jump'),
    'slr': ('straight-leg', 'raise'),
    'smith': ('guided-bar',),
    'smithmachine': ('guided-bar',),
    'smithrack': ('guided-bar',),
    'sn': ('snatch',),
    'snatch': ('snatch',),
    'snatchgrip': ('snatch-grip',),
    'snatchgripdeadlift': ('snatch-grip', 'deadlift'),
    'sngl': ('single',),
    'snglleg': ('one-leg',),
    'sngrip': ('snatch-grip',),
    'soupcan': ('dumbbell',),
    'souptin': ('dumbbell',),
    'splitsquat': ('split', 'squat'),
    'splitstance': ('split-stance',),
    'spotterarm': ('spotter-arm',),
    'sq': ('squat',),
    'squat': ('squat',),
    'squatjump': ('squat', 'jump'),
    'squatlightened': ('squat', 'lightened'),
    'squatting': ('squat',),
    'squattostand': ('squat-to-stand',),
    'ssb': ('safety-bar',),
    'stabilityball': ('stability-ball',),
    'staggered': ('staggered-stance',),
    'staggeredstance': ('staggered-stance',),
    'standing': ('standing',),
    'standingbroadjump': ('standing', 'broad', 'jump'),
    'standinglongjump': ('standing', 'long', 'jump'),
    'standingonblock': ('deficit',),
    'standingonbox': ('deficit',),
    'standingondeck': ('deficit',),
    'standingonplate': ('deficit',),
    'standingonriser': ('deficit',),
    'standingonstep': ('deficit',),
    'statichold': ('isometric',),
    'std': ('standing',),
    'stdg': ('standing',),
    'steepincline': ('steep-incline',),
    'stepdown': ('step-down',),
    'stepover': ('step-over',),
    'stepup': ('step-up',),
    'stepupandover': ('step-over',),
    'stickassist': ('assisted',),
    'stickassisted': ('assisted',),
    'stiffarm': ('straight-arm',),
    'stiffleg': ('stiff-leg',),
    'stifflegdeadlift': ('stiff-leg', 'deadlift'),
    'stifflegged': ('stiff-leg',),
    'stood': ('standing',),
    'stoodonblock': ('deficit',),
    'stoodonbox': ('deficit',),
    'stoodondeck': ('deficit',),
    'stoodonplate': ('deficit',),
    'stoodonriser': ('deficit',),
    'stoodonstep': ('deficit',),
    'straightarm': ('straight-arm',),
    'straightarmed': ('straight-arm',),
    'straightarmpd': ('straight-arm', 'pulldown'),
    'straightarmpulldown': ('straight-arm', 'pulldown'),
    'straightbar': ('straight-bar',),
    'straightleg': ('straight-leg',),
    'straightlegged': ('straight-leg',),
    'straightlegraise': ('straight-leg', 'raise'),
    'strapassist': ('assisted',),
    'stretchcord': ('band',),
    'strictpress': ('overhead', 'press'),
    'sumodeadlift': ('sumo', 'deadlift'),
    'sup': ('supported',),
    'supin': ('supination',),
    'supinated': ('underhand',),
    'supinatedgrip': ('underhand',),
    'supination': ('supination',),
    'supinationorpronation': ('pronation', 'supination'),
    'supine': ('supine',),
    'suporpron': ('pronation', 'supination'),
    'supp': ('supported',),
    'supported': ('supported',),
    'susp': ('suspension',),
    'suspended': ('suspension',),
    'suspension': ('suspension',),
    'suspensionassist': ('assisted',),
    'suspensionstrap': ('suspension',),
    'suspensiontrainer': ('suspension',),
    'susptrainer': ('suspension',),
    'swimcord': ('band',),
    'swissball': ('stability-ball',),
    'swissbar': ('multi-grip-bar',),
    'sz': ('bent-bar',),
    'szbar': ('bent-bar',),
    'tallkn': ('tall-kneeling',),
    'tallkneel': ('tall-kneeling',),
    'tallkneeling': ('tall-kneeling',),
    'tallplank': ('high', 'plank'),
    'tb': ('trap-bar',),
    'tbar': ('t-bar',),
    'tbdl': ('trap-bar', 'deadlift'),
    'terminalkneeextension': ('terminal', 'knee', 'extension'),
    'tgu': ('turkish', 'get-up'),
    'thandle': ('t-handle',),
    'thenpartial': ('then-partials',),
    'thickbar': ('thick-bar',),
    'thickgrip': ('thick-grip',),
    'thirdpull': ('third-pull',),
    'through': ('through',),
    'thru': ('through',),
    'tib': ('tibialis',),
    'tibant': ('tibialis',),
    'tibbar': ('tibia', 'bar'),
    'tibiabar': ('tibia', 'bar'),
    'tibiali': ('tibialis',),
    'tin': ('dumbbell',),
    'tke': ('terminal', 'knee', 'extension'),
    'toein': ('toe-in',),
    'toeinward': ('toe-in',),
    'toeout': ('toe-out',),
    'toeoutward': ('toe-out',),
    'toepointedin': ('toe-in',),
    'toepointedout': ('toe-out',),
    'toeturnedin': ('toe-in',),
    'toeturnedout': ('toe-out',),
    'torsoupright': ('upright-body',),
    'touchandgo': ('touch-and-go',),
    'touchngo': ('touch-and-go',),
    'towel': ('towel',),
    'towelroll': ('bolster',),
    'traise': ('t', 'raise'),
    'trapbar': ('trap-bar',),
    'trapbardeadlift': ('trap-bar', 'deadlift'),
    'tri': ('triceps',),
    'tricep': ('triceps',),
    'triceppd': ('triceps', 'pushdown'),
    'triceppushdown': ('triceps', 'pushdown'),
    'tripd': ('triceps', 'pushdown'),
    'trunkupright': ('upright-body',),
    'trx': ('suspension',),
    'trxassist': ('assisted',),
    'trxassisted': ('assisted',),
    'tube': ('band',),
    'tubing': ('band',),
    'tuckup': ('tuck-up',),
    'turkishgetup': ('turkish', 'get-up'),
    'turnedin': ('toe-in',),
    'turnedout': ('toe-out',),
    'twoarm': ('two-arm',),
    'twofoot': ('two-leg',),
    'twohand': ('two-arm',),
    'twohanded': ('two-arm',),
    'twoleg': ('two-leg',),
    'twolegged': ('two-leg',),
    'twoman': ('partner',),
    'twoperson': ('partner',),
    'u/h': ('underhand',),
    'u/hgrip': ('underhand',),
    'underhand': ('underhand',),
    'underhanded': ('underhand',),
    'underhandgrip': ('underhand',),
    'uni': ('one-side',),
    'unilateral': ('one-side',),
    'unloaded': ('bodyweight',),
    'unweighted': ('bodyweight',),
    'upandover': ('step-over',),
    'uprightbody': ('upright-body',),
    'vbar': ('v-bar',),
    'vest': ('weighted',),
    'vhandle': ('v-handle',),
    'vsit': ('v-sit',),
    'vup': ('v-up',),
    'w': ('with',),
    'waistheight': ('waist-height',),
    'walkout': ('walkout',),
    'walkwithbackpack': ('ruck',),
    'walkwithrucksack': ('ruck',),
    'wallassist': ('assisted',),
    'wallassisted': ('assisted',),
    'wallsit': ('wall', 'sit'),
    'warmup': ('warm-up',),
    'waterbottle': ('dumbbell',),
    'waterjug': ('dumbbell',),
    'weightdisc': ('plate',),
    'weighted': ('weighted',),
    'weightedvest': ('weighted',),
    'weightplate': ('plate',),
    'weightvest': ('weighted',),
    'wg': ('wide-grip',),
    'wgbp': ('wide-grip', 'bench', 'press'),
    'widegrip': ('wide-grip',),
    'widegripbenchpress': ('wide-grip', 'bench', 'press'),
    'widehand': ('wide-grip',),
    'windscreen': ('windshield',),
    'windshield': ('windshield',),
    'with': ('with',),
    'withoutlegdrive': ('feet-up',),
    'withrotation': ('rotational',),
    'withtwist': ('rotational',),
    'woodchop': ('woodchop',),
    'woodchopper': ('woodchop',),
    'wraise': ('w', 'raise'),
    'wristext': ('wrist', 'extension'),
    'wristextension': ('wrist', 'extension'),
    'wristextensor': ('wrist', 'extension'),
    'wristflex': ('wrist', 'flexion'),
    'wristflexion': ('wrist', 'flexion'),
    'wtd': ('weighted',),
    'xbody': ('cross-body',),
    'xd': ('crossed',),
    'xover': ('crossover',),
    'yokebar': ('safety-bar',),
    'yraise': ('y', 'raise'),
    'yti': ('i-y-t', 'raise'),
    'ytw': ('i-y-t', 'raise'),
    'ytwl': ('i-y-t', 'raise'),
}

KINDS: dict[str, tuple[str, ...]] = {
    '180': ('lift',),
    '180deg': ('lift',),
    '18in': ('lift',),
    '2': ('lift',),
    '21s': ('lift',),
    '3': ('lift',),
    '3s': ('lift',),
    '45deg': ('lift',),
    '60deg': ('lift',),
    '90': ('lift',),
    '90/90': ('lift',),
    '90deg': ('lift',),
    'a': ('filler',),
    'a-skip': ('movement',),
    'ab': ('thing',),
    'abducted': ('lift',),
    'abduction': ('movement',),
    'above': ('joining',),
    'abv': ('joining',),
    'accelerated': ('lift',),
    'acceleration': ('lift',),
    'achille': ('lift',),
    'across': ('joining',),
    'activation': ('free',),
    'active': ('lift',),
    'adapted': ('free',),
    'adduction': ('movement',),
    'advanced': ('free',),
    'after': ('joining',),
    'against': ('joining',),
    'air': ('lift',),
    'airborne': ('lift',),
    'airplane': ('lift',),
    'all': ('filler',),
    'almost': ('free',),
    'along': ('joining',),
    'alternately': ('free',),
    'alternating': ('one side', 'side'),
    'altitude': ('lift',),
    'american': ('lift',),
    'amrap': ('free',),
    'an': ('filler',),
    'anchor': ('free',),
    'anchored': ('free',),
    'and': ('filler',),
    'angel': ('lift',),
    'angle': ('free',),
    'angled-bar': ('held', 'barbell'),
    'ankle': ('thing',),
    'ankle-weight': ('free',),
    'anterior': ('thing',),
    'anti-rotation': ('lift',),
    'any': ('filler',),
    'approach': ('lift',),
    'arc': ('lift',),
    'arch': ('thing',),
    'archer': ('lift',),
    'are': ('filler',),
    'arm': ('thing',),
    'armchair': ('lift',),
    'around': ('joining',),
    'as': ('joining',),
    'ascent': ('lift',),
    'assisted': ('free',),
    'at': ('joining',),
    'atg': ('free',),
    'athlete': ('free',),
    'atla': ('lift',),
    'attachment': ('free',),
    'australian': ('lift',),
    'away': ('direction',),
    'b': ('lift',),
    'b/w': ('joining',),
    'baby': ('lift',),
    'back': ('thing',),
    'back-off': ('free',),
    'backward': ('direction',),
    'balance': ('movement',),
    'ball': ('thing',),
    'ballistic': ('lift',),
    'band': ('implement', 'band'),
    'bar': ('thing',),
    'barbell': ('implement', 'barbell'),
    'barefoot': ('free',),
    'barrier': ('lift',),
    'base': ('free',),
    'basic': ('free',),
    'battle-rope': ('lift',),
    'bear': ('lift',),
    'beast': ('lift',),
    'bed': ('free',),
    'before': ('joining',),
    'beginner': ('free',),
    'behind': ('joining',),
    'behind-back': ('lift',),
    'behind-head': ('free',),
    'behind-neck': ('lift',),
    'below': ('joining',),
    'belt': ('free',),
    'beltless': ('free',),
    'bench': ('thing',),
    'bend': ('thing',),
    'bent': ('thing',),
    'bent-bar': ('held', 'barbell'),
    'bent-knee': ('lift',),
    'bent-over': ('lift',),
    'between': ('joining',),
    'between-the-legs': ('free',),
    'bfr': ('free',),
    'biceps': ('thing',),
    'bicycle': ('lift',),
    'big': ('free',),
    'bike': ('lift',),
    'bird': ('lift',),
    'block': ('thing',),
    'blw': ('joining',),
    'bm': ('free',),
    'board': ('thing',),
    'boat': ('lift',),
    'body': ('thing',),
    'bodyweight': ('implement', 'bodyweight'),
    'bolster': ('thing',),
    'bomb': ('lift',),
    'bomber': ('lift',),
    'bor': ('lift',),
    'both': ('free',),
    'bottom': ('free',),
    'bottoms-up': ('variant',),
    'bounce': ('free',),
    'bound': ('movement',),
    'bounding': ('lift',),
    'box': ('thing',),
    'brace': ('thing',),
    'bracing': ('lift',),
    'breaker': ('lift',),
    'breathing': ('lift',),
    'bridge': ('movement',),
    'bridged': ('lift',),
    'broad': ('lift',),
    'broomstick': ('lift',),
    'bucket': ('lift',),
    'buddy': ('lift',),
    'bug': ('lift',),
    'build': ('lift',),
    'bump': ('lift',),
    'bumper': ('free',),
    'bunny': ('lift',),
    'burpee': ('movement',),
    'butterfly': ('lift',),
    'by': ('joining',),
    'c': ('lift',),
    'cable': ('implement', 'cable'),
    'calf': ('thing',),
    'cambered-bar': ('held', 'barbell'),
    'campu': ('lift',),
    'campusing': ('lift',),
    'can': ('lift',),
    'candle': ('lift',),
    'canoe': ('lift',),
    'captain': ('lift',),
    'car': ('lift',),
    'carry': ('movement',),
    'casualty': ('lift',),
    'catch': ('free',),
    'cervical': ('lift',),
    'chain': ('free',),
    'chair': ('thing',),
    'chalk': ('free',),
    'cheat': ('lift',),
    'cheating': ('lift',),
    'chest': ('thing',),
    'chest-height': ('free',),
    'chest-supported': ('position', 'supported'),
    'chin': ('thing',),
    'chin-up': ('movement',),
    'chinese': ('lift',),
    'chop': ('movement',),
    'circle': ('movement',),
    'circu': ('lift',),
    'clamshell': ('lift',),
    'clap': ('lift',),
    'clapping': ('lift',),
    'classic': ('free',),
    'clean': ('movement',),
    'clean-grip': ('free',),
    'climb': ('movement',),
    'climber': ('lift',),
    'climbing': ('lift',),
    'close': ('free',),
    'close-grip': ('grip', 'close'),
    'cluster': ('free',),
    'cobra': ('lift',),
    'collar': ('free',),
    'commando': ('lift',),
    'comp': ('free',),
    'competition': ('free',),
    'compression': ('lift',),
    'concentration': ('lift',),
    'concentric': ('free',),
    'consecutive': ('free',),
    'constant': ('free',),
    'contact': ('thing',),
    'contest': ('free',),
    'continuou': ('free',),
    'contraction': ('lift',),
    'contralateral': ('free',),
    'controlled': ('free',),
    'conventional': ('free',),
    'converging': ('lift',),
    'copenhagen': ('lift',),
    'corner': ('thing',),
    'cossack': ('lift',),
    'couch': ('free',),
    'count': ('free',),
    'counter': ('thing',),
    'countermovement': ('lift',),
    'crab': ('lift',),
    'cranio': ('lift',),
    'crank': ('lift',),
    'crawl': ('movement',),
    'crook': ('thing',),
    'cross': ('thing',),
    'cross-body': ('lift',),
    'crossover': ('movement',),
    'crunch': ('movement',),
    'crush': ('lift',),
    'crusher': ('lift',),
    'csp': ('lift',),
    'cuban': ('lift',),
    'cuff': ('free',),
    'curl': ('movement',),
    'curl-up': ('movement',),
    'curtsy': ('lift',),
    'cushion': ('free',),
    'cycle': ('lift',),
    'cycled': ('lift',),
    'cycling': ('lift',),
    'cyclist': ('lift',),
    'd-handle': ('free',),
    'dbsp': ('lift',),
    'de': ('lift',),
    'dead': ('free',),
    'dead-hang': ('free',),
    'dead-start': ('free',),
    'dead-stop': ('free',),
    'deadlift': ('movement',),
    'deck': ('lift',),
    'decline': ('lift',),
    'deep': ('free',),
    'deficit': ('free',),
    'delt': ('thing',),
    'density': ('lift',),
    'depression': ('lift',),
    'depth': ('free',),
    'desk': ('free',),
    'developer': ('lift',),
    'deviation': ('lift',),
    'devil': ('lift',),
    'diagonal': ('lift',),
    'diamond': ('lift',),
    'dig': ('lift',),
    'dip': ('movement',),
    'direction': ('lift',),
    'dish': ('lift',),
    'distance': ('free',),
    'dive': ('lift',),
    'dog': ('lift',),
    'dome': ('lift',),
    'doming': ('lift',),
    'donkey': ('lift',),
    'door': ('thing',),
    'door-frame': ('thing',),
    'doorway': ('thing',),
    'dorsiflexion': ('movement',),
    'double': ('both sides',),
    'dowel': ('lift',),
    'down': ('direction',),
    'downward': ('direction',),
    'drag': ('movement',),
    'dragon': ('lift',),
    'dribble': ('lift',),
    'drill': ('free',),
    'drive': ('movement',),
    'drop': ('lift',),
    'drop-set': ('free',),
    'dumbbell': ('implement', 'dumbbell'),
    'dummy': ('lift',),
    'dying': ('lift',),
    'dynamic': ('free',),
    'e/s': ('free',),
    'ea': ('free',),
    'each': ('free',),
    'easy': ('free',),
    'eccentric': ('free',),
    'edge': ('thing',),
    'effort': ('free',),
    'eight': ('free',),
    'elbow': ('thing',),
    'elevated': ('lift',),
    'elliptical': ('lift',),
    'em': ('free',),
    'emom': ('free',),
    'empty': ('free',),
    'end': ('free',),
    'endurance': ('lift',),
    'ergometer': ('lift',),
    'eversion': ('movement',),
    'every': ('free',),
    'exercise': ('free',),
    'explosive': ('free',),
    'extended': ('lift',),
    'extension': ('movement',),
    'external': ('lift',),
    'extra': ('free',),
    'eye': ('free',),
    'eye-level': ('free',),
    'face': ('thing',),
    'facing': ('thing',),
    'failure': ('free',),
    'fall': ('lift',),
    'fallout': ('movement',),
    'fan': ('lift',),
    'farmer': ('lift',),
    'fast': ('free',),
    'feet-up': ('lift',),
    'filled': ('free',),
    'finger': ('thing',),
    'fingerboard': ('lift',),
    'fingertip': ('thing',),
    'finisher': ('free',),
    'fire': ('lift',),
    'fireman': ('lift',),
    'first-pull': ('free',),
    'five': ('free',),
    'flag': ('lift',),
    'flared': ('lift',),
    'flat': ('free',),
    'flexed': ('lift',),
    'flexible': ('lift',),
    'flexion': ('movement',),
    'flexor': ('lift',),
    'flip': ('lift',),
    'floor': ('thing',),
    'flutter': ('lift',),
    'fly': ('movement',),
    'flying': ('lift',),
    'foam': ('free',),
    'focused': ('lift',),
    'foot': ('thing',),
    'foot-elevated': ('lift',),
    'football': ('lift',),
    'for': ('joining',),
    'for-balance': ('free',),
    'forearm': ('thing',),
    'forehead': ('thing',),
    'forward': ('direction',),
    'forward-back': ('free',),
    'four': ('free',),
    'four-way': ('lift',),
    'frame': ('thing',),
    'free': ('free',),
    'freestyle': ('lift',),
    'french': ('lift',),
    'frenchy': ('lift',),
    'frog': ('lift',),
    'from': ('joining',),
    'from-mid-thigh': ('free',),
    'front': ('lift',),
    'front-foot-elevated': ('lift',),
    'front-rack': ('lift',),
    'full': ('free',),
    'gait': ('lift',),
    'gastrocnemiu': ('free',),
    'gathering': ('lift',),
    'get-up': ('movement',),
    'glute': ('thing',),
    'glute-ham': ('lift',),
    'glute-ham-bench': ('thing',),
    'goblet': ('held', 'dumbbell'),
    'good': ('lift',),
    'gorilla': ('lift',),
    'granny': ('lift',),
    'grip': ('free',),
    'gripper': ('lift',),
    'groin': ('thing',),
    'ground': ('free',),
    'group': ('free',),
    'guard': ('lift',),
    'guided': ('lift',),
    'guided-bar': ('implement', 'guided bar'),
    'gym': ('free',),
    'hack': ('lift',),
    'half': ('lift',),
    'half-kneeling': ('position', 'kneeling'),
    'hall': ('free',),
    'halo': ('movement',),
    'hammer': ('lift',),
    'hamstring': ('thing',),
    'hand': ('thing',),
    'hand-elevated': ('lift',),
    'handle': ('thing',),
    'handrail': ('free',),
    'handstand': ('lift',),
    'hang': ('position', 'hanging'),
    'hangboard': ('lift',),
    'hard': ('free',),
    'harness': ('thing',),
    'head': ('thing',),
    'heaving': ('lift',),
    'heavy': ('free',),
    'heel': ('thing',),
    'heel-elevated': ('free',),
    'height': ('free',),
    'held': ('thing',),
    'hex': ('lift',),
    'high': ('thing',),
    'high-bar': ('free',),
    'high-to-low': ('lift',),
    'hike': ('lift',),
    'hill': ('lift',),
    'hindu': ('lift',),
    'hinge': ('movement',),
    'hip': ('thing',),
    'hip-height': ('free',),
    'hip-width': ('free',),
    'hitch': ('lift',),
    'holding': ('joining',),
    'hole': ('free',),
    'hollow': ('lift',),
    'hook': ('free',),
    'hook-grip': ('free',),
    'hook-lying': ('position', 'lying', 'supported'),
    'hop': ('movement',),
    'horizontal': ('variant',),
    'hover': ('lift',),
    'hovering': ('lift',),
    'hub': ('lift',),
    'hug': ('lift',),
    'hugged': ('lift',),
    'hurdle': ('lift',),
    'husafell': ('lift',),
    'hydrant': ('lift',),
    'hyperextension': ('movement',),
    'i': ('lift',),
    'i-y-t': ('lift',),
    'in': ('joining',),
    'in-dip': ('free',),
    'inchworm': ('lift',),
    'incline': ('position', 'incline'),
    'index': ('free',),
    'indoor': ('lift',),
    'inner': ('thing',),
    'inside': ('free',),
    'intermediate': ('free',),
    'internal': ('lift',),
    'interval': ('lift',),
    'into': ('joining',),
    'intro': ('free',),
    'inversion': ('movement',),
    'inverted': ('lift',),
    'ipsilateral': ('free',),
    'is': ('filler',),
    'isometric': ('thing',),
    'it': ('filler',),
    'jack': ('lift',),
    'jackknife': ('lift',),
    'jammer': ('lift',),
    'jefferson': ('lift',),
    'jerk': ('movement',),
    'jerrycan': ('lift',),
    'jog': ('lift',),
    'jogging': ('lift',),
    'jump': ('movement',),
    'jumping': ('movement',),
    'kayak': ('lift',),
    'keg': ('lift',),
    'kerb': ('free',),
    'kettlebell': ('implement', 'kettlebell'),
    'kg': ('free',),
    'kick': ('movement',),
    'kickback': ('movement',),
    'knee': ('thing',),
    'knee-height': ('free',),
    'kneeling': ('position', 'kneeling'),
    'l': ('free',),
    'l-sit': ('lift',),
    'l/r': ('free',),
    'ladder': ('lift',),
    'land': ('free',),
    'landing': ('free',),
    'landmine': ('lift',),
    'larsen': ('lift',),
    'lat': ('thing',),
    'lateral': ('lift',),
    'lead': ('free',),
    'lean': ('thing',),
    'leaned': ('lift',),
    'leaning': ('thing',),
    'leap': ('lift',),
    'ledge': ('free',),
    'left': ('free',),
    'leg': ('thing',),
    'legal': ('free',),
    'length': ('lift',),
    'lengthened': ('lift',),
    'leopard': ('lift',),
    'level': ('free',),
    'level-body': ('free',),
    'lever': ('lift',),
    'lever-arm': ('free',),
    'lift': ('movement',),
    'lifted': ('lift',),
    'light': ('free',),
    'lightened': ('free',),
    'lighter': ('free',),
    'line': ('thing',),
    'litter': ('lift',),
    'little': ('free',),
    'load': ('thing',),
    'lock': ('lift',),
    'locked': ('free',),
    'lockout': ('free',),
    'log': ('held', 'barbell'),
    'long': ('thing',),
    'long-lever': ('lift',),
    'long-sit': ('free',),
    'low': ('thing',),
    'low-bar': ('lift',),
    'low-to-high': ('lift',),
    'lower': ('thing',),
    'lowering': ('free',),
    'lowering-only': ('lift',),
    'lp': ('lift',),
    'lumbar': ('lift',),
    'lunge': ('movement',),
    'lying': ('position', 'lying', 'prone', 'supported'),
    'machine': ('implement', 'machine'),
    'maker': ('lift',),
    'man': ('lift',),
    'manual': ('lift',),
    'march': ('movement',),
    'marching': ('lift',),
    'mat': ('free',),
    'max': ('free',),
    'maximal': ('free',),
    'maximum': ('free',),
    'md': ('free',),
    'medicine-ball': ('implement', 'medicine ball'),
    'medium': ('free',),
    'meet': ('free',),
    'mid': ('free',),
    'mid-thigh': ('free',),
    'middle': ('free',),
    'military': ('lift',),
    'mill': ('lift',),
    'mini': ('free',),
    'minimal': ('free',),
    'minu': ('free',),
    'minute': ('free',),
    'mixed-grip': ('grip', 'mixed'),
    'moderate': ('free',),
    'modified': ('free',),
    'monster': ('lift',),
    'morning': ('lift',),
    'mountain': ('lift',),
    'multi': ('lift',),
    'multi-grip-bar': ('held', 'barbell'),
    'multidirectional': ('lift',),
    'multiple': ('free',),
    'muscle': ('lift',),
    'muscle-up': ('movement',),
    'my': ('filler',),
    'myo': ('free',),
    'narrow': ('free',),
    'natural': ('lift',),
    'near': ('free',),
    'neck': ('thing',),
    'needle': ('lift',),
    'negative': ('free',),
    'neutral-grip': ('grip', 'neutral'),
    'new': ('free',),
    'nine': ('free',),
    'ninety': ('lift',),
    'no': ('free',),
    'no-money': ('lift',),
    'nod': ('lift',),
    'non': ('free',),
    'nordic': ('lift',),
    'normal': ('free',),
    'nose': ('thing',),
    'not': ('free',),
    'object': ('thing',),
    'oblique': ('thing',),
    'odd': ('lift',),
    'of': ('joining',),
    'off': ('joining',),
    'off-chest': ('free',),
    'offset': ('lift',),
    'old': ('free',),
    'on': ('joining',),
    'one': ('free',),
    'one-and-a-half': ('free',),
    'one-and-a-quarter': ('free',),
    'one-arm': ('one side', 'arm'),
    'one-leg': ('one side', 'leg'),
    'one-side': ('one side', 'side'),
    'only': ('free',),
    'onto': ('joining',),
    'open': ('lift',),
    'opening': ('lift',),
    'opposite': ('free',),
    'opposite-arm': ('thing',),
    'or': ('filler',),
    'other': ('lift',),
    'ottoman': ('free',),
    'our': ('filler',),
    'out': ('direction',),
    'outside': ('thing',),
    'outward': ('direction',),
    'over': ('joining',),
    'overcoming': ('free',),
    'overhand': ('grip', 'overhand'),
    'overhead': ('variant',),
    'overload': ('lift',),
    'overspeed': ('lift',),
    'own': ('free',),
    'pack': ('lift',),
    'packed': ('free',),
    'pad': ('free',),
    'paddle': ('lift',),
    'paddling': ('lift',),
    'palm': ('thing',),
    'panda': ('lift',),
    'parallel': ('thing',),
    'parallel-bar': ('lift',),
    'partial': ('lift',),
    'partials-after-failure': ('free',),
    'partials-at-end': ('free',),
    'partials-to-failure': ('free',),
    'partner': ('free',),
    'pass': ('movement',),
    'passive': ('lift',),
    'patellar': ('lift',),
    'paused': ('free',),
    'pec': ('thing',),
    'pelvi': ('free',),
    'pelvic': ('thing',),
    'pendlay': ('lift',),
    'pendulum': ('lift',),
    'penguin': ('lift',),
    'per': ('joining',),
    'peroneal': ('lift',),
    'pick': ('lift',),
    'piggyback': ('lift',),
    'pike': ('lift',),
    'pin': ('thing',),
    'pinch': ('lift',),
    'pinky': ('free',),
    'pinwheel': ('lift',),
    'pistol': ('movement',),
    'place': ('thing',),
    'planche': ('lift',),
    'plane': ('thing',),
    'plank': ('movement',),
    'plantarflexion': ('movement',),
    'plate': ('implement', 'plate'),
    'plate-loaded': ('free',),
    'plie': ('lift',),
    'plyometric': ('lift',),
    'pogo': ('lift',),
    'point': ('thing',),
    'pole': ('lift',),
    'poor': ('lift',),
    'portable': ('lift',),
    'pose': ('lift',),
    'position': ('free',),
    'post': ('thing',),
    'posterior': ('lift',),
    'pot': ('lift',),
    'power': ('lift',),
    'powerwalk': ('lift',),
    'practice': ('free',),
    'prayer': ('lift',),
    'preacher': ('lift',),
    'prehab': ('free',),
    'press': ('movement',),
    'pressing': ('lift',),
    'primer': ('free',),
    'pronation': ('movement',),
    'prone': ('position', 'prone', 'supported'),
    'protraction': ('movement',),
    'pry': ('free',),
    'prying': ('free',),
    'pseudo': ('lift',),
    'psoa': ('lift',),
    'pt': ('free',),
    'pu': ('lift',),
    'pull': ('movement',),
    'pull-apart': ('movement',),
    'pull-through': ('movement',),
    'pull-up': ('movement',),
    'pulldown': ('movement',),
    'pullover': ('movement',),
    'pump': ('free',),
    'punch': ('movement',),
    'push': ('movement',),
    'push-up': ('movement',),
    'pushdown': ('movement',),
    'put': ('lift',),
    'putty': ('lift',),
    'quad': ('thing',),
    'quadruped': ('position', 'quadruped'),
    'quarter': ('lift',),
    'quick': ('free',),
    'quickly': ('free',),
    'r': ('free',),
    'r/l': ('free',),
    'race': ('lift',),
    'rack': ('thing',),
    'radial': ('lift',),
    'rail': ('thing',),
    'rainbow': ('lift',),
    'raise': ('movement',),
    'ramp': ('free',),
    'ramping': ('free',),
    'range': ('free',),
    'rapid': ('lift',),
    'razor': ('lift',),
    'reach': ('movement',),
    'reactive': ('lift',),
    'rear': ('thing',),
    'rear-foot-elevated': ('lift',),
    'rebound': ('lift',),
    'reclined': ('lift',),
    'recovery': ('variant',),
    'recumbent': ('lift',),
    'regular': ('free',),
    'rehab': ('free',),
    'release': ('lift',),
    'renegade': ('lift',),
    'rep': ('free',),
    'repeated': ('free',),
    'repeater': ('lift',),
    'rescue': ('lift',),
    'reset': ('free',),
    'resistance': ('lift',),
    'resisted': ('free',),
    'rest': ('free',),
    'retraction': ('movement',),
    'retro': ('lift',),
    'return': ('free',),
    'reverse': ('variant',),
    'reverse-grip': ('lift',),
    'rhythmic': ('lift',),
    'rib': ('free',),
    'rice': ('lift',),
    'ride': ('lift',),
    'right': ('free',),
    'ring': ('implement', 'suspension'),
    'rir': ('free',),
    'rise': ('lift',),
    'riser': ('free',),
    'rising': ('lift',),
    'rock': ('lift',),
    'roll': ('movement',),
    'rollback': ('lift',),
    'roller': ('thing',),
    'rolling': ('lift',),
    'rollout': ('movement',),
    'rom': ('free',),
    'roman': ('lift',),
    'romanian': ('lift',),
    'room': ('free',),
    'rope': ('thing',),
    'rotating': ('lift',),
    'rotation': ('movement',),
    'rotational': ('movement',),
    'rotator': ('lift',),
    'round': ('joining',),
    'rounded': ('lift',),
    'row': ('movement',),
    'rower': ('lift',),
    'rpe': ('free',),
    'rsi': ('free',),
    'rto': ('free',),
    'rubber': ('lift',),
    'ruck': ('lift',),
    'rucking': ('lift',),
    'run': ('movement',),
    'running': ('movement',),
    'russian': ('lift',),
    'safety': ('free',),
    'safety-bar': ('held', 'barbell'),
    'sandbag': ('implement', 'sandbag'),
    'saq': ('lift',),
    'saw': ('lift',),
    'scaption': ('lift',),
    'scapular': ('thing',),
    'scarecrow': ('lift',),
    'scissor': ('lift',),
    'scoop': ('lift',),
    'scr': ('lift',),
    'screwdriver': ('lift',),
    'scrunch': ('lift',),
    'seal': ('lift',),
    'seat': ('thing',),
    'seated': ('position', 'seated'),
    'second': ('free',),
    'second-pull': ('free',),
    'see': ('lift',),
    'segmental': ('lift',),
    'selectorised': ('lift',),
    'semi': ('lift',),
    'serratus': ('thing',),
    'set': ('free',),
    'settee': ('free',),
    'setting': ('lift',),
    'seven': ('free',),
    'sheet': ('lift',),
    'shelf': ('free',),
    'shin': ('thing',),
    'shoe': ('free',),
    'short': ('thing',),
    'short-lever': ('lift',),
    'shot': ('implement', 'medicine ball'),
    'shoulder': ('thing',),
    'shoulder-height': ('free',),
    'shoulder-width': ('free',),
    'shouldered': ('lift',),
    'shouldering': ('lift',),
    'shrimp': ('lift',),
    'shrug': ('movement',),
    'shuffle': ('lift',),
    'shuttle': ('lift',),
    'side': ('thing',),
    'side-lying': ('position', 'side-lying'),
    'side-on': ('free',),
    'sideway': ('direction',),
    'simulator': ('lift',),
    'single': ('free',),
    'sissy': ('lift',),
    'sit': ('lift',),
    'sit-to-stand': ('movement',),
    'sit-up': ('movement',),
    'six': ('free',),
    'skater': ('movement',),
    'ski': ('lift',),
    'skiing': ('lift',),
    'skip': ('movement',),
    'skipping': ('lift',),
    'skull': ('lift',),
    'slam': ('movement',),
    'slant': ('lift',),
    'slcr': ('lift',),
    'sled': ('implement', 'sled'),
    'sledgehammer': ('lift',),
    'sleeve': ('free',),
    'slhb': ('lift',),
    'slide': ('movement',),
    'slider': ('implement', 'sliders'),
    'slow': ('free',),
    'slowly': ('free',),
    'small': ('free',),
    'smooth': ('free',),
    'snap': ('free',),
    'snatch': ('movement',),
    'snatch-grip': ('grip', 'wide'),
    'soccer': ('lift',),
    'sofa': ('free',),
    'soft': ('free',),
    'sole': ('thing',),
    'soleu': ('thing',),
    'some': ('filler',),
    'sorensen': ('lift',),
    'sot': ('lift',),
    'spanish': ('lift',),
    'speed': ('free',),
    'spider': ('lift',),
    'spin': ('lift',),
    'spinal': ('lift',),
    'spine': ('free',),
    'spinning': ('lift',),
    'split': ('variant',),
    'split-stance': ('position', 'split'),
    'spot': ('free',),
    'spotted': ('free',),
    'spotter': ('free',),
    'spotter-arm': ('free',),
    'sprint': ('movement',),
    'sprinting': ('lift',),
    'squad': ('free',),
    'squat': ('movement',),
    'squeeze': ('free',),
    'stab': ('lift',),
    'stabilisation': ('lift',),
    'stability-ball': ('thing',),
    'stabilization': ('lift',),
    'stack': ('thing',),
    'stadium': ('lift',),
    'staggered-stance': ('position', 'split'),
    'stair': ('thing',),
    'stance': ('free',),
    'stand': ('thing',),
    'standard': ('free',),
    'standing': ('position', 'standing', 'split'),
    'star': ('lift',),
    'start': ('free',),
    'static': ('free',),
    'station': ('lift',),
    'stationary': ('lift',),
    'steep-incline': ('lift',),
    'step': ('thing',),
    'step-down': ('movement',),
    'step-over': ('movement',),
    'step-up': ('movement',),
    'stepper': ('lift',),
    'stepping': ('lift',),
    'sternum': ('free',),
    'stick': ('free',),
    'stiff-leg': ('lift',),
    'stir': ('movement',),
    'stone': ('lift',),
    'stool': ('free',),
    'stop': ('free',),
    'stopped': ('lift',),
    'straddle': ('lift',),
    'straight': ('free',),
    'straight-arm': ('lift',),
    'straight-bar': ('free',),
    'straight-leg': ('lift',),
    'strap': ('free',),
    'strapped': ('free',),
    'streamline': ('free',),
    'stretcher': ('lift',),
    'strict': ('free',),
    'stride': ('thing',),
    'style': ('free',),
    'submax': ('free',),
    'suitcase': ('lift',),
    'sumo': ('lift',),
    'super': ('lift',),
    'superman': ('lift',),
    'superset': ('free',),
    'supinating': ('lift',),
    'supination': ('movement',),
    'supine': ('position', 'lying', 'supported'),
    'support': ('thing',),
    'supported': ('lift',),
    'supramax': ('free',),
    'supramaximal': ('free',),
    'suspension': ('implement', 'suspension'),
    'swap': ('free',),
    'swim': ('lift',),
    'swimmer': ('lift',),
    'swimming': ('lift',),
    'swing': ('movement',),
    'swooping': ('lift',),
    't': ('lift',),
    't-bar': ('lift',),
    't-handle': ('free',),
    'table': ('thing',),
    'tall': ('thing',),
    'tall-kneeling': ('position', 'kneeling'),
    'tandem': ('lift',),
    'tap': ('movement',),
    'team': ('free',),
    'technical': ('free',),
    'technique': ('free',),
    'tempo': ('free',),
    'ten': ('free',),
    'tendon': ('lift',),
    'tension': ('free',),
    'terminal': ('lift',),
    'test': ('free',),
    'than': ('joining',),
    'that': ('filler',),
    'the': ('filler',),
    'then': ('filler',),
    'then-partials': ('free',),
    'thi': ('filler',),
    'thick': ('free',),
    'thick-bar': ('held', 'barbell'),
    'thick-grip': ('free',),
    'thigh': ('thing',),
    'thin': ('free',),
    'third': ('lift',),
    'third-pull': ('free',),
    'thread': ('lift',),
    'three': ('free',),
    'through': ('joining',),
    'throw': ('movement',),
    'thrust': ('movement',),
    'thruster': ('movement',),
    'thumb': ('thing',),
    'tibia': ('lift',),
    'tibialis': ('lift',),
    'till': ('joining',),
    'time': ('free',),
    'timed': ('free',),
    'tiptoe': ('lift',),
    'tire': ('lift',),
    'tng': ('free',),
    'to': ('joining',),
    'toe': ('thing',),
    'toe-in': ('free',),
    'toe-out': ('free',),
    'together': ('thing',),
    'top': ('free',),
    'torso': ('thing',),
    'toss': ('movement',),
    'touch': ('thing',),
    'touch-and-go': ('free',),
    'tow': ('lift',),
    'toward': ('joining',),
    'towed': ('lift',),
    'towel': ('lift',),
    'towing': ('lift',),
    'track': ('free',),
    'tractor': ('lift',),
    'trainer': ('lift',),
    'trap': ('thing',),
    'trap-bar': ('implement', 'trap bar'),
    'travelling': ('lift',),
    'treadmill': ('thing',),
    'triangle': ('lift',),
    'triceps': ('thing',),
    'triple': ('lift',),
    'trunk': ('thing',),
    'ttb': ('lift',),
    'tuck': ('lift',),
    'tuck-up': ('movement',),
    'tucked': ('lift',),
    'turkish': ('lift',),
    'turn': ('thing',),
    'turning': ('lift',),
    'twenty': ('lift',),
    'twist': ('movement',),
    'twisting': ('lift',),
    'two': ('free',),
    'two-arm': ('both sides',),
    'two-leg': ('both sides',),
    'typewriter': ('lift',),
    'tyre': ('lift',),
    'ulnar': ('lift',),
    'under': ('joining',),
    'underhand': ('grip', 'underhand'),
    'unequal': ('lift',),
    'uneven': ('lift',),
    'unpowered': ('lift',),
    'unrack': ('lift',),
    'unsupported': ('free',),
    'until': ('joining',),
    'up': ('direction',),
    'uphill': ('lift',),
    'upper': ('thing',),
    'upright': ('lift',),
    'upright-body': ('free',),
    'upside': ('lift',),
    'upward': ('direction',),
    'v': ('lift',),
    'v-bar': ('free',),
    'v-handle': ('free',),
    'v-sit': ('lift',),
    'v-up': ('movement',),
    'versu': ('joining',),
    'vertical': ('variant',),
    'via': ('joining',),
    'viking': ('lift',),
    'vmo': ('lift',),
    'vs': ('joining',),
    'w': ('lift',),
    'waist-height': ('free',),
    'waiter': ('lift',),
    'walk': ('movement',),
    'walking': ('movement',),
    'walkout': ('movement',),
    'wall': ('thing',),
    'warm-up': ('free',),
    'water': ('thing',),
    'wave': ('movement',),
    'way': ('free',),
    'wedge': ('lift',),
    'weight': ('thing',),
    'weighted': ('free',),
    'wheel': ('thing',),
    'wheelbarrow': ('lift',),
    'whole': ('lift',),
    'wide': ('free',),
    'wide-grip': ('grip', 'wide'),
    'width': ('free',),
    'wind': ('lift',),
    'windmill': ('movement',),
    'windowsill': ('free',),
    'windshield': ('lift',),
    'wiper': ('lift',),
    'with': ('joining',),
    'without': ('free',),
    'wobble': ('lift',),
    'woodchop': ('movement',),
    'work': ('free',),
    'working': ('free',),
    'worktop': ('free',),
    'wrap': ('free',),
    'wrestling': ('lift',),
    'wrist': ('thing',),
    'x': ('lift',),
    'y': ('lift',),
    'yielding': ('free',),
    'yoga': ('lift',),
    'yoke': ('lift',),
    'your': ('filler',),
    'z': ('lift',),
    'zercher': ('lift',),
    'zottman': ('lift',),
}

ALONE: dict[str, str] = {
    'press': 'overhead press',
    'row': 'bent-over row',
    'fly': 'dumbbell fly',
    'butterfly': 'machine fly',
    'incline': 'incline bench press',
    'barbell incline': 'incline bench press',
    'incline multi-grip-bar': 'incline bench press',
    'incline thick-bar': 'incline bench press',
    'cambered-bar incline': 'incline bench press',
    'dumbbell incline': 'incline dumbbell press',
    'decline': 'decline bench press',
    'barbell decline': 'decline bench press',
    'decline dumbbell': 'decline dumbbell press',
    'half-kneeling press': 'half-kneeling overhead press',
    'delt rear': 'dumbbell reverse fly',
    'delt side': 'lateral raise',
    'hammer': 'hammer curl',
    'goblet': 'goblet squat',
    'hack': 'hack squat',
    'trap-bar': 'trap bar deadlift',
    'handle high trap-bar': 'trap bar deadlift',
    'adduction': 'hip adduction machine',
    'abduction': 'hip abduction machine',
    'calf': 'standing calf raise',
}

HEADS: str = (
    "\n"
    'a-skip\n'
    'abduction\n'
    'acceleration\n'
    'adduction\n'
    'airplane\n'
    'balance\n'
    'bar\n'
    'battle-rope\n'
    'behind-neck\n'
    'bench\n'
    'bend\n'
    'bicycle\n'
    'bor\n'
    'bound\n'
    'bounding\n'
    'breathing\n'
    'bridge\n'
    'bug\n'
    'bump\n'
    'burpee\n'
    'campusing\n'
    'can\n'
    'carry\n'
    'chin\n'
    'chin-up\n'
    'chop\n'
    'circle\n'
    'clamshell\n'
    'clean\n'
    'climb\n'
    'climber\n'
    'close-grip\n'
    'copenhagen\n'
    'cossack\n'
    'crawl\n'
    'crossover\n'
    'crunch\n'
    'crusher\n'
    'csp\n'
    'curl\n'
    'curl-up\n'
    'cycle\n'
    'dbsp\n'
    'dead\n'
    'dead-hang\n'
    'deadlift\n'
    'deck\n'
    'depression\n'
    'deviation\n'
    'dig\n'
    'dip\n'
    'dog\n'
    'dorsiflexion\n'
    'drag\n'
    'dribble\n'
    'drive\n'
    'drop\n'
    'eversion\n'
    'extension\n'
    'fallout\n'
    'farmer\n'
    'flexion\n'
    'flip\n'
    'fly\n'
    'frenchy\n'
    'from-mid-thigh\n'
    'front\n'
    'get\n'
    'get-up\n'
    'glute-ham\n'
    'gripper\n'
    'halo\n'
    'handstand\n'
    'hang\n'
    'hike\n'
    'hinge\n'
    'hitch\n'
    'hop\n'
    'hydrant\n'
    'hyperextension\n'
    'inchworm\n'
    'inversion\n'
    'isometric\n'
    'jackknife\n'
    'jerk\n'
    'jump\n'
    'kickback\n'
    'l-sit\n'
    'ladder\n'
    'landing\n'
    'leap\n'
    'lever\n'
    'lift\n'
    'lower\n'
    'lowering\n'
    'lp\n'
    'lunge\n'
    'maker\n'
    'march\n'
    'marching\n'
    'morning\n'
    'muscle\n'
    'muscle-up\n'
    'no-money\n'
    'open\n'
    'opening\n'
    'pass\n'
    'pike\n'
    'pistol\n'
    'plank\n'
    'pogo\n'
    'preacher\n'
    'press\n'
    'pronation\n'
    'protraction\n'
    'pu\n'
    'pull\n'
    'pull-apart\n'
    'pull-through\n'
    'pull-up\n'
    'pulldown\n'
    'pullover\n'
    'punch\n'
    'push\n'
    'push-up\n'
    'pushdown\n'
    'put\n'
    'raise\n'
    'reach\n'
    'rear-foot-elevated\n'
    'repeater\n'
    'retraction\n'
    'rock\n'
    'roll\n'
    'rollout\n'
    'romanian\n'
    'rope\n'
    'rotation\n'
    'rotational\n'
    'row\n'
    'ruck\n'
    'rucking\n'
    'saq\n'
    'saw\n'
    'scaption\n'
    'scr\n'
    'screwdriver\n'
    'scrunch\n'
    'setting\n'
    'shrug\n'
    'sit\n'
    'sit-to-stand\n'
    'sit-up\n'
    'skipping\n'
    'slam\n'
    'slcr\n'
    'slhb\n'
    'slide\n'
    'snatch\n'
    'sprint\n'
    'sprinting\n'
    'squat\n'
    'squeeze\n'
    'stab\n'
    'stand\n'
    'step\n'
    'step-down\n'
    'step-up\n'
    'stick\n'
    'stiff-leg\n'
    'stone\n'
    'superman\n'
    'supination\n'
    'swimmer\n'
    'swing\n'
    't-bar\n'
    'tap\n'
    'throw\n'
    'thrust\n'
    'thruster\n'
    'toss\n'
    'touch\n'
    'tow\n'
    'ttb\n'
    'tuck\n'
    'tuck-up\n'
    'twist\n'
    'v-up\n'
    'walk\n'
    'walkout\n'
    'wave\n'
    'wheelbarrow\n'
    'windmill\n'
    'wiper\n'
    'woodchop\n'
    'yoke\n'
)

NAMES: str = (
    "\n"
    '180deg\t180deg jump\trotational jump\n'
    '21s\t21s\tpartial-range barbell curl\n'
    '45deg\t45deg bend side\tside bend on the back extension bench\n'
    '90/90\t90/90 hip\t90/90 hip lift-off\n'
    '90/90\t90/90 hip lift\t90/90 hip lift-off\town\n'
    '90/90\t90/90 lift\t90/90 hip lift-off\n'
    '90deg\t90deg jump\trotational jump\n'
    'a-skip\ta-skip\tA-skip\town\n'
    'a-skip\ta-skip drill\tA-skip\n'
    'abduction\tabduction band\tstanding band hip abduction\n'
    'abduction\tabduction band hip\tstanding band hip abduction\n'
    'abduction\tabduction band hip seated\tseated band hip abduction\n'
    'abduction\tabduction band hip seated\tseated band hip abduction\town\n'
    'abduction\tabduction band hip standing\tstanding band hip abduction\town\n'
    'abduction\tabduction band seated\tseated band hip abduction\n'
    'abduction\tabduction band standing\tstanding band hip abduction\n'
    'abduction\tabduction cable\tcable hip abduction\n'
    'abduction\tabduction cable hip\tcable hip abduction\town\n'
    'abduction\tabduction cable hip standing\tcable hip abduction\n'
    'abduction\tabduction chair hip\tbodyweight standing hip abduction\n'
    'abduction\tabduction forward hip lean\tleaning hip abduction machine\n'
    'abduction\tabduction forward lean machine\tleaning hip abduction machine\n'
    'abduction\tabduction hip\thip abduction machine\n'
    'abduction\tabduction hip hovering\tleaning hip abduction machine\n'
    'abduction\tabduction hip leaning machine\tleaning hip abduction machine\town\n'
    'abduction\tabduction hip lying\tside-lying hip abduction\n'
    'abduction\tabduction hip machine\thip abduction machine\n'
    'abduction\tabduction hip machine\thip abduction machine\town\n'
    'abduction\tabduction hip machine multi\tstanding machine hip abduction\n'
    'abduction\tabduction hip machine standing\tstanding machine hip abduction\n'
    'abduction\tabduction hip machine standing\tstanding machine hip abduction\town\n'
    'abduction\tabduction hip multi\tcable hip abduction\n'
    'abduction\tabduction hip plank side\tside plank with leg raise\n'
    'abduction\tabduction hip seated\thip abduction machine\n'
    'abduction\tabduction hip standing\tcable hip abduction\n'
    'abduction\tabduction machine\thip abduction machine\n'
    'abduction\tabduction machine standing\tstanding machine hip abduction\n'
    'abduction\tabduction seated\thip abduction machine\n'
    'accelerated\taccelerated jump\tband-assisted jump\n'
    'acceleration\tacceleration\tsprint\n'
    'acceleration\tacceleration sprint\tsprint\n'
    'achille\tachille drop heel\theel drop\n'
    'active\tactive hang\tscapular pull-up\n'
    'adduction\tadduction ball squeeze\tball squeeze\n'
    'adduction\tadduction band\tband hip adduction\n'
    'adduction\tadduction band hip\tband hip adduction\town\n'
    'adduction\tadduction band hip standing\tband hip adduction\n'
    'adduction\tadduction cable\tcable hip adduction\n'
    'adduction\tadduction cable hip\tcable hip adduction\town\n'
    'adduction\tadduction cable hip standing\tcable hip adduction\n'
    'adduction\tadduction hip\thip adduction machine\n'
    'adduction\tadduction hip lying\tside-lying hip adduction\n'
    'adduction\tadduction hip machine\thip adduction machine\n'
    'adduction\tadduction hip machine\thip adduction machine\town\n'
    'adduction\tadduction hip multi\tcable hip adduction\n'
    'adduction\tadduction hip seated\thip adduction machine\n'
    'adduction\tadduction hip slider\tslider adduction\n'
    'adduction\tadduction hip standing\tcable hip adduction\n'
    'adduction\tadduction machine\thip adduction machine\n'
    'adduction\tadduction out slide\tslider adduction\n'
    'adduction\tadduction seated\thip adduction machine\n'
    'adduction\tadduction slide\tslider adduction\n'
    'adduction\tadduction slider\tslider adduction\n'
    'adduction\tadduction slider\tslider adduction\town\n'
    'adduction\tadduction squeeze\tball squeeze\n'
    'airborne\tairborne lunge\tskater squat\n'
    'airplane\tairplane hip\thip airplane\n'
    'airplane\tairplane hip\thip airplane\town\n'
    'alternating\talternating and leg prone raise\tprone alternating arm and leg raise\town\n'
    'alternating\talternating bench dumbbell\talternating dumbbell bench press\n'
    'alternating\talternating bench dumbbell press\talternating dumbbell bench press\n'
    'alternating\talternating bench dumbbell press\talternating dumbbell bench press\town\n'
    'alternating\talternating bird dog\tbird dog\n'
    'alternating\talternating bound\tbounding\n'
    'alternating\talternating bug dead\tdead bug\n'
    'alternating\talternating cross-body curl\tcross-body hammer curl\n'
    'alternating\talternating crunch elbow knee\tbicycle crunch\n'
    'alternating\talternating curl\talternating dumbbell curl\n'
    'alternating\talternating curl dumbbell\talternating dumbbell curl\n'
    'alternating\talternating curl dumbbell\talternating dumbbell curl\town\n'
    'alternating\talternating curl dumbbell seated\tseated dumbbell curl\n'
    'alternating\talternating dumbbell front raise\talternating front raise\n'
    'alternating\talternating dumbbell overhead press\talternating dumbbell shoulder press\n'
    'alternating\talternating dumbbell press\talternating dumbbell bench press\n'
    'alternating\talternating dumbbell press shoulder\talternating dumbbell shoulder press\n'
    'alternating\talternating dumbbell press shoulder\talternating dumbbell shoulder press\town\n'
    'alternating\talternating front raise\talternating front raise\town\n'
    'alternating\talternating heel touch\theel touch crunch\n'
    'alternating\talternating jump split squat\tsplit squat jump\n'
    'alternating\talternating jump step-up\texplosive step-up\n'
    'alternating\talternating kettlebell press\talternating dumbbell shoulder press\t\tkettlebell\n'
    'alternating\talternating kettlebell row\talternating kettlebell row\town\n'
    'alternating\talternating lunge\tbodyweight lunge\n'
    'alternating\talternating prone raise\tprone alternating arm and leg raise\n'
    'alternating\talternating push\texplosive step-up\n'
    'alternating\talternating rope wave\talternating rope wave\town\n'
    'alternating\talternating sandbag shoulder\tsandbag over shoulder\n'
    'alternating\talternating skipping\tjump rope\n'
    'alternating\talternating wave\talternating rope wave\n'
    'altitude\taltitude drop\tdrop landing\n'
    'altitude\taltitude landing\tdrop landing\n'
    'altitude\taltitude landing one-leg\tsingle-leg landing\n'
    'american\tamerican swing\toverhead kettlebell swing\n'
    'angel\tangel wall\twall slide\n'
    'angled-bar\tangled-bar curl\tbent-bar curl\n'
    'angled-bar\tangled-bar deadlift one-leg romanian\tlandmine single-leg Romanian deadlift\n'
    'angled-bar\tangled-bar press\tlandmine press\n'
    'angled-bar\tangled-bar pushdown\tstraight-bar pushdown\n'
    'angled-bar\tangled-bar rotation\tlandmine rotation\n'
    'angled-bar\tangled-bar row\tone-arm landmine row\n'
    'angled-bar\tangled-bar squat\tlandmine squat\n'
    'ankle\tankle hop\tpogo jump\n'
    'ankle\tankle jump\tpogo jump\n'
    'ankle-weight\tabduction ankle-weight hip\tbodyweight standing hip abduction\n'
    'ankle-weight\tankle-weight curl leg\tband standing leg curl\n'
    'ankle-weight\tankle-weight curl leg standing\tband standing leg curl\n'
    'ankle-weight\tankle-weight extension hip\tbodyweight standing hip extension\n'
    'ankle-weight\tankle-weight extension leg\tankle-weight leg extension\n'
    'ankle-weight\tankle-weight extension leg\tankle-weight leg extension\town\n'
    'ankle-weight\tankle-weight extension leg seated\tankle-weight leg extension\n'
    'ankle-weight\tankle-weight knee raise\tstanding knee raise\n'
    'anti-rotation\tand anti-rotation lift press\tanti-rotation press overhead\n'
    'anti-rotation\tanti-rotation band isometric\tband anti-rotation press\n'
    'anti-rotation\tanti-rotation band overhead press\tanti-rotation press overhead\t\tband\n'
    'anti-rotation\tanti-rotation band overhead raise\tanti-rotation press overhead\t\tband\n'
    'anti-rotation\tanti-rotation band press\tband anti-rotation press\n'
    'anti-rotation\tanti-rotation band press\tband anti-rotation press\town\n'
    'anti-rotation\tanti-rotation cable chop\tcable woodchop\n'
    'anti-rotation\tanti-rotation cable press\tanti-rotation press\n'
    'anti-rotation\tanti-rotation chop\tcable woodchop\n'
    'anti-rotation\tanti-rotation isometric\tanti-rotation press\n'
    'anti-rotation\tanti-rotation isometric press\tanti-rotation press\n'
    'anti-rotation\tanti-rotation kneeling press\thalf-kneeling anti-rotation press\n'
    'anti-rotation\tanti-rotation lift\tlow-to-high cable chop\n'
    'anti-rotation\tanti-rotation overhead press\tanti-rotation press overhead\n'
    'anti-rotation\tanti-rotation overhead press\tanti-rotation press overhead\town\n'
    'anti-rotation\tanti-rotation overhead press raise\tanti-rotation press overhead\n'
    'anti-rotation\tanti-rotation overhead raise\tanti-rotation press overhead\n'
    'anti-rotation\tanti-rotation press\tanti-rotation press\n'
    'anti-rotation\tanti-rotation press\tanti-rotation press\town\n'
    'anti-rotation\tanti-rotation press split squat\tsplit-stance anti-rotation press\n'
    'anti-rotation\tanti-rotation press split-stance\tsplit-stance anti-rotation press\town\n'
    'anti-rotation\tanti-rotation press standing\tanti-rotation press\n'
    'anti-rotation\tanti-rotation side step\tanti-rotation walk-out\n'
    'anti-rotation\tanti-rotation walk\tanti-rotation walk-out\n'
    'anti-rotation\tanti-rotation walkout\tanti-rotation walk-out\town\n'
    'approach\tapproach jump\tcountermovement jump\n'
    'armchair\tarmchair push-up\tchair push-up\n'
    'ascent\tascent rope\trope climb\n'
    'assisted\tassisted band chin-up\tassisted chin-up\t\tband\n'
    'assisted\tassisted band curl lower nordic\tassisted Nordic curl\n'
    'assisted\tassisted band curl nordic\tassisted Nordic curl\n'
    'assisted\tassisted band curl nordic reverse\tband-assisted reverse Nordic curl\town\n'
    'assisted\tassisted band dip\tband-assisted dip\n'
    'assisted\tassisted band dip\tband-assisted dip\town\n'
    'assisted\tassisted band jump\tband-assisted jump\town\n'
    'assisted\tassisted band pu\tband-assisted pull-up\n'
    'assisted\tassisted band pull-up\tband-assisted pull-up\town\n'
    'assisted\tassisted chin-up\tassisted chin-up\town\n'
    'assisted\tassisted chin-up machine\tassisted chin-up\n'
    'assisted\tassisted curl nordic\tassisted Nordic curl\town\n'
    'assisted\tassisted curl nordic push-up\tassisted Nordic curl\n'
    'assisted\tassisted curl nordic reverse\tband-assisted reverse Nordic curl\n'
    'assisted\tassisted dip\tassisted dip\town\n'
    'assisted\tassisted dip machine\tassisted dip\n'
    'assisted\tassisted hand split squat\thand-assisted safety bar split squat\n'
    'assisted\tassisted hand squat\thand-assisted safety bar squat\n'
    'assisted\tassisted jump\tband-assisted jump\n'
    'assisted\tassisted lunge\tsuspension lunge\n'
    'assisted\tassisted machine pull-up\tassisted pull-up\n'
    'assisted\tassisted one-arm pull-up towel\toffset pull-up\n'
    'assisted\tassisted pu\tassisted pull-up\n'
    'assisted\tassisted pull-up\tassisted pull-up\town\n'
    'assisted\tassisted squat\tsuspension squat\n'
    'australian\taustralian pull-up\tinverted row\n'
    'backward\tbackward crawl\tcrab walk\n'
    'backward\tbackward drag dummy\tdummy drag\n'
    'backward\tbackward drag sandbag\tdummy drag\n'
    'backward\tbackward drag sled\tbackward sled drag\town\n'
    'backward\tbackward drag tire\tbackward sled drag\n'
    'backward\tbackward drag tyre\tbackward sled drag\n'
    'backward\tbackward lunge\treverse lunge\n'
    'backward\tbackward pull sled\tbackward sled drag\n'
    'backward\tbackward row sled\tsled row\n'
    'backward\tbackward sled\tbackward sled drag\n'
    'backward\tbackward sled walk\tbackward sled drag\n'
    'backward\tbackward uphill walk\tbackward walk\n'
    'backward\tbackward walk\tbackward walk\town\n'
    'backward\tbackward walking\tbackward walk\n'
    'balance\tbalance board wobble\tsingle-leg balance\n'
    'balance\tbalance snatch\tsnatch balance\town\n'
    'balance\tbalance tandem\ttandem stand\n'
    'ballistic\tballistic bench\tbench press throw\n'
    'ballistic\tballistic bench press\tbench press throw\n'
    'ballistic\tballistic leg press\tleg press jump\n'
    'band\tband dip\tband-assisted dip\n'
    'band\tband fly\tband fly\n'
    'band\tband fly\tband fly\town\n'
    'band\tband row\tband row\n'
    'band\tband row\tband row\town\n'
    'bar\tarm bar\tarm bar\town\n'
    'barbell\tand barbell clean press\tbarbell clean and press\n'
    'barbell\tand barbell clean press\tbarbell clean and press\town\n'
    'barbell\tback barbell carry\tyoke carry\n'
    'barbell\tback barbell lunge step\tbarbell reverse lunge\n'
    'barbell\tback barbell squat\tback squat\n'
    'barbell\tbarbell bench\tbench press\n'
    'barbell\tbarbell bench flat\tbench press\n'
    'barbell\tbarbell bench flat press\tbench press\n'
    'barbell\tbarbell bench press\tbench press\n'
    'barbell\tbarbell box squat\tbox squat\n'
    'barbell\tbarbell bridge glute\tbarbell glute bridge\n'
    'barbell\tbarbell bridge glute\tbarbell glute bridge\town\n'
    'barbell\tbarbell calf\tbarbell calf raise\n'
    'barbell\tbarbell calf raise\tbarbell calf raise\n'
    'barbell\tbarbell calf raise\tbarbell calf raise\town\n'
    'barbell\tbarbell calf raise seated\tbarbell seated calf raise\n'
    'barbell\tbarbell calf raise seated\tbarbell seated calf raise\town\n'
    'barbell\tbarbell calf seated\tbarbell seated calf raise\n'
    'barbell\tbarbell carry front held\tfront-loaded bar carry\n'
    'barbell\tbarbell clean\tclean\n'
    'barbell\tbarbell clean power\tpower clean\n'
    'barbell\tbarbell curl\tbarbell curl\n'
    'barbell\tbarbell curl\tbarbell curl\town\n'
    'barbell\tbarbell curl drag\tdrag curl\n'
    'barbell\tbarbell curl finger\tfinger curl\n'
    'barbell\tbarbell curl wrist\twrist curl\n'
    'barbell\tbarbell elbow out row\twide-grip bent-over row\n'
    'barbell\tbarbell floor press\tfloor press\n'
    'barbell\tbarbell french press\toverhead barbell triceps extension\n'
    'barbell\tbarbell front lunge\tbarbell lunge\n'
    'barbell\tbarbell front raise\tbarbell front raise\n'
    'barbell\tbarbell front raise\tbarbell front raise\town\n'
    'barbell\tbarbell front squat\tfront squat\n'
    'barbell\tbarbell hack lift\tbehind-the-back deadlift\n'
    'barbell\tbarbell hack squat\tbehind-the-back deadlift\n'
    'barbell\tbarbell heel raise\tbarbell calf raise\n'
    'barbell\tbarbell high pull\tclean high pull\n'
    'barbell\tbarbell hip thrust\thip thrust\n'
    'barbell\tbarbell jerk push\tpush jerk\n'
    'barbell\tbarbell jerk split\tsplit jerk\n'
    'barbell\tbarbell jerk squat\tsquat jerk\n'
    'barbell\tbarbell jump shrug\tjump shrug\n'
    'barbell\tbarbell jump squat\tbarbell squat jump\n'
    'barbell\tbarbell jump squat\tbarbell squat jump\town\n'
    'barbell\tbarbell lunge\tbarbell lunge\n'
    'barbell\tbarbell lunge\tbarbell lunge\town\n'
    'barbell\tbarbell lunge static\tbarbell split squat\n'
    'barbell\tbarbell paused row\ttempo bent-over row\n'
    'barbell\tbarbell power shrug\tpower shrug\n'
    'barbell\tbarbell power snatch\tpower snatch\n'
    'barbell\tbarbell press push\tpush press\n'
    'barbell\tbarbell press seated\tseated barbell shoulder press\n'
    'barbell\tbarbell prone row\tseal row\n'
    'barbell\tbarbell row\tbent-over row\n'
    'barbell\tbarbell row slow\ttempo bent-over row\n'
    'barbell\tbarbell shrug\tbarbell shrug\n'
    'barbell\tbarbell shrug\tbarbell shrug\town\n'
    'barbell\tbarbell snatch\tsnatch\n'
    'barbell\tbarbell split squat\tbarbell split squat\n'
    'barbell\tbarbell split squat\tbarbell split squat\town\n'
    'barbell\tbarbell squat\tback squat\n'
    'barrier\tbarrier jump\thurdle jump\n'
    'battle-rope\talternating battle-rope wave\talternating rope wave\n'
    'battle-rope\tbattle-rope\talternating rope wave\n'
    'battle-rope\tbattle-rope circle\trope outward circles\n'
    'battle-rope\tbattle-rope double wave\tdouble rope wave\n'
    'battle-rope\tbattle-rope slam\trope slam\n'
    'battle-rope\tbattle-rope wave\talternating rope wave\n'
    'behind-back\tball behind-back pass\tmedicine ball wall taps\n'
    'behind-back\tbarbell behind-back curl wrist\tbehind-the-back wrist curl\n'
    'behind-back\tbarbell behind-back shrug\tbehind-the-back shrug\n'
    'behind-back\tbehind-back cable curl\tbehind-the-body cable curl\n'
    'behind-back\tbehind-back cable curl\tbehind-the-body cable curl\town\n'
    'behind-back\tbehind-back cable lateral raise\tcable lateral raise\n'
    'behind-back\tbehind-back curl wrist\tbehind-the-back wrist curl\town\n'
    'behind-back\tbehind-back deadlift\tbehind-the-back deadlift\town\n'
    'behind-back\tbehind-back shrug\tbehind-the-back shrug\town\n'
    'behind-head\tbehind-head crusher skull\tlying triceps extension behind the head\n'
    'behind-head\tbehind-head extension lying triceps\tlying triceps extension behind the head\town\n'
    'behind-neck\tbehind-neck jerk\tsplit jerk\n'
    'behind-neck\tbehind-neck jerk power\tpush jerk\n'
    'behind-neck\tbehind-neck jerk push\tpush jerk\n'
    'behind-neck\tbehind-neck jerk split\tsplit jerk\n'
    'behind-neck\tbehind-neck jerk squat\tsquat jerk\n'
    'behind-neck\tbehind-neck lat pulldown\tbehind-the-neck pulldown\n'
    'behind-neck\tbehind-neck press\tbehind-the-neck press\n'
    'behind-neck\tbehind-neck press\tbehind-the-neck press\town\n'
    'behind-neck\tbehind-neck press push\tbehind-the-neck push press\n'
    'behind-neck\tbehind-neck press push\tbehind-the-neck push press\town\n'
    'behind-neck\tbehind-neck pulldown\tbehind-the-neck pulldown\n'
    'behind-neck\tbehind-neck pulldown\tbehind-the-neck pulldown\town\n'
    'bench\tband bench\tbench press with bands\n'
    'bench\tbench\tbench press\n'
    'bench\tbench bird dog row\tbird dog row\n'
    'bench\tbench comp\tpaused bench press\n'
    'bench\tbench de\tspeed bench press\n'
    'bench\tbench dip\tbench dip\town\n'
    'bench\tbench fast\tspeed bench press\n'
    'bench\tbench flat\tbench press\n'
    'bench\tbench high row\tseal row\n'
    'bench\tbench pin\tpin bench press\n'
    'bench\tbench pull\tseal row\n'
    'bench\tbench rack\tpin bench press\n'
    'bench\tbench slow\ttempo bench press\n'
    'bench\tbench wide\twide-grip bench press\n'
    'bent-bar\tbent-bar crusher skull\tlying triceps extension\n'
    'bent-bar\tbent-bar curl\tbent-bar curl\n'
    'bent-bar\tbent-bar curl\tbent-bar curl\town\n'
    'bent-bar\tbent-bar curl reverse\treverse curl\n'
    'bent-bar\tbent-bar row upright\tupright row\n'
    'bent-knee\tbent-knee body row\tinverted row with bent knees\n'
    'bent-knee\tbent-knee bug dead\tdead bug heel tap\n'
    'bent-knee\tbent-knee cable glute kickback\tcable hip extension\n'
    'bent-knee\tbent-knee cable kickback\tcable hip extension\n'
    'bent-knee\tbent-knee calf\tbent-knee calf raise\n'
    'bent-knee\tbent-knee calf one-leg\tsingle-leg bent-knee calf raise\n'
    'bent-knee\tbent-knee calf one-leg raise\tsingle-leg bent-knee calf raise\n'
    'bent-knee\tbent-knee calf one-leg raise\tsingle-leg bent-knee calf raise\town\n'
    'bent-knee\tbent-knee calf raise\tbent-knee calf raise\town\n'
    'bent-knee\tbent-knee calf raise standing\tbent-knee calf raise\n'
    'bent-knee\tbent-knee calf standing\tbent-knee calf raise\n'
    'bent-knee\tbent-knee drop heel\tbent-knee heel drop\n'
    'bent-knee\tbent-knee drop heel\tbent-knee heel drop\town\n'
    'bent-knee\tbent-knee good morning\tgood morning\n'
    'bent-knee\tbent-knee hang leg raise\thanging knee raise\n'
    'bent-knee\tbent-knee hang raise\thanging knee raise\n'
    'bent-knee\tbent-knee heel one-leg raise\tsingle-leg bent-knee calf raise\n'
    'bent-knee\tbent-knee heel raise\tbent-knee calf raise\n'
    'bent-knee\tbent-knee inverted row\tinverted row with bent knees\n'
    'bent-knee\tbent-knee inverted row\tinverted row with bent knees\town\n'
    'bent-knee\tbent-knee kickback\tdonkey kick\n'
    'bent-knee\tbent-knee l-sit\ttuck hold on bars\n'
    'bent-knee\tbent-knee leg lying raise\tbent-knee lying leg raise\town\n'
    'bent-knee\tbent-knee plank side\tknee side plank\n'
    'bent-knee\tbent-knee rotation trunk\tbent-knee trunk rotation\town\n'
    'bent-knee\tbent-knee sit-up\tsit-up\n'
    'bent-over\tband bent-over pull swim\tband swim pull\n'
    'bent-over\tbarbell bent-over row\tbent-over row\n'
    'bent-over\tbent-over calf\tdonkey calf raise\n'
    'bent-over\tbent-over calf raise\tdonkey calf raise\n'
    'bent-over\tbent-over delt raise rear\tdumbbell reverse fly\n'
    'bent-over\tbent-over dumbbell kickback\ttriceps kickback\n'
    'bent-over\tbent-over dumbbell row\tbent-over dumbbell row\n'
    'bent-over\tbent-over dumbbell row\tbent-over dumbbell row\town\n'
    'bent-over\tbent-over fly\tdumbbell reverse fly\n'
    'bent-over\tbent-over fly reverse\tdumbbell reverse fly\n'
    'bent-over\tbent-over kickback\ttriceps kickback\n'
    'bent-over\tbent-over kickback triceps\ttriceps kickback\n'
    'bent-over\tbent-over lateral\tdumbbell reverse fly\n'
    'bent-over\tbent-over lateral raise\tdumbbell reverse fly\n'
    'bent-over\tbent-over row\tbent-over row\n'
    'bent-over\tbent-over row\tbent-over row\town\n'
    'bent-over\tbent-over row tempo\ttempo bent-over row\town\n'
    'bent-over\tbent-over row trap-bar\ttrap bar row\n'
    'between-the-legs\tbetween-the-legs sled strap walk\tsled hip extension walk\n'
    'between-the-legs\tbetween-the-legs throw\tforward scoop throw\n'
    'between-the-legs\tbetween-the-legs toss\tforward scoop throw\n'
    'biceps\tband biceps curl\tband curl\n'
    'biceps\tbiceps cable curl\tcable curl\n'
    'biceps\tbiceps curl\tbarbell curl\n'
    'bicycle\tbicycle\tbicycle crunch\n'
    'bicycle\tbicycle crunch\tbicycle crunch\town\n'
    'bike\tair bike\tfan bike\n'
    'bike\tarm bike\tarm ergometer\n'
    'bike\tbike\tstationary bike\n'
    'bike\tbike fan\tfan bike\town\n'
    'bird\tband bird dog\tbird dog with band\n'
    'bird\tband bird dog\tbird dog with band\town\n'
    'bird\tbird dog\tbird dog\town\n'
    'bird\tbird dog row\tbird dog row\town\n'
    'block\tblock jerk\tsplit jerk\n'
    'block\tblock pull\track pull\n'
    'board\tbench board\tboard bench press\n'
    'body\tbody row\tinverted row\n'
    'body\tbody saw\tbody saw\town\n'
    'bodyweight\tabduction bodyweight hip standing\tbodyweight standing hip abduction\n'
    'bodyweight\tabduction bodyweight hip standing\tbodyweight standing hip abduction\town\n'
    'bodyweight\tbent-knee bodyweight calf\tbent-knee calf raise\n'
    'bodyweight\tbent-knee bodyweight calf raise\tbent-knee calf raise\n'
    'bodyweight\tbodyweight box squat\tchair squat\n'
    'bodyweight\tbodyweight bridge\tglute bridge\n'
    'bodyweight\tbodyweight bridge glute\tglute bridge\n'
    'bodyweight\tbodyweight calf\tbodyweight calf raise\n'
    'bodyweight\tbodyweight calf one-leg\tsingle-leg calf raise\n'
    'bodyweight\tbodyweight calf one-leg raise\tsingle-leg calf raise\n'
    'bodyweight\tbodyweight calf raise\tbodyweight calf raise\n'
    'bodyweight\tbodyweight calf raise\tbodyweight calf raise\town\n'
    'bodyweight\tbodyweight chin-up\tchin-up\n'
    'bodyweight\tbodyweight crusher skull\tbodyweight triceps extension\n'
    'bodyweight\tbodyweight curl\tsuspension curl\n'
    'bodyweight\tbodyweight curl leg standing\tbodyweight standing leg curl\n'
    'bodyweight\tbodyweight curl leg standing\tbodyweight standing leg curl\town\n'
    'bodyweight\tbodyweight deadlift one-leg romanian\tbodyweight single-leg Romanian deadlift\n'
    'bodyweight\tbodyweight deadlift one-leg romanian\tbodyweight single-leg Romanian deadlift\town\n'
    'bodyweight\tbodyweight dip\tdip\n'
    'bodyweight\tbodyweight extension hip standing\tbodyweight standing hip extension\n'
    'bodyweight\tbodyweight extension hip standing\tbodyweight standing hip extension\town\n'
    'bodyweight\tbodyweight extension triceps\tbodyweight triceps extension\town\n'
    'bodyweight\tbodyweight good morning\thip hinge drill\t\tbodyweight\n'
    'bodyweight\tbodyweight half squat\tmini squat\n'
    'bodyweight\tbodyweight heel raise\tbodyweight calf raise\n'
    'bodyweight\tbodyweight hinge hip\thip hinge drill\t\tbodyweight\n'
    'bodyweight\tbodyweight hip thrust\tdumbbell hip thrust\t\tbodyweight\n'
    'bodyweight\tbodyweight isometric squat\tsquat hold\n'
    'bodyweight\tbodyweight jump squat\tcountermovement jump\n'
    'bodyweight\tbodyweight lunge\tbodyweight lunge\n'
    'bodyweight\tbodyweight lunge\tbodyweight lunge\town\n'
    'bodyweight\tbodyweight lunge reverse\tbodyweight lunge\n'
    'bodyweight\tbodyweight lunge walking\tbodyweight lunge\n'
    'bodyweight\tbodyweight partial squat\tmini squat\n'
    'bodyweight\tbodyweight pull-up\tpull-up\n'
    'bodyweight\tbodyweight quarter squat\tmini squat\n'
    'bodyweight\tbodyweight row\tinverted row\n'
    'bodyweight\tbodyweight split squat\tsplit squat\n'
    'bodyweight\tbodyweight squat\tbodyweight squat\n'
    'bodyweight\tbodyweight squat\tbodyweight squat\town\n'
    'bodyweight\tbodyweight step-up\tbodyweight step-up\n'
    'bodyweight\tbodyweight step-up\tbodyweight step-up\town\n'
    'bolster\tarc bolster quad short\tshort-arc leg extension\n'
    'bor\tbor\tbent-over row\n'
    'bottom\tbottom press squat\tSots press\n'
    'bottoms-up\tbottoms-up carry\tbottoms-up carry\town\n'
    'bottoms-up\tbottoms-up carry rack\tbottoms-up carry\n'
    'bottoms-up\tbottoms-up carry waiter\tbottoms-up carry\n'
    'bottoms-up\tbottoms-up get-up\tbottoms-up Turkish get-up\n'
    'bottoms-up\tbottoms-up get-up turkish\tbottoms-up Turkish get-up\town\n'
    'bottoms-up\tbottoms-up isometric\tbottoms-up kettlebell hold\n'
    'bottoms-up\tbottoms-up isometric rack\tbottoms-up kettlebell hold\n'
    'bottoms-up\tbottoms-up press\tbottoms-up kettlebell press\n'
    'bottoms-up\tbottoms-up squat\tpin squat\n'
    'bottoms-up\tbottoms-up waiter walk\tbottoms-up carry\n'
    'bottoms-up\tbottoms-up walk\tbottoms-up carry\n'
    'bounce\tankle bounce\tpogo jump\n'
    'bound\tbound\tbounding\n'
    'bound\tbound side\tlateral bound\n'
    'bounding\tbounding\tbounding\town\n'
    'bounding\tbounding stair\tstair run\n'
    'brace\tab brace\t90-90 breathing\n'
    'bracing\tab bracing\t90-90 breathing\n'
    'breaker\tbreaker nose\tlying triceps extension\n'
    'breathing\t90/90 breathing\t90-90 breathing\town\n'
    'breathing\tbrace breathing supine\t90-90 breathing\n'
    'breathing\tbreathing ninety ninety\t90-90 breathing\n'
    'bridge\tback bridge neck\tneck bridge\n'
    'bridge\tband bridge\tband glute bridge\n'
    'bridge\tband bridge glute\tband glute bridge\n'
    'bridge\tband bridge glute\tband glute bridge\town\n'
    'bridge\tbridge\tglute bridge\n'
    'bridge\tbridge frog\tfrog pump\n'
    'bridge\tbridge front neck\tfront neck bridge\n'
    'bridge\tbridge front neck\tfront neck bridge\town\n'
    'bridge\tbridge glute\tglute bridge\town\n'
    'bridge\tbridge glute march\tmarching glute bridge\n'
    'bridge\tbridge head\tneck bridge\n'
    'bridge\tbridge hip\tglute bridge\n'
    'bridge\tbridge march\tmarching glute bridge\n'
    'bridge\tbridge neck\tneck bridge\town\n'
    'bridge\tbridge neck rear\tneck bridge\n'
    'bridge\tbridge raise side\tside plank dip\n'
    'bridge\tbridge side\tside plank\n'
    'broad\tband broad jump\tband-resisted jump\n'
    'broad\tbroad jump\tbroad jump\town\n'
    'broomstick\tbroomstick hinge\thip hinge drill\n'
    'bucket\tand bucket close open rice\trice bucket\n'
    'bucket\tbucket carry\tbucket carry\town\n'
    'bucket\tbucket carry front\tbucket carry\n'
    'bucket\tbucket dig rice\trice bucket\n'
    'bucket\tbucket rice\trice bucket\town\n'
    'bucket\tbucket rice work\trice bucket\n'
    'buddy\tbuddy drag\tdummy drag\n'
    'bunny\tbench bunny hop\tbunny hop over a bench\n'
    'bunny\tbench bunny hop\tbunny hop over a bench\town\n'
    'burpee\tbox burpee\tburpee\n'
    'burpee\tbox burpee jump\tburpee\n'
    'burpee\tburpee\tburpee\town\n'
    'burpee\tburpee jump\tburpee\n'
    'butterfly\tband butterfly pull\tband swim pull\n'
    'butterfly\tbutterfly machine\tmachine fly\n'
    'butterfly\tbutterfly machine reverse\tmachine reverse fly\n'
    'butterfly\tbutterfly reverse\tmachine reverse fly\n'
    'butterfly\tbutterfly sit-up\tbutterfly sit-up\town\n'
    'cable\taway cable curl face\tbehind-the-body cable curl\n'
    'cable\tbar cable curl\tcable curl\n'
    'cable\tbench cable flat fly\tlying cable fly\n'
    'cable\tbench cable fly\tlying cable fly\n'
    'cable\tbend cable low side\tcable side bend\n'
    'cable\tbend cable side\tcable side bend\town\n'
    'cable\tcable chop\tcable woodchop\n'
    'cable\tcable curl\tcable curl\town\n'
    'cable\tcable curl high\thigh cable curl\town\n'
    'cable\tcable curl leg\tcable leg curl\n'
    'cable\tcable curl leg\tcable leg curl\town\n'
    'cable\tcable curl low\tcable curl\n'
    'cable\tcable curl rope\trope hammer curl\n'
    'cable\tcable delt fly rear\tcable reverse fly\n'
    'cable\tcable delt rear row\twide-grip seated row\n'
    'cable\tcable face pull\tface pull\n'
    'cable\tcable fly\tcable fly\n'
    'cable\tcable fly\tcable fly\town\n'
    'cable\tcable fly high\thigh-to-low cable fly\n'
    'cable\tcable fly low\tlow-to-high cable fly\n'
    'cable\tcable high row\thigh row\n'
    'cable\tcable lift\tlow-to-high cable chop\n'
    'cable\tcable low row\tseated cable row\n'
    'cable\tcable row\tseated cable row\n'
    'cambered-bar\tcambered-bar curl\tbent-bar curl\n'
    'campu\tboard bump campu\tcampus board ladder\n'
    'campu\tboard campu\tcampus board ladder\n'
    'campu\tbump campu\tcampus board ladder\n'
    'campusing\tcampusing\tcampus board ladder\n'
    'candle\tcandle leg raise\tlying leg raise with hip lift\n'
    'captain\tcaptain chair\tsupported knee raise\n'
    'captain\tcaptain chair knee raise\tsupported knee raise\n'
    'captain\tcaptain chair leg raise\tsupported leg raise\n'
    'carry\tbear carry hug\tsandbag carry\n'
    "carry\tbuddy carry\tfireman's carry\n"
    'carry\tcarry down one one up\tmixed carry\n'
    'carry\tcarry high knee\tmarching carry\n'
    'carry\tcarry keg\tsandbag carry\n'
    'carry\tcarry rack\track carry\town\n'
    'carry\tcarry yoke\tyoke carry\town\n'
    "casualty\tcarry casualty\tfireman's carry\n"
    'casualty\tcasualty drag\tdummy drag\n'
    'cervical\tcervical cranio flexion\tchin tuck\n'
    'chain\tbench chain\tbench press with chains\n'
    'chair\tchair curl leg\tbodyweight standing leg curl\n'
    'chair\tchair dip\tbench dip\n'
    'chair\tchair leg lift side\tbodyweight standing hip abduction\n'
    'cheat\tcheat curl\tcheat curl\town\n'
    'cheating\tcheating curl\tcheat curl\n'
    'chest\tband chest fly\tband fly\n'
    'chest\tbar chest\tchest-to-bar pull-up\n'
    'chest\tbroad chest jump pass\tmedicine ball push throw\n'
    'chest\tcable chest fly\tcable fly\n'
    'chest\tchest dip\tdip\n'
    'chest\tchest fly\tdumbbell fly\n'
    'chest\tchest jump pass\tmedicine ball push throw\n'
    'chest\tchest pass\tmedicine ball chest pass\n'
    'chest\tchest pass step\tmedicine ball push throw\n'
    'chest\tchest pass wall\tmedicine ball chest pass\n'
    'chest-supported\tchest-supported curl\tprone incline curl\n'
    'chest-supported\tchest-supported curl\tprone incline curl\town\n'
    'chest-supported\tchest-supported delt fly rear\tchest-supported reverse fly\n'
    'chest-supported\tchest-supported delt raise rear\tchest-supported reverse fly\n'
    'chest-supported\tchest-supported delt rear row\tchest-supported rear-shoulder row\town\n'
    'chest-supported\tchest-supported dumbbell row\tchest-supported dumbbell row\n'
    'chest-supported\tchest-supported dumbbell row\tchest-supported dumbbell row\town\n'
    'chest-supported\tchest-supported dumbbell shrug\tchest-supported shrug\n'
    'chest-supported\tchest-supported elbow out row\tchest-supported rear-shoulder row\n'
    'chest-supported\tchest-supported fly reverse\tchest-supported reverse fly\town\n'
    'chest-supported\tchest-supported i-y-t raise\tI-Y-T raise\n'
    'chest-supported\tchest-supported machine row\tmachine row\n'
    'chest-supported\tchest-supported raise y\tY raise\n'
    'chest-supported\tchest-supported row\tchest-supported dumbbell row\n'
    'chest-supported\tchest-supported row t-bar\tchest-supported T-bar row\town\n'
    'chest-supported\tchest-supported row wide\tchest-supported rear-shoulder row\n'
    'chest-supported\tchest-supported shrug\tchest-supported shrug\town\n'
    'chest-supported\tchest-supported t-bar\tchest-supported T-bar row\n'
    'chin\tchin\tchin-up\n'
    'chin-up\tchin-up\tchin-up\town\n'
    'chin-up\tchin-up jump\tjumping chin-up\n'
    'chin-up\tchin-up lower\tnegative chin-up\n'
    'chin-up\tchin-up ring\tring pull-up\n'
    'chin-up\tchin-up towel\ttowel pull-up\n'
    'chinese\tchinese plank\treverse plank\n'
    'chop\tband chop\tband rotation\n'
    'circle\tball circle\tstability-ball circle plank\n'
    'circle\tball circle plank\tstability-ball circle plank\n'
    'circle\tcircle head\tkettlebell halo\n'
    'circle\tcircle rope\trope outward circles\n'
    'clamshell\tband clamshell\tclamshell\n'
    'clamshell\tclamshell\tclamshell\n'
    'clamshell\tclamshell\tclamshell\town\n'
    'clamshell\tclamshell exercise\tclamshell\n'
    'clamshell\tclamshell exercise reverse\treverse clamshell\n'
    'clamshell\tclamshell reverse\treverse clamshell\n'
    'clamshell\tclamshell reverse\treverse clamshell\town\n'
    'clapping\tclapping push-up\tplyometric push-up\n'
    'clean\tand clean jerk\tclean and jerk\n'
    'clean\tand clean jerk\tclean and jerk\town\n'
    'clean\tblock clean\tblock clean\n'
    'clean\tblock clean\tblock clean\town\n'
    'clean\tblock clean full\tblock clean\n'
    'clean\tblock clean high pull\thang high pull\n'
    'clean\tblock clean pull\thang clean pull\n'
    'clean\tclean\tclean\town\n'
    'clean\tclean full\tclean\n'
    'clean\tclean full hang\thang clean\n'
    'clean\tclean hang\thang clean\n'
    'clean\tclean hang\thang clean\town\n'
    'clean\tclean hang high pull\thang high pull\n'
    'clean\tclean hang pull\thang clean pull\n'
    'clean\tclean hang pull\thang clean pull\town\n'
    'clean\tclean high pull\tclean high pull\town\n'
    'clean\tclean jerk\tclean and jerk\n'
    'clean\tclean pull\tclean pull\town\n'
    'clean\tclean tall\ttall clean\town\n'
    'clean\tclean toe\ttall clean\n'
    'clean-grip\tclean-grip deadlift\tdeadlift\n'
    'clean-grip\tclean-grip front squat\tfront squat\n'
    'clean-grip\tclean-grip high pull\tclean high pull\n'
    'clean-grip\tclean-grip pull\tclean pull\n'
    'climb\tarm climb only rope\trope climb\n'
    'climb\tclimb rope\trope climb\town\n'
    'climber\tclimber stair\tstair climber\town\n'
    'climbing\tclimbing machine\tstair climber\n'
    'climbing\tclimbing machine stair\tstair climber\n'
    'climbing\tclimbing rope\trope climb\n'
    'close-grip\tbarbell bench close-grip\tclose-grip bench press\n'
    'close-grip\tbarbell bench close-grip press\tclose-grip bench press\n'
    'close-grip\tbarbell close-grip curl\tclose-grip barbell curl\town\n'
    'close-grip\tbarbell close-grip incline press\tclose-grip incline bench press\n'
    'close-grip\tbench close-grip\tclose-grip bench press\n'
    'close-grip\tbench close-grip incline\tclose-grip incline bench press\n'
    'close-grip\tbench close-grip incline press\tclose-grip incline bench press\town\n'
    'close-grip\tbench close-grip press\tclose-grip bench press\n'
    'close-grip\tbench close-grip press\tclose-grip bench press\town\n'
    'close-grip\tcable close-grip row\tseated cable row\n'
    'close-grip\tchin-up close-grip\tclose-grip pull-up\n'
    'close-grip\tclose-grip\tclose-grip bench press\n'
    'close-grip\tclose-grip curl\tclose-grip barbell curl\n'
    'close-grip\tclose-grip incline\tclose-grip incline bench press\n'
    'close-grip\tclose-grip incline press\tclose-grip incline bench press\n'
    'close-grip\tclose-grip lat pulldown\tclose-grip lat pulldown\n'
    'close-grip\tclose-grip lat pulldown\tclose-grip lat pulldown\town\n'
    'close-grip\tclose-grip pull-up\tclose-grip pull-up\n'
    'close-grip\tclose-grip pull-up\tclose-grip pull-up\town\n'
    'close-grip\tclose-grip pulldown\tclose-grip lat pulldown\n'
    'close-grip\tclose-grip push-up\tclose-grip push-up\n'
    'close-grip\tclose-grip push-up\tclose-grip push-up\town\n'
    'close-grip\tclose-grip row seated\tseated cable row\n'
    'commando\tcommando plank\tplank up-down\n'
    'commando\tcommando pull-up\tmixed-grip pull-up\n'
    'competition\tbench competition\tpaused bench press\n'
    'competition\tbench competition press\tpaused bench press\n'
    'compression\tcompression lift\tseated straight-leg lift\n'
    'compression\tcompression pike\tseated straight-leg lift\n'
    'concentration\tconcentration curl\tconcentration curl\town\n'
    'concentration\tconcentration curl dumbbell\tconcentration curl\n'
    'concentration\tconcentration curl seated\tconcentration curl\n'
    'concentric\tconcentric curl nordic\tweighted Nordic curl\n'
    'consecutive\tbroad consecutive jump\trepeated broad jump\n'
    'contact\tcontact full twist\tlandmine rotation\n'
    'continuou\tbroad continuou jump\trepeated broad jump\n'
    'continuou\tcontinuou hop\ttriple hop\n'
    'contraction\tcontraction quad static\tquad set\n'
    'conventional\tconventional deadlift\tdeadlift\n'
    'conventional\tconventional pull\tdeadlift\n'
    'converging\tconverging lat pulldown\tplate-loaded pulldown\n'
    'converging\tconverging pulldown\tplate-loaded pulldown\n'
    'copenhagen\tadduction bent-knee copenhagen\tshort-lever Copenhagen adduction\n'
    'copenhagen\tadduction copenhagen\tCopenhagen adduction\town\n'
    'copenhagen\tadduction copenhagen exercise\tCopenhagen adduction\n'
    'copenhagen\tadduction copenhagen half\tshort-lever Copenhagen adduction\n'
    'copenhagen\tadduction copenhagen hip\tCopenhagen adduction\n'
    'copenhagen\tadduction copenhagen raise\tCopenhagen adduction\n'
    'copenhagen\tbent-knee copenhagen\tshort-lever Copenhagen adduction\n'
    'copenhagen\tbent-knee copenhagen plank\tshort-lever Copenhagen side plank\n'
    'copenhagen\tcopenhagen\tCopenhagen adduction\n'
    'copenhagen\tcopenhagen dynamic plank\tCopenhagen adduction\n'
    'copenhagen\tcopenhagen half plank\tshort-lever Copenhagen side plank\n'
    'copenhagen\tcopenhagen hip lift\tCopenhagen adduction\n'
    'copenhagen\tcopenhagen isometric\tCopenhagen side plank\n'
    'copenhagen\tcopenhagen isometric plank\tCopenhagen side plank\n'
    'copenhagen\tcopenhagen knee plank\tshort-lever Copenhagen side plank\n'
    'copenhagen\tcopenhagen knee supported\tshort-lever Copenhagen adduction\n'
    'copenhagen\tcopenhagen plank\tCopenhagen side plank\n'
    'copenhagen\tcopenhagen plank short\tshort-lever Copenhagen side plank\n'
    'copenhagen\tcopenhagen plank side\tCopenhagen side plank\town\n'
    'copenhagen\tcopenhagen raise\tCopenhagen adduction\n'
    'copenhagen\tcopenhagen short\tshort-lever Copenhagen side plank\n'
    'corner\tbar corner row\tT-bar row\n'
    'corner\tcorner press\tlandmine press\n'
    'cossack\tcossack\tCossack squat\n'
    'cossack\tcossack lunge\tCossack squat\n'
    'cossack\tcossack squat\tCossack squat\town\n'
    'counter\tcalf counter\tbodyweight calf raise\n'
    'counter\tcalf counter raise\tbodyweight calf raise\n'
    'counter\tcounter leg raise side\tbodyweight standing hip abduction\n'
    'counter\tcounter squat\tmini squat\n'
    'countermovement\tcountermovement dumbbell jump\tdumbbell squat jump\n'
    'countermovement\tcountermovement jump\tcountermovement jump\n'
    'countermovement\tcountermovement jump\tcountermovement jump\town\n'
    'countermovement\tcountermovement jump non\tsquat jump\n'
    'crank\tarm crank\tarm ergometer\n'
    'crawl\tbaby bear crawl\tbear crawl\n'
    'crawl\tbear crawl\tbear crawl\town\n'
    'crawl\tbear crawl drag\tbear crawl with drag\town\n'
    'crawl\tbear crawl drag sled\tbear-crawl sled drag\town\n'
    'crawl\tbear crawl pull sled\tbear-crawl sled drag\n'
    'crawl\tbear crawl side\tlateral bear crawl\n'
    'crawl\tbear crawl sled\tbear-crawl sled drag\n'
    'crawl\tcrab crawl\tcrab walk\n'
    'cross\tcarry cross\tmixed carry\n'
    'cross-body\tcable cross-body extension\tcross-cable triceps extension\n'
    'cross-body\tcable cross-body extension triceps\tcross-cable triceps extension\n'
    'cross-body\tcarry cross-body\tmixed carry\n'
    'cross-body\tclimber cross-body mountain\tcross-body mountain climber\town\n'
    'cross-body\tcross-body crunch\tbicycle crunch\n'
    'cross-body\tcross-body curl\tcross-body hammer curl\n'
    'cross-body\tcross-body curl hammer\tcross-body hammer curl\town\n'
    'cross-body\tcross-body dumbbell extension\tone-arm lying triceps extension\n'
    'crossover\tcable crossover\tcable fly\n'
    'crossover\tcable crossover high\thigh-to-low cable fly\n'
    'crossover\tcable crossover low\tlow-to-high cable fly\n'
    'crossover\tcable crossover one-arm\tone-arm cable fly\n'
    'crossover\tcable crossover reverse\tcable reverse fly\n'
    'crossover\tcrossover\tcable fly\n'
    'crossover\tcrossover drag sled\tlateral sled drag\n'
    'crossover\tcrossover hop\ttriple hop\n'
    'crossover\tcrossover lunge\tcurtsy lunge\n'
    'crossover\tcrossover step-up\tcrossover step-up\town\n'
    'crunch\tab cable crunch\tcable crunch\n'
    'crunch\tab crunch\tcrunch\n'
    'crunch\tarm crunch long\tlong-arm crunch\town\n'
    'crunch\tball crunch\tstability-ball crunch\n'
    'crunch\tbasic crunch\tcrunch\n'
    'crunch\tcable crunch\tcable crunch\town\n'
    'crunch\tcrunch\tcrunch\town\n'
    'crunch\tcrunch elbow knee\tbicycle crunch\n'
    'crunch\tcrunch floor\tcrunch\n'
    'crunch\tcrunch heel touch\theel touch crunch\town\n'
    'crunch\tcrunch lying side\tside crunch\n'
    'crunch\tcrunch neck\tneck flexion\n'
    'crunch\tcrunch plate\tweighted crunch\n'
    'crunch\tcrunch rope\tcable crunch\n'
    'crunch\tcrunch side\tside crunch\town\n'
    'crunch\tcrunch side side\theel touch crunch\n'
    'crunch\tcrunch toe touch\tcrunch\n'
    'crunch\tcrunch tuck\ttuck-up\n'
    'crush\tcrush grip\thand gripper squeeze\n'
    'crusher\tcable crusher skull\tlying cable triceps extension\n'
    'crusher\tcrusher deep skull\tlying triceps extension behind the head\n'
    'crusher\tcrusher skull\tlying triceps extension\n'
    'csp\tcsp\tCopenhagen side plank\n'
    'curl\t21s curl\tpartial-range barbell curl\n'
    'curl\tball curl leg\tball leg curl\town\n'
    'curl\tband curl\tband curl\n'
    'curl\tband curl\tband curl\town\n'
    'curl\tband curl leg\tband leg curl\n'
    'curl\tband curl leg\tband leg curl\town\n'
    'curl\tcurl\tbarbell curl\n'
    'curl\tcurl leg\tlying leg curl\n'
    'curl-up\tback curl-up hand\tcurl-up\n'
    'curl-up\tcurl-up\tcurl-up\town\n'
    'curl-up\tcurl-up knee one\tcurl-up\n'
    'curtsy\tcurtsy lunge\tcurtsy lunge\n'
    'curtsy\tcurtsy lunge\tcurtsy lunge\town\n'
    'cycle\tarm cycle\tarm ergometer\n'
    'cycle\tcycle hand\tarm ergometer\n'
    'cycle\tcycle long\tkettlebell clean and jerk\n'
    'cycled\tcycled jump split squat\tsplit squat jump\n'
    'cycling\tcycling\tstationary bike\n'
    'cycling\tcycling indoor\tstationary bike\n'
    'cyclist\tcyclist squat\theel-elevated squat\n'
    'dbsp\tdbsp\tseated dumbbell shoulder press\n'
    'dead\tball bug dead\tstability-ball dead bug\n'
    'dead\tband bug dead\tband dead bug\n'
    'dead\tband bug dead\tband dead bug\town\n'
    'dead\tbug dead\tdead bug\town\n'
    'dead\tdead\tdeadlift\n'
    'dead-hang\tdead-hang\tdead hang\town\n'
    'dead-hang\tdead-hang one-arm\tone-arm hang\n'
    'dead-hang\tdead-hang passive\tdead hang\n'
    'dead-hang\tdead-hang towel\ttowel hang\n'
    'dead-start\tbench dead-start\tpin bench press\n'
    'dead-start\tbench dead-start press\tpin bench press\n'
    'dead-start\tdead-start overhead press\tpin overhead press\n'
    'dead-stop\tbarbell dead-stop row\tdead-stop row\n'
    'dead-stop\tdead-stop push-up\thand-release push-up\n'
    'dead-stop\tdead-stop row\tdead-stop row\town\n'
    'dead-stop\tdead-stop squat\tpin squat\n'
    'deadlift\t18in deadlift\track pull\n'
    'deadlift\tback deadlift\tspinal-flexion deadlift\n'
    'deadlift\tback deadlift rounded\tspinal-flexion deadlift\n'
    'deadlift\tbarbell deadlift\tdeadlift\n'
    'deadlift\tbarbell deadlift hack\tbehind-the-back deadlift\n'
    'deadlift\tbarbell deadlift sumo\tsumo deadlift\n'
    'deadlift\tblock deadlift\track pull\n'
    'deadlift\tcable deadlift\tcable Romanian deadlift\n'
    'deadlift\tcar deadlift\ttrap bar deadlift\n'
    'deadlift\tclean deadlift\tdeadlift\n'
    'deadlift\tcrook deadlift elbow\telbow-crook deadlift\n'
    'deadlift\tcrook deadlift elbow\telbow-crook deadlift\town\n'
    'deadlift\tdeadlift\tdeadlift\n'
    'deadlift\tdeadlift\tdeadlift\town\n'
    'deadlift\tdeadlift deficit\tdeficit deadlift\n'
    'deadlift\tdeadlift deficit\tdeficit deadlift\town\n'
    'deadlift\tdeadlift flexion spinal\tspinal-flexion deadlift\town\n'
    'deadlift\tdeadlift floor\tdeadlift\n'
    'deadlift\tdeadlift frame\ttrap bar deadlift\n'
    'deadlift\tdeadlift hack\tbehind-the-back deadlift\n'
    'deadlift\tdeadlift high pull sumo\tkettlebell high pull\n'
    'deadlift\tdeadlift knee paused\tpaused deadlift\n'
    'deadlift\tdeadlift object odd\tsandbag deadlift\n'
    'deadlift\tdeadlift one-arm\tsuitcase deadlift\n'
    'deadlift\tdeadlift one-leg\tsingle-leg Romanian deadlift\n'
    'deadlift\tdeadlift partial\track pull\n'
    'deadlift\tdeadlift paused\tpaused deadlift\n'
    'deadlift\tdeadlift paused\tpaused deadlift\town\n'
    'deadlift\tdeadlift pin\track pull\n'
    'deadlift\tdeadlift plate\tdeficit deadlift\n'
    'deadlift\tdeadlift rack\track pull\n'
    'deadlift\tdeadlift sandbag\tsandbag deadlift\town\n'
    'deadlift\tdeadlift snatch\tsnatch-grip deadlift\n'
    'deadlift\tdeadlift stance wide\tsumo deadlift\n'
    'deadlift\tdeadlift sumo\tsumo deadlift\n'
    'deadlift\tdeadlift sumo\tsumo deadlift\town\n'
    'deadlift\tdeadlift towel\tisometric towel pull\n'
    'deadlift\tdeadlift zercher\telbow-crook deadlift\n'
    'deck\tdeck fly pec\tmachine fly\n'
    'deck\tdeck pec\tmachine fly\n'
    'decline\tbarbell bench decline\tdecline bench press\n'
    'decline\tbarbell bench decline press\tdecline bench press\n'
    'decline\tbarbell decline press\tdecline bench press\n'
    'decline\tbench decline\tdecline bench press\n'
    'decline\tbench decline press\tdecline bench press\town\n'
    'decline\tbench decline sit-up\tdecline sit-up\n'
    'decline\tcrunch decline\tdecline sit-up\n'
    'decline\tcrusher decline skull\tdecline triceps extension\n'
    'decline\tdecline fly\tdecline dumbbell fly\n'
    'decline\tdecline plank\tfeet-elevated plank\n'
    'decline\tdecline plank side\tfeet-elevated side plank\n'
    'decline\tdecline plate sit-up\tweighted decline sit-up\n'
    'decline\tdecline press\tdecline bench press\n'
    'decline\tdecline pu\tdecline push-up\n'
    'decline\tdecline sit-up\tdecline sit-up\town\n'
    'deficit\tback deficit lunge step\tdeficit reverse lunge\n'
    'deficit\tdeficit pu\tdeficit push-up\n'
    'deficit\tdeficit split squat\tfront-foot-elevated split squat\n'
    'density\tdensity hang\tfingertip hang\n'
    'depression\tbar depression shoulder\tscapular dip\n'
    'depression\tdepression machine shoulder\tmachine shoulder depression\town\n'
    'depth\tbox depth jump\tdepth jump\n'
    'depth\tdepth drop\tdrop landing\n'
    'depth\tdepth drop jump\tdepth jump\n'
    'depth\tdepth jump\tdepth jump\town\n'
    'deviation\tdeviation lever wrist\twrist deviation with a lever\town\n'
    'deviation\tdeviation radial\twrist deviation with a lever\n'
    'deviation\tdeviation ulnar\twrist deviation with a lever\n'
    'diagonal\tband diagonal walk\tmonster walk\n'
    'diamond\tdiamond pu\tdiamond push-up\n'
    'dip\tbar dip\tdip\n'
    'dip\tbox dip\tbench dip\n'
    'dip\tdip\tdip\town\n'
    'distance\tdistance hop\tsingle-leg hop\n'
    'distance\tdistance skip\tpower skip\n'
    'doming\tdoming foot\tshort foot\n'
    'donkey\tcalf donkey\tdonkey calf raise\n'
    'donkey\tcalf donkey raise\tdonkey calf raise\town\n'
    'donkey\tdonkey heel raise\tdonkey calf raise\n'
    'donkey\tdonkey kick\tdonkey kick\town\n'
    'door\tdoor row\tdoorway row\n'
    'door-frame\tdoor-frame row\tdoorway row\n'
    'doorway\tdoorway row\tdoorway row\town\n'
    'dorsiflexion\tankle band dorsiflexion\tband dorsiflexion\n'
    'dorsiflexion\tankle dorsiflexion\tband dorsiflexion\n'
    'dorsiflexion\tankle-weight dorsiflexion\tkettlebell dorsiflexion\n'
    'dorsiflexion\tband dorsiflexion\tband dorsiflexion\n'
    'dorsiflexion\tband dorsiflexion\tband dorsiflexion\town\n'
    'dorsiflexion\tcable dorsiflexion\tband dorsiflexion\t\tcable\n'
    'dorsiflexion\tdorsiflexion dumbbell\tkettlebell dorsiflexion\t\tdumbbell\n'
    'dorsiflexion\tdorsiflexion kettlebell\tkettlebell dorsiflexion\town\n'
    'dorsiflexion\tdorsiflexion plate seated\tloaded tibialis raise\t\tplate\n'
    'double\tand clean double press\tdouble kettlebell clean and press\n'
    'double\tbiceps cable curl double\thigh cable curl\n'
    'double\tdouble\tjump rope\n'
    'double\tdouble rope wave\tdouble rope wave\town\n'
    'double\tdouble swing\theavy kettlebell swing\n'
    'down\tcurl down leg one two up\teccentric lying leg curl\n'
    'downward\tcable downward fly\thigh-to-low cable fly\n'
    'drag\tbody drag\tdummy drag\n'
    'drag\tcurl drag\tdrag curl\town\n'
    'dragon\tdragon flag\tbody-length leg lowering\n'
    'dribble\tball dribble wall\toverhead wall dribble\n'
    'dribble\tdribble wall\toverhead wall dribble\n'
    'drive\tand dip drive jerk\tjerk dip\n'
    'drive\tband drive knee\tband hip flexion\n'
    'drive\tcable drive knee\tcable hip flexion\n'
    'drive\tdrive jerk\tjerk dip\n'
    'drive\tdrive sled\tsled push\n'
    'dumbbell\tand burpee clean dumbbell press row\tman-maker\n'
    'dumbbell\tbench decline dumbbell\tdecline dumbbell press\n'
    'dumbbell\tbench decline dumbbell press\tdecline dumbbell press\n'
    'dumbbell\tbench dumbbell\tdumbbell bench press\n'
    'dumbbell\tbench dumbbell flat fly\tdumbbell fly\n'
    'dumbbell\tbench dumbbell flat fly press\tdumbbell fly\n'
    'dumbbell\tbench dumbbell flat press press\tdumbbell bench press\n'
    'dumbbell\tbench dumbbell floor\tdumbbell floor press\n'
    'dumbbell\tbench dumbbell floor press\tdumbbell floor press\n'
    'dumbbell\tbench dumbbell incline\tincline dumbbell press\n'
    'dumbbell\tbench dumbbell incline press\tincline dumbbell press\n'
    'dumbbell\tbench dumbbell one-arm\tone-arm dumbbell bench press\n'
    'dumbbell\tbench dumbbell one-arm press\tone-arm dumbbell bench press\n'
    'dumbbell\tbench dumbbell one-arm press\tone-arm dumbbell bench press\town\n'
    'dumbbell\tbench dumbbell press\tdumbbell bench press\n'
    'dumbbell\tbench dumbbell press\tdumbbell bench press\town\n'
    'dumbbell\tbend dumbbell side\tdumbbell side bend\n'
    'dumbbell\tbend dumbbell side\tdumbbell side bend\town\n'
    'dumbbell\tbiceps curl dumbbell\tdumbbell curl\n'
    'dumbbell\tbird dog dumbbell row\tbird dog row\n'
    'dumbbell\tbug dead dumbbell\tweighted dead bug\n'
    'dumbbell\tburpee double dumbbell snatch\tdevil press\n'
    'dumbbell\tburpee dumbbell snatch\tdevil press\n'
    'dumbbell\tcalf dumbbell\tdumbbell calf raise\n'
    'dumbbell\tcalf dumbbell one\tdumbbell single-leg calf raise\n'
    'dumbbell\tcalf dumbbell one raise\tdumbbell single-leg calf raise\n'
    'dumbbell\tcalf dumbbell one-leg\tdumbbell single-leg calf raise\n'
    'dumbbell\tcalf dumbbell one-leg raise\tdumbbell single-leg calf raise\n'
    'dumbbell\tcalf dumbbell one-leg raise\tdumbbell single-leg calf raise\town\n'
    'dumbbell\tcalf dumbbell raise\tdumbbell calf raise\n'
    'dumbbell\tcalf dumbbell raise\tdumbbell calf raise\town\n'
    'dumbbell\tcalf dumbbell raise seated\tdumbbell seated calf raise\n'
    'dumbbell\tcalf dumbbell raise seated\tdumbbell seated calf raise\town\n'
    'dumbbell\tcalf dumbbell seated\tdumbbell seated calf raise\n'
    "dumbbell\tcarry dumbbell\tfarmer's carry\n"
    "dumbbell\tcarry dumbbell farmer\tfarmer's carry\n"
    'dumbbell\tchest dumbbell fly\tdumbbell fly\n'
    'dumbbell\tchest dumbbell press\tdumbbell bench press\n'
    'dumbbell\tchop dumbbell\tdumbbell woodchop\n'
    'dumbbell\tcircu dumbbell\tone-arm dumbbell overhead press\n'
    'dumbbell\tcircu dumbbell press\tone-arm dumbbell overhead press\n'
    'dumbbell\tclean dumbbell\tdumbbell hang clean\n'
    'dumbbell\tclean dumbbell hang\tdumbbell hang clean\n'
    'dumbbell\tclean dumbbell hang\tdumbbell hang clean\town\n'
    'dumbbell\tclean dumbbell power\tdumbbell hang clean\n'
    'dumbbell\tcrunch dumbbell\tweighted crunch\t\tdumbbell\n'
    'dumbbell\tcrusher dumbbell skull\tlying dumbbell triceps extension\n'
    'dumbbell\tcurl dumbbell\tdumbbell curl\n'
    'dumbbell\tcurl dumbbell\tdumbbell curl\town\n'
    'dumbbell\tcurl dumbbell hammer\thammer curl\n'
    'dumbbell\tcurl dumbbell hammer seated\tseated hammer curl\n'
    'dumbbell\tcurl dumbbell incline\tincline dumbbell curl\n'
    'dumbbell\tcurl dumbbell incline\tincline dumbbell curl\town\n'
    'dumbbell\tcurl dumbbell leg\tdumbbell leg curl\n'
    'dumbbell\tcurl dumbbell leg\tdumbbell leg curl\town\n'
    'dumbbell\tcurl dumbbell leg lying\tdumbbell leg curl\n'
    'dumbbell\tcurl dumbbell leg prone\tdumbbell leg curl\n'
    'dumbbell\tcurl dumbbell reverse\treverse dumbbell curl\n'
    'dumbbell\tcurl dumbbell reverse\treverse dumbbell curl\town\n'
    'dumbbell\tcurl dumbbell reverse wrist\treverse wrist curl\n'
    'dumbbell\tcurl dumbbell seated\tseated dumbbell curl\n'
    'dumbbell\tcurl dumbbell seated\tseated dumbbell curl\town\n'
    'dumbbell\tcurl dumbbell wrist\twrist curl\t\tdumbbell\n'
    'dumbbell\tdeadlift dumbbell\tdumbbell deadlift\n'
    'dumbbell\tdeadlift dumbbell\tdumbbell deadlift\town\n'
    'dumbbell\tdeadlift dumbbell sumo\tkettlebell sumo deadlift\t\tdumbbell\n'
    'dumbbell\tdeadlift dumbbell two\tdumbbell deadlift\n'
    'dumbbell\tdecline dumbbell fly\tdecline dumbbell fly\n'
    'dumbbell\tdecline dumbbell fly\tdecline dumbbell fly\town\n'
    'dumbbell\tdecline dumbbell press\tdecline dumbbell press\n'
    'dumbbell\tdecline dumbbell press\tdecline dumbbell press\town\n'
    'dumbbell\tdelt dumbbell rear row\tchest-supported rear-shoulder row\n'
    'dumbbell\tdouble dumbbell row\tbent-over dumbbell row\n'
    'dumbbell\tdrag dumbbell\tplank drag\n'
    'dumbbell\tdumbbell floor fly\tdumbbell floor fly\n'
    'dumbbell\tdumbbell floor fly\tdumbbell floor fly\town\n'
    'dumbbell\tdumbbell floor press\tdumbbell floor press\n'
    'dumbbell\tdumbbell floor press\tdumbbell floor press\town\n'
    'dumbbell\tdumbbell fly\tdumbbell fly\n'
    'dumbbell\tdumbbell fly\tdumbbell fly\town\n'
    'dumbbell\tdumbbell fly incline\tincline dumbbell fly\n'
    'dumbbell\tdumbbell fly incline\tincline dumbbell fly\town\n'
    'dumbbell\tdumbbell fly reverse\tdumbbell reverse fly\n'
    'dumbbell\tdumbbell fly reverse\tdumbbell reverse fly\town\n'
    'dumbbell\tdumbbell forward lunge\tforward lunge\n'
    'dumbbell\tdumbbell front raise\tfront raise\n'
    'dumbbell\tdumbbell front squat\tkettlebell front squat\t\tdumbbell\n'
    'dumbbell\tdumbbell get-up\tTurkish get-up\t\tdumbbell\n'
    'dumbbell\tdumbbell goblet squat\tgoblet squat\n'
    'dumbbell\tdumbbell hang knee raise\tweighted hanging knee raise\n'
    'dumbbell\tdumbbell hang snatch\tdumbbell snatch\n'
    'dumbbell\tdumbbell hip thrust\tdumbbell hip thrust\n'
    'dumbbell\tdumbbell hip thrust\tdumbbell hip thrust\town\n'
    'dumbbell\tdumbbell incline press\tincline dumbbell press\n'
    'dumbbell\tdumbbell incline press\tincline dumbbell press\town\n'
    'dumbbell\tdumbbell incline row\tchest-supported dumbbell row\n'
    'dumbbell\tdumbbell incline shrug\tchest-supported shrug\n'
    'dumbbell\tdumbbell jump squat\tdumbbell squat jump\n'
    'dumbbell\tdumbbell jump squat\tdumbbell squat jump\town\n'
    'dumbbell\tdumbbell lateral lunge\tlateral lunge\n'
    'dumbbell\tdumbbell lateral one-arm raise\tone-arm dumbbell lateral raise\n'
    'dumbbell\tdumbbell lateral one-arm raise\tone-arm dumbbell lateral raise\town\n'
    'dumbbell\tdumbbell lateral raise\tlateral raise\n'
    'dumbbell\tdumbbell lateral raise seated\tseated lateral raise\n'
    'dumbbell\tdumbbell lateral step-up\tlateral step-up\n'
    'dumbbell\tdumbbell lunge\tforward lunge\n'
    'dumbbell\tdumbbell lunge reverse\treverse lunge\n'
    'dumbbell\tdumbbell lunge static\tdumbbell split squat\n'
    'dumbbell\tdumbbell lunge walking\twalking lunge\n'
    'dumbbell\tdumbbell maker man\tman-maker\n'
    'dumbbell\tdumbbell one-arm press\tone-arm dumbbell bench press\n'
    'dumbbell\tdumbbell one-arm press\tone-arm dumbbell overhead press\n'
    'dumbbell\tdumbbell one-arm row\tone-arm dumbbell row\n'
    'dumbbell\tdumbbell one-arm row\tone-arm dumbbell row\town\n'
    'dumbbell\tdumbbell one-arm snatch\tdumbbell snatch\n'
    'dumbbell\tdumbbell plank row\tplank row\n'
    'dumbbell\tdumbbell plank side\tweighted side plank\n'
    'dumbbell\tdumbbell point row three\tone-arm dumbbell row\n'
    'dumbbell\tdumbbell press\tdumbbell bench press\n'
    'dumbbell\tdumbbell press push\tdumbbell push press\n'
    'dumbbell\tdumbbell press push\tdumbbell push press\town\n'
    'dumbbell\tdumbbell press seated\tseated dumbbell shoulder press\n'
    'dumbbell\tdumbbell press squat\tdumbbell thruster\n'
    'dumbbell\tdumbbell press squeeze\tdumbbell squeeze press\n'
    'dumbbell\tdumbbell press squeeze\tdumbbell squeeze press\town\n'
    'dumbbell\tdumbbell raise seated soleu\tdumbbell seated calf raise\n'
    'dumbbell\tdumbbell raise side\tlateral raise\n'
    'dumbbell\tdumbbell raise y\tY raise\n'
    'dumbbell\tdumbbell row\tone-arm dumbbell row\n'
    'dumbbell\tdumbbell row two-arm\tbent-over dumbbell row\n'
    'dumbbell\tdumbbell row upright\tdumbbell upright row\n'
    'dumbbell\tdumbbell row upright\tdumbbell upright row\town\n'
    'dumbbell\tdumbbell shrug\tdumbbell shrug\n'
    'dumbbell\tdumbbell shrug\tdumbbell shrug\town\n'
    'dumbbell\tdumbbell snatch\tdumbbell snatch\n'
    'dumbbell\tdumbbell snatch\tdumbbell snatch\town\n'
    'dumbbell\tdumbbell split squat\tdumbbell split squat\n'
    'dumbbell\tdumbbell split squat\tdumbbell split squat\town\n'
    'dumbbell\tdumbbell squat\tdumbbell squat\n'
    'dumbbell\tdumbbell squat\tdumbbell squat\town\n'
    'dumbbell\tdumbbell squat sumo\tsumo squat\n'
    'dumbbell\tdumbbell squat two\tdumbbell squat\n'
    'dumbbell\tdumbbell step-up\tstep-up\n'
    'dumbbell\tdumbbell swing\tkettlebell swing\t\tdumbbell\n'
    'dummy\tdrag dummy\tdummy drag\town\n'
    'dying\tbug dying\tdead bug\n'
    'dynamic\tbench dynamic effort\tspeed bench press\n'
    'dynamic\tbench dynamic effort press\tspeed bench press\n'
    'eccentric\tbent-knee calf eccentric\tbent-knee heel drop\n'
    'eccentric\tbent-knee calf eccentric raise\tbent-knee heel drop\n'
    'eccentric\tbent-knee drop eccentric heel\tbent-knee heel drop\n'
    'eccentric\tcalf eccentric\theel drop\n'
    'eccentric\tcalf eccentric raise\theel drop\n'
    'eccentric\tchin-up eccentric\tnegative chin-up\n'
    'eccentric\tcurl eccentric\teccentric curl\town\n'
    'eccentric\tcurl eccentric leg\teccentric lying leg curl\n'
    'eccentric\tcurl eccentric leg lying\teccentric lying leg curl\n'
    'eccentric\tcurl eccentric leg lying\teccentric lying leg curl\town\n'
    'eccentric\tcurl eccentric leg overload\teccentric lying leg curl\n'
    'eccentric\tcurl eccentric leg overload seated\teccentric seated leg curl\n'
    'eccentric\tcurl eccentric leg seated\teccentric seated leg curl\n'
    'eccentric\tcurl eccentric leg seated\teccentric seated leg curl\town\n'
    'eccentric\tcurl eccentric leg slider\teccentric slider leg curl\n'
    'eccentric\tcurl eccentric leg slider\teccentric slider leg curl\town\n'
    'eccentric\tcurl eccentric nordic\tlowering-only Nordic curl\n'
    'eccentric\tcurl eccentric reverse wrist\teccentric wrist extension\n'
    'eccentric\tdip eccentric\tnegative dip\n'
    'eccentric\tdrop eccentric heel\theel drop\n'
    'eccentric\tdrop eccentric soleu\tbent-knee heel drop\n'
    'eccentric\teccentric flexion hip\thip flexor lowering\n'
    'eccentric\teccentric flexor hip kneeling\thip flexor lowering\n'
    'eccentric\teccentric heel lowering\theel drop\n'
    'eccentric\teccentric leg raise\tleg lowering\n'
    'eccentric\teccentric pull-up\tnegative pull-up\n'
    'eccentric\teccentric push-up\ttempo push-up\n'
    'elbow\tback curl elbow\tdrag curl\n'
    'elbow\tband catch elbow high\tband swim pull\n'
    'elbow\tcarry crook elbow\tfront-loaded bar carry\n'
    'elbow\tcatch elbow high\tband swim pull\n'
    'elevated\tbridge elevated\tfeet-elevated glute bridge\n'
    'elevated\tdouble elevated split squat\trear-foot-elevated split squat\n'
    'elevated\televated pike push-up\tfeet-elevated pike push-up\n'
    'elevated\televated plank\tincline plank\n'
    'elevated\televated push-up\tincline push-up\n'
    'elevated\televated split squat two-leg\trear-foot-elevated split squat\n'
    'elliptical\telliptical\tcross trainer\n'
    'elliptical\telliptical machine\tcross trainer\n'
    'elliptical\telliptical trainer\tcross trainer\n'
    'ergometer\tarm ergometer\tarm ergometer\town\n'
    'ergometer\tbike ergometer\tstationary bike\n'
    'ergometer\tbike ergometer fan\tfan bike\n'
    'ergometer\tbody ergometer upper\tarm ergometer\n'
    'ergometer\tcanoe ergometer\tkayak ergometer\n'
    'ergometer\tcurl ergometer leg row\trowing-seat leg curl\n'
    'ergometer\tdouble ergometer pole\tski ergometer\n'
    'ergometer\tergometer hand\tarm ergometer\n'
    'ergometer\tergometer kayak\tkayak ergometer\town\n'
    'ergometer\tergometer paddle\tkayak ergometer\n'
    'ergometer\tergometer paddling\tkayak ergometer\n'
    'ergometer\tergometer row\trowing ergometer\n'
    'ergometer\tergometer row\trowing ergometer\town\n'
    'ergometer\tergometer ski\tski ergometer\town\n'
    'eversion\tankle band eversion\tband ankle eversion\n'
    'eversion\tankle band eversion\tband ankle eversion\town\n'
    'eversion\tankle cable eversion\tband ankle eversion\t\tcable\n'
    'eversion\tankle eversion\tband ankle eversion\n'
    'eversion\tankle eversion seated\tband ankle eversion\n'
    'eversion\tband eversion\tband ankle eversion\n'
    'exercise\tbike exercise\tstationary bike\n'
    'exercise\texercise foot short\tshort foot\n'
    'explosive\tbarbell explosive row\tdead-stop row\n'
    'explosive\texplosive press sled\tsled chest press\n'
    'explosive\texplosive push-up\tplyometric push-up\n'
    'explosive\texplosive shrug\tpower shrug\n'
    'explosive\texplosive step-up\texplosive step-up\town\n'
    'extended\textended plank\tlong-lever plank\n'
    'extension\t45deg back extension\tback extension\n'
    'extension\t45deg extension hip\tback extension\n'
    'extension\t90deg back extension\thorizontal back extension\n'
    'extension\tarc extension leg short\tshort-arc leg extension\n'
    'extension\tarc extension leg short\tshort-arc leg extension\town\n'
    'extension\tback ball extension\tstability-ball back extension\n'
    'extension\tback barbell extension\tweighted back extension\t\tbarbell\n'
    'extension\tback chair extension roman\thorizontal back extension\n'
    'extension\tback extension\tback extension\town\n'
    'extension\tback extension floor\tprone back extension\n'
    'extension\tback extension incline\tback extension\n'
    'extension\tback extension lateral\tside bend on the back extension bench\n'
    'extension\tback extension lean leg\treclined leg extension\n'
    'extension\tback extension leaned leg\treclined leg extension\n'
    'extension\tback extension machine\tmachine back extension\n'
    'extension\tback extension machine\tmachine back extension\town\n'
    'extension\tback extension machine seated\tmachine back extension\n'
    'extension\tback extension one-leg\tsingle-leg back extension\n'
    'extension\tback extension one-leg\tsingle-leg back extension\town\n'
    'extension\tback extension plate\tweighted back extension\n'
    'extension\tback extension prone\tprone back extension\n'
    'extension\tback extension prone\tprone back extension\town\n'
    'extension\tback extension reverse\treverse hyperextension\n'
    'extension\tback extension roll\trolling dumbbell extension\n'
    'extension\tback extension roll triceps\trolling dumbbell extension\n'
    'extension\tback extension seated\tmachine back extension\n'
    'extension\tback extension weighted\tweighted back extension\n'
    'extension\tback extension weighted\tweighted back extension\town\n'
    'extension\tband extension finger\tfinger extension with band\n'
    'extension\tband extension finger\tfinger extension with band\town\n'
    'extension\tband extension finger opening\tfinger extension with band\n'
    'extension\tband extension finger rubber\tfinger extension with band\n'
    'extension\tband extension hip\tband kickback\n'
    'extension\tband extension hip standing\tband kickback\n'
    'extension\tband extension knee terminal\tterminal knee extension\n'
    'extension\tband extension leg\tband leg extension\n'
    'extension\tband extension leg\tband leg extension\town\n'
    'extension\tband extension leg seated\tband leg extension\n'
    'extension\tband extension neck\tband neck extension\n'
    'extension\tband extension neck\tband neck extension\town\n'
    'extension\tband extension overhead\tband overhead triceps extension\n'
    'extension\tband extension overhead triceps\tband overhead triceps extension\town\n'
    'extension\tband extension triceps\tband pushdown\n'
    'extension\tbar extension triceps\tbodyweight triceps extension\n'
    'extension\tbarbell extension incline triceps\tincline triceps extension\n'
    'extension\tbarbell extension lying triceps\tlying triceps extension\n'
    'extension\tbarbell extension overhead\toverhead barbell triceps extension\n'
    'extension\tbarbell extension overhead triceps\toverhead barbell triceps extension\town\n'
    'extension\tbarbell extension standing triceps\toverhead barbell triceps extension\n'
    'extension\tbench bend extension side supine\tside bend on the back extension bench\town\n'
    'extension\tbench extension hip one-leg\tsingle-leg back extension\n'
    'extension\tbent-bar extension overhead\toverhead barbell triceps extension\n'
    'extension\tbent-over extension triceps\ttriceps kickback\n'
    'extension\tcable cross extension\tcross-cable triceps extension\n'
    'extension\tcable cross extension triceps\tcross-cable triceps extension\town\n'
    'extension\tcable extension hip\tcable hip extension\town\n'
    'extension\tcable extension knee terminal\tterminal knee extension\t\tcable\n'
    'extension\tcable extension leg\tcable leg extension\n'
    'extension\tcable extension leg\tcable leg extension\town\n'
    'extension\tcable extension leg standing\tcable leg extension\n'
    'extension\tcable extension lying\tlying cable triceps extension\n'
    'extension\tcable extension lying triceps\tlying cable triceps extension\town\n'
    'extension\tcable extension one-arm overhead\tone-arm overhead cable extension\n'
    'extension\tcable extension one-arm overhead\tone-arm overhead cable extension\town\n'
    'extension\tcable extension one-arm overhead triceps\tone-arm overhead cable extension\n'
    'extension\tcable extension overhead\toverhead cable triceps extension\n'
    'extension\tcable extension overhead triceps\toverhead cable triceps extension\town\n'
    'extension\tchair extension hip\tbodyweight standing hip extension\n'
    'extension\tchair extension hip roman\thorizontal back extension\n'
    'extension\tcounter extension hip\tbodyweight standing hip extension\n'
    'extension\tcross extension face\tone-arm lying triceps extension\n'
    'extension\tdead-stop extension triceps\tlying triceps extension behind the head\n'
    'extension\tdecline extension triceps\tdecline triceps extension\town\n'
    'extension\tdumbbell extension incline triceps\tincline triceps extension\t\tdumbbell\n'
    'extension\tdumbbell extension lying\tlying dumbbell triceps extension\n'
    'extension\tdumbbell extension lying triceps\tlying dumbbell triceps extension\town\n'
    'extension\tdumbbell extension one-arm overhead\tone-arm overhead triceps extension\n'
    'extension\tdumbbell extension one-arm triceps\tone-arm overhead triceps extension\n'
    'extension\tdumbbell extension overhead\toverhead dumbbell triceps extension\n'
    'extension\tdumbbell extension overhead triceps\toverhead dumbbell triceps extension\n'
    'extension\tdumbbell extension overhead triceps\toverhead dumbbell triceps extension\town\n'
    'extension\tdumbbell extension rolling\trolling dumbbell extension\town\n'
    'extension\tdumbbell extension seated triceps\toverhead dumbbell triceps extension\n'
    'extension\tdumbbell extension triceps\tlying dumbbell triceps extension\n'
    'extension\teccentric extension wrist\teccentric wrist extension\town\n'
    'extension\telbow extension out\telbows-out triceps extension\n'
    'extension\telbow extension out triceps\telbows-out triceps extension\town\n'
    'extension\textension flared triceps\telbows-out triceps extension\n'
    'extension\textension four-way machine neck\tmachine neck extension\n'
    'extension\textension hand neck resisted\tisometric neck extension\n'
    'extension\textension harness head\tharness neck extension\n'
    'extension\textension harness neck\tharness neck extension\n'
    'extension\textension harness neck\tharness neck extension\town\n'
    'extension\textension hip lying\tprone hip extension\n'
    'extension\textension hip machine\tmachine glute kickback\n'
    'extension\textension hip multi\tcable hip extension\n'
    'extension\textension hip prone\tprone hip extension\town\n'
    'extension\textension hip rail\tbodyweight standing hip extension\n'
    'extension\textension hip sled walk\tsled hip extension walk\town\n'
    'extension\textension hip standing\tcable hip extension\n'
    'extension\textension incline triceps\tincline triceps extension\town\n'
    'extension\textension knee terminal\tterminal knee extension\n'
    'extension\textension knee terminal\tterminal knee extension\town\n'
    'extension\textension leg\tleg extension\n'
    'extension\textension leg\tleg extension\town\n'
    'extension\textension leg machine\tleg extension\n'
    'extension\textension leg natural\treverse Nordic curl\n'
    'extension\textension leg one-leg\tsingle-leg leg extension\n'
    'extension\textension leg one-leg\tsingle-leg leg extension\town\n'
    'extension\textension leg one-side\tsingle-leg leg extension\n'
    'extension\textension leg reclined\treclined leg extension\n'
    'extension\textension leg reclined\treclined leg extension\town\n'
    'extension\textension leg roll\tshort-arc leg extension\n'
    'extension\textension leg seated\tleg extension\n'
    'extension\textension lowering slow wrist\teccentric wrist extension\n'
    'extension\textension lowering wrist\teccentric wrist extension\n'
    'extension\textension lumbar machine\tmachine back extension\n'
    'extension\textension lying\tlying triceps extension\n'
    'extension\textension lying neck\tneck extension\n'
    'extension\textension lying one-arm triceps\tone-arm lying triceps extension\town\n'
    'extension\textension lying triceps\tlying triceps extension\town\n'
    'extension\textension machine neck\tmachine neck extension\n'
    'extension\textension machine neck\tmachine neck extension\town\n'
    'extension\textension machine overhead triceps\tmachine overhead triceps extension\town\n'
    'extension\textension machine triceps\tmachine triceps extension\n'
    'extension\textension machine triceps\tmachine triceps extension\town\n'
    'extension\textension manual neck\tisometric neck extension\n'
    'extension\textension neck\tneck extension\town\n'
    'extension\textension neck plate\tneck extension\n'
    'extension\textension neck prone\tneck extension\n'
    'extension\textension neck weighted\tneck extension\n'
    'extension\textension one-arm overhead\tone-arm overhead triceps extension\n'
    'extension\textension one-arm overhead triceps\tone-arm overhead triceps extension\n'
    'extension\textension one-arm overhead triceps\tone-arm overhead triceps extension\town\n'
    'extension\textension one-arm triceps\tone-arm cable pushdown\n'
    'extension\textension overhead rope\toverhead cable triceps extension\n'
    'extension\textension overhead seated triceps\toverhead dumbbell triceps extension\n'
    'extension\textension overhead sled\tsled triceps extension\n'
    'extension\textension overhead triceps\toverhead cable triceps extension\n'
    'extension\textension overhead two-arm\toverhead dumbbell triceps extension\n'
    'extension\textension prone\tprone back extension\n'
    'extension\textension ring triceps\tsuspension triceps extension\n'
    'extension\textension sled strap triceps\tsled triceps extension\n'
    'extension\textension sled triceps\tsled triceps extension\town\n'
    'extension\textension triceps\tcable pushdown\n'
    'extension\textension wrist\treverse wrist curl\n'
    'facing\taway cable curl facing\tbehind-the-body cable curl\n'
    'fallout\tfallout\tsuspension fallout\n'
    'fallout\tfallout ring\tsuspension fallout\n'
    "farmer\tcarry farmer\tfarmer's carry\town\n"
    "farmer\tcarry farmer towel\ttowel farmer's carry\town\n"
    "farmer\tfarmer\tfarmer's carry\n"
    'farmer\tfarmer march\tmarching carry\n'
    'farmer\tfarmer toe walk\ttoe walk\n'
    "farmer\tfarmer walk\tfarmer's carry\n"
    'feet-up\tbench feet-up\tfeet-up bench press\n'
    'feet-up\tbench feet-up press\tfeet-up bench press\n'
    'feet-up\tbench feet-up press\tfeet-up bench press\town\n'
    'finger\tband finger open\tfinger extension with band\n'
    'finger\tcurl finger\tfinger curl\town\n'
    'finger\tfinger hang\tfingertip hang\n'
    'finger\tfinger open\tfinger extension with band\n'
    'finger\tfinger roll\tfinger curl\n'
    'finger\tfinger roll up\tfinger curl\n'
    'fingerboard\tdensity fingerboard hang\tfingertip hang\n'
    'fingerboard\tfingerboard hang\tfingertip hang\n'
    'fingerboard\tfingerboard repeater\tfingertip hang\n'
    'fingertip\tfingertip floor lift\tedge lift\n'
    'fingertip\tfingertip hang\tfingertip hang\town\n'
    "fireman\tcarry fireman\tfireman's carry\town\n"
    "fireman\tcarry fireman lift\tfireman's carry\n"
    'flat\tflat fly\tdumbbell fly\n'
    'flexed\tarm flexed hang\tchin-up hold\n'
    'flexible\tbar flexible twist\teccentric wrist extension\n'
    'flexion\tband flexion hip\tband hip flexion\n'
    'flexion\tband flexion hip\tband hip flexion\town\n'
    'flexion\tband flexion neck\tband neck flexion\n'
    'flexion\tband flexion neck\tband neck flexion\town\n'
    'flexion\tcable flexion hip\tcable hip flexion\town\n'
    'flexion\tcable flexion hip lying\tlying cable knee drive\n'
    'flexion\tflexion hip multi\tmachine hip flexion\n'
    'flexion\tflexion hip seated\tseated march\n'
    'flexion\tflexion knee\tlying leg curl\n'
    'flexion\tflexion knee seated\tseated leg curl\n'
    'flexion\tflexion lying neck\tneck flexion\n'
    'flexion\tflexion manual neck\tisometric neck flexion\n'
    'flexion\tflexion neck\tneck flexion\town\n'
    'flexion\tflexion neck plate\tneck flexion\n'
    'flexion\tflexion neck supine\tneck flexion\n'
    'flexor\tband flexor hip march\tband hip flexion\n'
    'floor\tcable curl floor\tlying cable curl\n'
    'floor\tclean floor\tclean\n'
    'floor\tclean floor pull\tclean pull\n'
    'floor\tfloor fly\tdumbbell floor fly\n'
    'floor\tfloor high pull\tclean high pull\n'
    'floor\tfloor pike up\tV-up\n'
    'floor\tfloor row\tdead-stop row\n'
    'flutter\tflutter kick\tflutter kick\town\n'
    'focused\tfocused leg press quad\tlow-foot leg press\n'
    'foot\tdome foot\tshort foot\n'
    'foot-elevated\tbench dip foot-elevated\tbench dip\n'
    'foot-elevated\tbench foot-elevated\tbench press\n'
    'foot-elevated\tbench foot-elevated press\tbench press\n'
    'foot-elevated\tbridge foot-elevated\tfeet-elevated glute bridge\n'
    'foot-elevated\tbridge foot-elevated glute\tfeet-elevated glute bridge\town\n'
    'foot-elevated\tbridge foot-elevated hamstring\tlong-lever bridge\n'
    'foot-elevated\tfoot-elevated handstand isometric\tpike hold\n'
    'foot-elevated\tfoot-elevated inverted row\tfeet-elevated inverted row\town\n'
    'foot-elevated\tfoot-elevated pike pu\tfeet-elevated pike push-up\n'
    'foot-elevated\tfoot-elevated pike push-up\tfeet-elevated pike push-up\town\n'
    'foot-elevated\tfoot-elevated plank\tfeet-elevated plank\town\n'
    'foot-elevated\tfoot-elevated plank side\tfeet-elevated side plank\town\n'
    'foot-elevated\tfoot-elevated push-up\tdecline push-up\n'
    'foot-elevated\tfoot-elevated push-up ring\tring push-up\n'
    'foot-elevated\tfoot-elevated push-up scapular\tfeet-elevated scapular push-up\town\n'
    'foot-elevated\tfoot-elevated push-up suspension\tsuspension push-up\n'
    'foot-elevated\tfoot-elevated ring row\tsuspension row\n'
    'foot-elevated\tfoot-elevated row suspension\tsuspension row\n'
    'football\tfootball throw\tmedicine ball overhead throw\n'
    'forearm\tcable curl forearm\tcable wrist curl\n'
    'forearm\tcurl forearm\twrist curl\n'
    'forearm\tforearm plank\tplank\n'
    'forearm\tforearm plank side\tside plank\n'
    'forearm\tforearm roller\twrist roller\n'
    'forearm\tforearm slide wall\twall slide\n'
    'forehead\tbridge forehead\tfront neck bridge\n'
    'forward\tband forward walk\tmonster walk\n'
    'forward\tbarbell forward lunge\tbarbell lunge\n'
    'forward\tbear crawl forward\tbear crawl\n'
    'forward\tcurl forward lean leg\tleaning seated leg curl\n'
    'forward\tcurl forward lean leg seated\tleaning seated leg curl\n'
    'forward\tdrag forward sled\tsled drag\n'
    'forward\tforward hop\tsingle-leg hop\n'
    'forward\tforward lunge\tforward lunge\town\n'
    'forward\tforward pull sled\tsled drag\n'
    'forward\tforward scoop throw\tforward scoop throw\town\n'
    'forward\tforward toss\tforward scoop throw\n'
    'four-way\tback four-way neck\tmachine neck extension\n'
    'four-way\tbend four-way machine neck side\tmachine neck side bend\n'
    'four-way\tflexion four-way lateral machine neck\tmachine neck side bend\n'
    'four-way\tflexion four-way machine neck\tmachine neck flexion\n'
    'four-way\tfour-way front neck\tmachine neck flexion\n'
    'four-way\tfour-way neck\tmachine neck flexion\n'
    'four-way\tfour-way neck side\tmachine neck side bend\n'
    'frame\tcarry frame\ttrap bar carry\n'
    'frame\tcarry frame yoke\tyoke carry\n'
    'freestyle\tband freestyle pull\tband swim pull\n'
    'french\tcable french press\toverhead cable triceps extension\n'
    'french\tfrench press\toverhead dumbbell triceps extension\n'
    'frenchy\tfrenchy\tpull-up with stops\n'
    'from-mid-thigh\tclean from-mid-thigh\thang clean\n'
    'from-mid-thigh\tclean from-mid-thigh hang power\thang power clean\n'
    'from-mid-thigh\tclean from-mid-thigh power\thang power clean\n'
    'from-mid-thigh\tfrom-mid-thigh hang power snatch\thang power snatch\n'
    'from-mid-thigh\tfrom-mid-thigh power snatch\thang power snatch\n'
    'from-mid-thigh\tfrom-mid-thigh snatch\thang snatch\n'
    'front-foot-elevated\tfront-foot-elevated rear-foot-elevated split squat\trear-foot-elevated split squat\n'
    'front-foot-elevated\tfront-foot-elevated split squat\tfront-foot-elevated split squat\n'
    'front-foot-elevated\tfront-foot-elevated split squat\tfront-foot-elevated split squat\town\n'
    'front-rack\tbarbell front-rack lunge\tfront-rack reverse lunge\n'
    'front-rack\tcarry front-rack\track carry\n'
    'front-rack\tcarry front-rack one-arm\tone-arm rack carry\n'
    'front-rack\tdumbbell front-rack squat\tkettlebell front squat\t\tdumbbell\n'
    'front-rack\tfront-rack lunge\tfront-rack reverse lunge\n'
    'front-rack\tfront-rack lunge reverse\tfront-rack reverse lunge\town\n'
    'front-rack\tfront-rack lunge walking\tbarbell walking lunge\n'
    'front-rack\tfront-rack split squat\tbarbell split squat\n'
    'front-rack\tfront-rack squat\tfront squat\n'
    'front-rack\tfront-rack step-up\tbarbell step-up\n'
    'full\t90 can full\tscaption raise\n'
    'full\tcan full\tscaption raise\n'
    'gathering\tgathering towel\ttowel scrunch\n'
    'get-up\telbow get-up\thalf get-up\n'
    'get-up\tget-up\tTurkish get-up\n'
    'get-up\tget-up half\thalf get-up\town\n'
    'get-up\tget-up hand\thalf get-up\n'
    'glute-ham\tassisted band glute-ham raise\tassisted glute-ham raise\n'
    'glute-ham\tassisted glute-ham raise\tassisted glute-ham raise\n'
    'glute-ham\tassisted glute-ham raise\tassisted glute-ham raise\town\n'
    'glute-ham\tbench glute-ham raise\tglute-ham raise\n'
    'glute-ham\tdeveloper glute-ham raise\tglute-ham raise\n'
    'glute-ham\tglute-ham\tglute-ham raise\n'
    'glute-ham\tglute-ham man poor raise\tNordic curl\n'
    'glute-ham\tglute-ham plate raise\tweighted glute-ham raise\n'
    'glute-ham\tglute-ham raise\tglute-ham raise\n'
    'glute-ham\tglute-ham raise\tglute-ham raise\town\n'
    'glute-ham\tglute-ham raise weighted\tweighted glute-ham raise\n'
    'glute-ham\tglute-ham raise weighted\tweighted glute-ham raise\town\n'
    'glute-ham-bench\tback extension glute-ham-bench\thorizontal back extension\n'
    'glute-ham-bench\tback extension glute-ham-bench isometric\tback extension hold\n'
    'glute-ham-bench\textension glute-ham-bench hip\thorizontal back extension\n'
    'glute-ham-bench\tglute-ham-bench raise\tglute-ham raise\n'
    'glute-ham-bench\tglute-ham-bench sit-up\tglute-ham bench sit-up\n'
    'glute-ham-bench\tglute-ham-bench sit-up\tglute-ham bench sit-up\town\n'
    'goblet\tcarry goblet\tgoblet carry\town\n'
    'goblet\tcurl goblet\tkettlebell curl\n'
    'goblet\tgoblet jump squat\tdumbbell squat jump\n'
    'goblet\tgoblet lunge\tforward lunge\n'
    'goblet\tgoblet split squat\tdumbbell split squat\n'
    'goblet\tgoblet squat\tgoblet squat\town\n'
    'goblet\tgoblet walk\tgoblet carry\n'
    'gorilla\tgorilla row\talternating kettlebell row\n'
    'granny\tgranny throw\tforward scoop throw\n'
    'granny\tgranny toss\tforward scoop throw\n'
    'gripper\tclose gripper\thand gripper squeeze\n'
    'gripper\tgripper\thand gripper squeeze\n'
    'gripper\tgripper hand\thand gripper squeeze\n'
    'guided\tbench guided\tguided-bar bench press\n'
    'guided\tbench guided press\tguided-bar bench press\n'
    'guided-bar\tback guided-bar squat\tguided-bar squat\n'
    'guided-bar\tbench guided-bar\tguided-bar bench press\n'
    'guided-bar\tbench guided-bar press\tguided-bar bench press\n'
    'guided-bar\tbench guided-bar press\tguided-bar bench press\town\n'
    'guided-bar\tbent-knee calf guided-bar\tguided-bar bent-knee calf raise\n'
    'guided-bar\tbent-knee calf guided-bar raise\tguided-bar bent-knee calf raise\town\n'
    'guided-bar\tbent-over guided-bar row\tguided-bar row\n'
    'guided-bar\tcalf guided-bar\tguided-bar calf raise\n'
    'guided-bar\tcalf guided-bar one-leg\tguided-bar single-leg calf raise\n'
    'guided-bar\tcalf guided-bar one-leg raise\tguided-bar single-leg calf raise\n'
    'guided-bar\tcalf guided-bar one-leg raise\tguided-bar single-leg calf raise\town\n'
    'guided-bar\tcalf guided-bar raise\tguided-bar calf raise\n'
    'guided-bar\tcalf guided-bar raise\tguided-bar calf raise\town\n'
    'guided-bar\tcalf guided-bar raise seated\tbarbell seated calf raise\t\tguided bar\n'
    'guided-bar\tcalf guided-bar raise standing\tguided-bar calf raise\n'
    'guided-bar\tcalf guided-bar seated\tbarbell seated calf raise\t\tguided bar\n'
    'guided-bar\tcalf guided-bar standing\tguided-bar calf raise\n'
    'guided-bar\tdeadlift guided-bar romanian\tguided-bar Romanian deadlift\n'
    'guided-bar\tdeadlift guided-bar romanian\tguided-bar Romanian deadlift\town\n'
    'guided-bar\tdeadlift guided-bar stiff-leg\tguided-bar Romanian deadlift\n'
    'guided-bar\tguided-bar hip thrust\tguided-bar hip thrust\n'
    'guided-bar\tguided-bar hip thrust\tguided-bar hip thrust\town\n'
    'guided-bar\tguided-bar incline\tguided-bar incline press\n'
    'guided-bar\tguided-bar incline press\tguided-bar incline press\n'
    'guided-bar\tguided-bar incline press\tguided-bar incline press\town\n'
    'guided-bar\tguided-bar jump squat\tguided-bar squat jump\n'
    'guided-bar\tguided-bar jump squat\tguided-bar squat jump\town\n'
    'guided-bar\tguided-bar lunge\tguided-bar split squat\n'
    'guided-bar\tguided-bar overhead press\tguided-bar shoulder press\n'
    'guided-bar\tguided-bar press shoulder\tguided-bar shoulder press\n'
    'guided-bar\tguided-bar press shoulder\tguided-bar shoulder press\town\n'
    'guided-bar\tguided-bar raise soleu\tguided-bar bent-knee calf raise\n'
    'guided-bar\tguided-bar row\tguided-bar row\n'
    'guided-bar\tguided-bar row\tguided-bar row\town\n'
    'guided-bar\tguided-bar shrug\tguided-bar shrug\n'
    'guided-bar\tguided-bar shrug\tguided-bar shrug\town\n'
    'guided-bar\tguided-bar split squat\tguided-bar split squat\n'
    'guided-bar\tguided-bar split squat\tguided-bar split squat\town\n'
    'guided-bar\tguided-bar squat\tguided-bar squat\n'
    'guided-bar\tguided-bar squat\tguided-bar squat\town\n'
    'half-kneeling\tangled-bar half-kneeling press\thalf-kneeling landmine press\n'
    'half-kneeling\tanti-rotation half-kneeling press\thalf-kneeling anti-rotation press\town\n'
    'half-kneeling\tcable chop half-kneeling\thalf-kneeling chop\n'
    'half-kneeling\tcable half-kneeling lift\thalf-kneeling lift\n'
    'half-kneeling\tcable half-kneeling one-arm row\tone-arm cable row\n'
    'half-kneeling\tcable half-kneeling out press\thalf-kneeling anti-rotation press\n'
    'half-kneeling\tcable half-kneeling row\thigh row\n'
    'half-kneeling\tchest half-kneeling pass\tkneeling medicine ball chest pass\n'
    'half-kneeling\tchop half-kneeling\thalf-kneeling chop\town\n'
    'half-kneeling\tchop half-kneeling high-to-low\thalf-kneeling chop\n'
    'half-kneeling\tchop half-kneeling low-to-high\thalf-kneeling lift\n'
    'half-kneeling\tdumbbell half-kneeling overhead press\thalf-kneeling overhead press\n'
    'half-kneeling\tdumbbell half-kneeling press\thalf-kneeling overhead press\n'
    'half-kneeling\thalf-kneeling kettlebell press\thalf-kneeling overhead press\t\tkettlebell\n'
    'half-kneeling\thalf-kneeling landmine overhead press\thalf-kneeling landmine press\n'
    'half-kneeling\thalf-kneeling landmine press\thalf-kneeling landmine press\town\n'
    'half-kneeling\thalf-kneeling lift\thalf-kneeling lift\town\n'
    'half-kneeling\thalf-kneeling lift low-to-high\thalf-kneeling lift\n'
    'half-kneeling\thalf-kneeling one-arm pulldown\tone-arm lat pulldown\n'
    'half-kneeling\thalf-kneeling out press\thalf-kneeling anti-rotation press\n'
    'half-kneeling\thalf-kneeling overhead press\thalf-kneeling overhead press\town\n'
    'half-kneeling\thalf-kneeling reverse throw\tkneeling reverse throw\n'
    'half-kneeling\thalf-kneeling rotational throw\thalf-kneeling rotational throw\town\n'
    'half-kneeling\thalf-kneeling side toss\thalf-kneeling rotational throw\n'
    'half-kneeling\thalf-kneeling slam\tkneeling medicine ball slam\n'
    'half-kneeling\thalf-kneeling woodchop\thalf-kneeling chop\n'
    'halo\thalo\tkettlebell halo\n'
    'hammer\tcable curl hammer\trope hammer curl\n'
    'hammer\tcurl hammer\thammer curl\town\n'
    'hammer\tcurl hammer rope\trope hammer curl\town\n'
    'hamstring\tbridge hamstring\tlong-lever bridge\n'
    'hamstring\tbridge hamstring one-leg\tsingle-leg hamstring bridge\n'
    'hamstring\tbridge hamstring one-leg\tsingle-leg hamstring bridge\town\n'
    'hamstring\tbridge hamstring walkout\thamstring walkout\n'
    'hamstring\teccentric hamstring slider\teccentric slider leg curl\n'
    'hamstring\thamstring lower slider\teccentric slider leg curl\n'
    'hamstring\thamstring out slide\teccentric slider leg curl\n'
    'hamstring\thamstring slide\tslider leg curl\n'
    'hamstring\thamstring slider\tslider leg curl\n'
    'hamstring\thamstring walkout\thamstring walkout\town\n'
    'hand\tbike hand\tarm ergometer\n'
    'hand-elevated\thand-elevated hop side\tbunny hop over a bench\n'
    'hand-elevated\thand-elevated plank\tincline plank\n'
    'hand-elevated\thand-elevated push-up\tincline push-up\n'
    "handle\tcarry farmer handle\tfarmer's handle carry\town\n"
    "handle\tcarry farmer handle thick\ttowel farmer's carry\n"
    "handle\tcarry handle\tfarmer's handle carry\n"
    "handle\tfarmer handle\tfarmer's handle carry\n"
    "handle\tfarmer handle walk\tfarmer's handle carry\n"
    'handstand\tchest handstand wall\thandstand hold\n'
    'handstand\thandstand\thandstand hold\n'
    'handstand\thandstand pu\thandstand push-up\n'
    'handstand\thandstand push-up\thandstand push-up\n'
    'handstand\thandstand push-up\thandstand push-up\town\n'
    'handstand\thandstand push-up wall\thandstand push-up\n'
    'handstand\thandstand wall\thandstand hold\n'
    'hang\tarm bent hang\tchin-up hold\n'
    'hang\tbar curl hang leg\thanging leg curl\n'
    'hang\tbar hang\tdead hang\n'
    'hang\tcurl hang leg\thanging leg curl\n'
    'hang\tcurl hang leg\thanging leg curl\town\n'
    'hang\tedge hang\tfingertip hang\n'
    'hang\thang\tdead hang\n'
    'hang\thang max\tfingertip hang\n'
    'hangboard\thang hangboard\tfingertip hang\n'
    'hangboard\thangboard repeater\tfingertip hang\n'
    'harness\tdrag harness sled\tsled drag\n'
    'harness\tdrag harness tyre\tsled drag\n'
    'harness\tflexion harness head\tharness neck flexion\n'
    'harness\tflexion harness neck\tharness neck flexion\n'
    'harness\tflexion harness neck\tharness neck flexion\town\n'
    'harness\tharness head\tharness neck extension\n'
    'harness\tharness neck\tharness neck extension\n'
    'heaving\tbalance heaving snatch\tsnatch balance\n'
    'heavy\theavy push sled\tsled push\n'
    'heel\tball calf heel\tball-squeeze calf raise\n'
    'heel\tbug dead heel tap\tdead bug heel tap\town\n'
    'heel\tdrop heel\theel drop\town\n'
    'heel\theel tap\tstep-down\n'
    'heel-elevated\tgoblet heel-elevated squat\theel-elevated squat\n'
    'heel-elevated\theel-elevated squat\theel-elevated squat\n'
    'heel-elevated\theel-elevated squat\theel-elevated squat\town\n'
    'heel-elevated\theel-elevated step-up\theel-raised step-up\n'
    'heel-elevated\theel-elevated step-up\theel-raised step-up\town\n'
    'height\tdrop height jump\tdepth jump\n'
    'height\theight skip\tpower skip\n'
    'high\thigh row\thigh row\town\n'
    'high-bar\tback high-bar squat\tback squat\n'
    'high-bar\thigh-bar squat\tback squat\n'
    'high-to-low\tcable fly high-to-low\thigh-to-low cable fly\town\n'
    'high-to-low\tcarry high-to-low\tmixed carry\n'
    'high-to-low\tchop high-to-low\tcable woodchop\n'
    'high-to-low\tchop high-to-low kneeling\thalf-kneeling chop\n'
    'high-to-low\tcrossover high-to-low\thigh-to-low cable fly\n'
    'high-to-low\thigh-to-low row\thigh row\n'
    'high-to-low\thigh-to-low woodchop\tcable woodchop\n'
    'hike\thike hip\tpelvic drop\n'
    'hill\thill run\thill sprint\n'
    'hinge\tcable hinge hip\tcable pull-through\n'
    'hinge\tdowel hinge hip\thip hinge drill\n'
    'hinge\tdrill hinge\thip hinge drill\n'
    'hinge\tdrill hinge hip\thip hinge drill\town\n'
    'hinge\thinge hip\thip hinge drill\n'
    'hinge\thinge wall\thip hinge drill\n'
    'hitch\thip hitch\tpelvic drop\n'
    'hollow\tarch hollow roll\thollow-to-arch roll\n'
    'hollow\tarch hollow roll\thollow-to-arch roll\town\n'
    'hollow\tbody hollow\thollow hold\n'
    'hollow\tbody hollow rock\thollow rock\n'
    'hollow\tbody hollow roll\thollow-to-arch roll\n'
    'hollow\thollow rock\thollow rock\town\n'
    'hop\thop\tsingle-leg hop\n'
    'horizontal\tabduction horizontal prone\tT raise\n'
    'horizontal\tback extension horizontal\thorizontal back extension\town\n'
    'horizontal\tback extension horizontal isometric\tback extension hold\n'
    'horizontal\tbar horizontal row\tinverted row\n'
    'horizontal\tbench horizontal sit-up\tglute-ham bench sit-up\n'
    'horizontal\tbound horizontal\tbounding\n'
    'horizontal\tcable chop horizontal\tcable rotation\n'
    'horizontal\tcable horizontal row\tseated cable row\n'
    'horizontal\thorizontal isometric side\tside lean hold\n'
    'horizontal\thorizontal jump\tbroad jump\n'
    'horizontal\thorizontal jump leg press\tleg press jump\n'
    'horizontal\thorizontal leg press\thorizontal leg press\town\n'
    'horizontal\thorizontal pull-up\tinverted row\n'
    'horizontal\thorizontal row\tmachine row\n'
    'horizontal\thorizontal woodchop\tcable rotation\n'
    'hover\tbench hover\tbench press stopped above the chest\n'
    'hugged\tcarry hugged plate\tplate carry\n'
    'hurdle\tdepth hurdle jump\tdepth jump\n'
    'hurdle\tdrop hop hurdle jump\tdepth jump\n'
    'hurdle\tdrop hurdle jump jump\tdepth jump\n'
    'hurdle\thop hurdle\thurdle jump\n'
    'hurdle\thurdle jump\thurdle jump\town\n'
    'husafell\tcarry husafell\tsandbag carry\n'
    'husafell\tcarry husafell stone\tsandbag carry\n'
    'hydrant\tband fire hydrant\tfire hydrant\t\tband\n'
    'hydrant\tfire hydrant\tfire hydrant\town\n'
    'hydrant\thydrant\tfire hydrant\n'
    'hyperextension\t45deg hyperextension\tback extension\n'
    'hyperextension\tball hyperextension reverse\tbench reverse hyperextension\n'
    'hyperextension\tbench hyperextension reverse\tbench reverse hyperextension\town\n'
    'hyperextension\tbench hyperextension sit-up\tglute-ham bench sit-up\n'
    'hyperextension\tbodyweight hyperextension reverse\tbench reverse hyperextension\n'
    'hyperextension\tfrog hyperextension reverse\tfrog raise\n'
    'hyperextension\thyperextension\tback extension\n'
    'hyperextension\thyperextension one-leg\tsingle-leg back extension\n'
    'hyperextension\thyperextension reverse\treverse hyperextension\n'
    'hyperextension\thyperextension reverse\treverse hyperextension\town\n'
    'hyperextension\thyperextension weighted\tweighted back extension\n'
    'inchworm\tinchworm\tinchworm\town\n'
    'inchworm\tinchworm walkout\tinchworm\n'
    'incline\t3 incline raise trap\tY raise\n'
    'incline\t60deg incline press\tsteep incline dumbbell press\n'
    'incline\tbarbell bench incline\tincline bench press\n'
    'incline\tbarbell bench incline press\tincline bench press\n'
    'incline\tbarbell incline press\tincline bench press\n'
    'incline\tbench cable fly incline\tincline cable fly\n'
    'incline\tbench curl incline\tincline dumbbell curl\n'
    'incline\tbench front incline raise\tincline front raise\n'
    'incline\tbench incline\tincline bench press\n'
    'incline\tbench incline leg raise\tincline leg raise\n'
    'incline\tbench incline press\tincline bench press\town\n'
    'incline\tbench incline row\tchest-supported dumbbell row\n'
    'incline\tcable fly incline\tincline cable fly\town\n'
    'incline\tchest fly incline\tincline dumbbell fly\n'
    'incline\tcrusher incline skull\tincline triceps extension\n'
    'incline\tcurl hammer incline\tseated hammer curl\n'
    'incline\tcurl incline\tincline dumbbell curl\n'
    'incline\tcurl incline seated\tincline dumbbell curl\n'
    'incline\tdelt incline raise rear\tchest-supported reverse fly\n'
    'incline\tfly incline\tincline dumbbell fly\n'
    'incline\tfront incline raise\tincline front raise\town\n'
    'incline\tfront incline raise seated\tincline front raise\n'
    'incline\tguided incline press\tguided-bar incline press\n'
    'incline\ti-y-t incline raise\tI-Y-T raise\n'
    'incline\tincline leg press\tleg press\n'
    'incline\tincline leg raise\tincline leg raise\town\n'
    'incline\tincline plank\tincline plank\town\n'
    'incline\tincline press\tincline bench press\n'
    'incline\tincline pu\tincline push-up\n'
    'incline\tincline raise t\tT raise\n'
    'incline\tincline raise w\tW raise\n'
    'incline\tincline raise y\tY raise\n'
    'incline\tincline row\tchest-supported dumbbell row\n'
    'incline\tincline shrug\tchest-supported shrug\n'
    'incline\tincline sprint\thill sprint\n'
    'incline\tincline walk\tloaded hill walk\n'
    'indoor\tbike indoor\tstationary bike\n'
    'indoor\tindoor row\trowing ergometer\n'
    'indoor\tindoor rower\trowing ergometer\n'
    'interval\tbike interval\tstationary bike\n'
    'inversion\tankle band inversion\tband ankle inversion\n'
    'inversion\tankle band inversion\tband ankle inversion\town\n'
    'inversion\tankle cable inversion\tband ankle inversion\t\tcable\n'
    'inversion\tankle inversion\tband ankle inversion\n'
    'inversion\tankle inversion seated\tband ankle inversion\n'
    'inversion\tband inversion\tband ankle inversion\n'
    'inverted\tdecline inverted row\tfeet-elevated inverted row\n'
    'inverted\teasy inverted row\tinverted row with bent knees\n'
    'inverted\televated inverted row\tfeet-elevated inverted row\n'
    'inverted\tinverted one-arm row\tone-arm suspension row\n'
    'inverted\tinverted ring row\tsuspension row\n'
    'inverted\tinverted row\tinverted row\town\n'
    'inverted\tinverted row towel\tinverted row\n'
    'isometric\t90deg curl isometric\tcurl hold\n'
    'isometric\tabduction hip isometric\twall press abduction hold\n'
    'isometric\tabduction hip isometric wall\twall press abduction hold\n'
    'isometric\tabduction isometric press wall\twall press abduction hold\town\n'
    'isometric\tadduction hip isometric\tball squeeze\n'
    'isometric\tadduction isometric\tball squeeze\n'
    'isometric\tand hop isometric\thop and stick\n'
    'isometric\tand hop isometric one-leg\thop and stick\n'
    'isometric\tankle isometric push\tisometric plantarflexion push\n'
    'isometric\tarch isometric\tprone back extension hold\n'
    'isometric\tarch isometric prone\tprone back extension hold\n'
    'isometric\tarm front isometric out\tfront raise hold\n'
    'isometric\tback bench extension isometric side\tside lean hold\n'
    'isometric\tback extension isometric\tback extension hold\n'
    'isometric\tback extension isometric\tback extension hold\town\n'
    'isometric\tback extension isometric one-leg\tsingle-leg back extension hold\n'
    'isometric\tback extension isometric one-leg\tsingle-leg back extension hold\town\n'
    'isometric\tback extension isometric prone\tprone back extension hold\town\n'
    'isometric\tback isometric squat\tisometric squat\n'
    'isometric\tball isometric neck\tstability-ball neck hold\n'
    'isometric\tball isometric neck wall\tstability-ball neck hold\n'
    'isometric\tbar chin isometric\tchin-up hold\n'
    'isometric\tbar isometric tuck\ttuck hold on bars\town\n'
    'isometric\tbarbell isometric\tbarbell hold\town\n'
    'isometric\tbarbell isometric overhead\toverhead hold\n'
    'isometric\tbarbell isometric static\tbarbell hold\n'
    'isometric\tbarbell isometric timed\tbarbell hold\n'
    'isometric\tbear isometric\tbear hold\town\n'
    'isometric\tbear isometric leg lift\tbear hold march\n'
    'isometric\tbear isometric march\tbear hold march\town\n'
    'isometric\tbear isometric neck\tquadruped neck hold\n'
    'isometric\tbear isometric neck position\tquadruped neck hold\n'
    'isometric\tbear isometric shoulder tap\tbear hold march\n'
    'isometric\tbeast isometric\tbear hold\n'
    'isometric\tbelt isometric squat\tbelt squat hold\n'
    'isometric\tbelt isometric squat\tbelt squat hold\town\n'
    'isometric\tbench isometric\tisometric bench press\n'
    'isometric\tbench isometric pin\tisometric bench press\n'
    'isometric\tbench isometric pin press\tisometric bench press\n'
    'isometric\tbench isometric press\tisometric bench press\n'
    'isometric\tbench isometric press\tisometric bench press\town\n'
    'isometric\tbench isometric side\tside lean hold\n'
    'isometric\tbend isometric neck side\tisometric neck side bend\n'
    'isometric\tbend isometric neck side\tisometric neck side bend\town\n'
    'isometric\tbent-knee calf isometric\tbent-knee calf hold\n'
    'isometric\tbent-knee calf isometric\tbent-knee calf hold\town\n'
    'isometric\tbent-knee calf isometric raise\tbent-knee calf hold\n'
    'isometric\tbent-knee isometric soleu\tbent-knee calf hold\n'
    'isometric\tboat isometric\tV-sit hold\n'
    'isometric\tbody hollow isometric\thollow hold\n'
    'isometric\tbox isometric pike\tpike hold\n'
    'isometric\tbridge glute isometric\tglute bridge hold\n'
    'isometric\tbridge glute isometric\tglute bridge hold\town\n'
    'isometric\tbridge glute isometric one-leg\tsingle-leg glute bridge hold\n'
    'isometric\tbridge glute isometric one-leg\tsingle-leg glute bridge hold\town\n'
    'isometric\tbridge hamstring isometric\tlong-lever bridge hold\n'
    'isometric\tbridge hamstring isometric one-leg\tsingle-leg long-lever bridge hold\n'
    'isometric\tbridge isometric\tglute bridge hold\n'
    'isometric\tbridge isometric one-leg\tsingle-leg glute bridge hold\n'
    'isometric\tbridge isometric reverse\treverse plank\n'
    'isometric\tcalf isometric\tcalf raise hold\n'
    'isometric\tcalf isometric isometric\tcalf raise hold\n'
    'isometric\tcalf isometric one-leg\tcalf raise hold\n'
    'isometric\tcalf isometric one-leg raise\tcalf raise hold\n'
    'isometric\tcalf isometric push standing\tisometric plantarflexion push\n'
    'isometric\tcalf isometric rack\tisometric plantarflexion push\n'
    'isometric\tcalf isometric raise\tcalf raise hold\n'
    'isometric\tcalf isometric raise\tcalf raise hold\town\n'
    'isometric\tcalf isometric raise seated\tbent-knee calf hold\n'
    'isometric\tcalf isometric seated\tbent-knee calf hold\n'
    'isometric\tcan front isometric out water\tfront raise hold\n'
    'isometric\tcan front isometric water\tfront raise hold\n'
    'isometric\tchair isometric one-leg roman\tsingle-leg back extension hold\n'
    'isometric\tchair isometric roman\tback extension hold\n'
    'isometric\tchin isometric\tchin-up hold\n'
    'isometric\tchin-up isometric\tchin-up hold\n'
    'isometric\tchin-up isometric\tchin-up hold\town\n'
    'isometric\tcobra isometric\tprone cobra hold\n'
    'isometric\tcobra isometric prone\tprone cobra hold\town\n'
    'isometric\tcurl isometric\tcurl hold\n'
    'isometric\tcurl isometric\tcurl hold\town\n'
    'isometric\tcurl isometric leg\tisometric leg curl\n'
    'isometric\tcurl isometric leg\tisometric leg curl\town\n'
    'isometric\tcurl isometric leg seated\tseated isometric leg curl\n'
    'isometric\tcurl isometric leg seated\tseated isometric leg curl\town\n'
    'isometric\tcurl isometric nordic\tNordic hold\n'
    'isometric\tcurl isometric nordic\tNordic hold\town\n'
    'isometric\tdeadlift isometric\tbarbell hold\n'
    'isometric\tdeadlift isometric\tisometric mid-thigh pull\n'
    'isometric\tdeadlift isometric lockout\tbarbell hold\n'
    'isometric\tdeadlift isometric strap\tisometric towel pull\n'
    'isometric\tdeadlift isometric towel\tisometric towel pull\n'
    'isometric\tdeep flexor isometric neck\tchin tuck\n'
    'isometric\tdeep isometric squat\tsquat hold\n'
    'isometric\tdip isometric support\tdip support hold\town\n'
    'isometric\tdip isometric top\tdip support hold\n'
    'isometric\tdirection isometric isometric neck\tisometric neck holds in all directions\town\n'
    'isometric\tdirection isometric neck\tisometric neck holds in all directions\n'
    'isometric\tdish isometric\thollow hold\n'
    "isometric\tdumbbell grip isometric\tfarmer's hold\n"
    "isometric\tdumbbell isometric\tfarmer's hold\n"
    'isometric\tendurance flexor isometric neck\tlying head lift hold\n'
    'isometric\textension hip isometric isometric\tback extension hold\n'
    'isometric\textension isometric isometric wrist\tisometric wrist extension\n'
    'isometric\textension isometric leg\tisometric leg extension\n'
    'isometric\textension isometric leg\tisometric leg extension\town\n'
    'isometric\textension isometric neck\tisometric neck extension\n'
    'isometric\textension isometric neck\tisometric neck extension\town\n'
    'isometric\textension isometric prone\tprone back extension hold\n'
    'isometric\textension isometric triceps\ttriceps extension hold\n'
    'isometric\textension isometric triceps\ttriceps extension hold\town\n'
    'isometric\textension isometric trunk\tback extension hold\n'
    'isometric\textension isometric wrist\tisometric wrist extension\n'
    'isometric\textension isometric wrist\tisometric wrist extension\town\n'
    'isometric\texternal isometric rotation\tisometric external rotation\n'
    'isometric\texternal isometric rotation\tisometric external rotation\town\n'
    "isometric\tfarmer isometric\tfarmer's hold\town\n"
    'isometric\tfarmer isometric one-arm\tsuitcase hold\n'
    "isometric\tfarmer isometric static\tfarmer's hold\n"
    'isometric\tflexion hip isometric\thip flexion hold\n'
    'isometric\tflexion hip isometric\thip flexion hold\town\n'
    'isometric\tflexion hip isometric standing\thip flexion hold\n'
    'isometric\tflexion isometric knee\tisometric leg curl\n'
    'isometric\tflexion isometric lateral neck\tisometric neck side bend\n'
    'isometric\tflexion isometric neck\tisometric neck flexion\n'
    'isometric\tflexion isometric neck\tisometric neck flexion\town\n'
    'isometric\tfoot isometric row\tisometric towel row\n'
    'isometric\tfront isometric\tfront raise hold\n'
    'isometric\tfront isometric lever\tfront lever hold\town\n'
    'isometric\tfront isometric lever row\tfront lever hold\n'
    'isometric\tfront isometric neck\tisometric neck flexion\n'
    'isometric\tfront isometric raise\tfront raise hold\n'
    'isometric\tfront isometric raise\tfront raise hold\town\n'
    'isometric\tgoblet isometric squat\tsquat hold\n'
    'isometric\tgrip isometric\tbarbell hold\n'
    'isometric\tgrip isometric pinch\tplate pinch\n'
    'isometric\thamstring isometric\tisometric leg curl\n'
    'isometric\thamstring isometric\tlong-lever bridge hold\n'
    'isometric\thamstring isometric one-leg\tsingle-leg long-lever bridge hold\n'
    'isometric\thamstring isometric seated\tseated isometric leg curl\n'
    'isometric\thandstand isometric\thandstand hold\town\n'
    'isometric\thandstand isometric pike\tpike hold\n'
    'isometric\thandstand isometric wall\thandstand hold\n'
    'isometric\thang isometric knee\thanging tuck hold\n'
    'isometric\thang isometric knee raise\thanging tuck hold\n'
    'isometric\thang isometric l\thanging tuck hold\n'
    'isometric\thang isometric tuck\thanging tuck hold\town\n'
    'isometric\thead isometric lift lying\tlying head lift hold\town\n'
    'isometric\thead isometric supine\tlying head lift hold\n'
    'isometric\theel isometric raise\tcalf raise hold\n'
    'isometric\theight isometric pull-up three\tpull-up with stops\n'
    'isometric\thollow isometric\thollow hold\town\n'
    'isometric\tinternal isometric rotation\tisometric internal rotation\n'
    'isometric\tinternal isometric rotation\tisometric internal rotation\town\n'
    'isometric\tinverted isometric row\tinverted row hold\n'
    'isometric\tinverted isometric row\tinverted row hold\town\n'
    'isometric\tinverted isometric row top\tinverted row hold\n'
    'isometric\tisometric isometric neck\tisometric neck holds in all directions\n'
    'isometric\tisometric isometric overhead\toverhead hold\n'
    'isometric\tisometric isometric soleu\tbent-knee calf hold\n'
    'isometric\tisometric isometric suitcase\tsuitcase hold\n'
    'isometric\tisometric knee raise\thip flexion hold\n'
    'isometric\tisometric l-sit\tL-sit\n'
    'isometric\tisometric lateral neck\tisometric neck side bend\n'
    'isometric\tisometric lateral raise\tlateral raise hold\n'
    'isometric\tisometric lateral raise\tlateral raise hold\town\n'
    'isometric\tisometric lean side\tside lean hold\town\n'
    'isometric\tisometric lean soleu wall\tbent-knee calf hold\n'
    'isometric\tisometric lift prone\tprone back extension hold\n'
    'isometric\tisometric lockout overhead\toverhead hold\n'
    'isometric\tisometric low push-up\tpush-up hold\n'
    'isometric\tisometric lunge\tsplit squat hold\n'
    'isometric\tisometric mid push-up\tpush-up hold\n'
    'isometric\tisometric neck\tisometric neck holds in all directions\n'
    'isometric\tisometric neck prone\tisometric neck extension\n'
    'isometric\tisometric neck rear\tisometric neck extension\n'
    'isometric\tisometric neck rotation\tisometric neck rotation\n'
    'isometric\tisometric neck rotation\tisometric neck rotation\town\n'
    'isometric\tisometric neck side\tisometric neck side bend\n'
    'isometric\tisometric neck supine\tlying head lift hold\n'
    'isometric\tisometric one-arm plank\tone-arm plank\n'
    'isometric\tisometric overhead\toverhead hold\town\n'
    'isometric\tisometric pike\tpike hold\town\n'
    'isometric\tisometric pin squat\tisometric squat\n'
    'isometric\tisometric pinch\tplate pinch\n'
    'isometric\tisometric pinch plate\tplate pinch\n'
    'isometric\tisometric plank\tplank\n'
    'isometric\tisometric plank side\tside plank\n'
    'isometric\tisometric press wall\twall press abduction hold\n'
    'isometric\tisometric prone\tprone back extension hold\n'
    'isometric\tisometric prone scapular squeeze\tprone cobra hold\n'
    'isometric\tisometric pull rack\tisometric mid-thigh pull\n'
    'isometric\tisometric pull towel\tisometric towel pull\town\n'
    'isometric\tisometric pull-up\tpull-up hold\n'
    'isometric\tisometric pull-up\tpull-up hold\town\n'
    'isometric\tisometric pull-up top\tpull-up hold\n'
    'isometric\tisometric push-up\tpush-up hold\n'
    'isometric\tisometric push-up\tpush-up hold\town\n'
    'isometric\tisometric pushdown\ttriceps extension hold\n'
    'isometric\tisometric quad set\tquad set\n'
    'isometric\tisometric rope\ttowel hang\n'
    'isometric\tisometric row towel\tisometric towel row\n'
    'isometric\tisometric row towel\tisometric towel row\town\n'
    'isometric\tisometric seated v\tV-sit hold\n'
    'isometric\tisometric shrug\tshrug hold\n'
    'isometric\tisometric shrug\tshrug hold\town\n'
    'isometric\tisometric shrug top\tshrug hold\n'
    'isometric\tisometric sit wall\twall sit\n'
    'isometric\tisometric soleu\tbent-knee calf hold\n'
    'isometric\tisometric sorensen\tback extension hold\n'
    'isometric\tisometric spanish squat\tSpanish squat hold\n'
    'isometric\tisometric spanish squat\tSpanish squat hold\town\n'
    'isometric\tisometric split squat\tsplit squat hold\n'
    'isometric\tisometric split squat\tsplit squat hold\town\n'
    'isometric\tisometric squat\tisometric squat\n'
    'isometric\tisometric squat\tisometric squat\town\n'
    'isometric\tisometric squat\tsquat hold\town\n'
    'isometric\tisometric squat standing\tsquat walkout\n'
    'isometric\tisometric squat unrack\tsquat walkout\n'
    'isometric\tisometric squat walkout\tsquat walkout\n'
    'isometric\tisometric squat wall\twall sit\n'
    'isometric\tisometric suitcase\tsuitcase hold\town\n'
    'isometric\tisometric superman\tprone back extension hold\n'
    'isometric\tisometric support\tdip support hold\n'
    'isometric\tisometric tuck\ttuck hold on bars\n'
    'isometric\tisometric v-sit\tV-sit hold\town\n'
    'jackknife\tjackknife\tV-up\n'
    'jackknife\tjackknife sit-up\tV-up\n'
    'jammer\tarm jammer press\tstanding lever press\n'
    'jammer\tjammer press\tstanding lever press\n'
    'jefferson\tcurl jefferson\tspinal-flexion deadlift\n'
    'jefferson\tdeadlift jefferson\tstraddle deadlift\n'
    'jefferson\tjefferson lift\tstraddle deadlift\n'
    'jefferson\tjefferson squat\tstraddle deadlift\n'
    'jerk\tdip jerk\tjerk dip\town\n'
    'jerk\tjerk\tsplit jerk\n'
    'jerrycan\tcarry jerrycan\tbucket carry\n'
    'jog\tjog\trun\n'
    'jogging\tjogging\trun\n'
    'jump\tband jump\tband-resisted jump\n'
    'jump\tbox box jump\tbox jump\n'
    'jump\tbox jump\tbox jump\n'
    'jump\tbox jump\tbox jump\town\n'
    'jump\tdrop fast jump\tdrop jump\n'
    'jump\tdrop jump\tdrop jump\n'
    'jump\tdrop jump\tdrop jump\town\n'
    'jump\tfrog jump\trepeated broad jump\n'
    'jump\tjump\tcountermovement jump\n'
    'jump\tjump run up\tcountermovement jump\n'
    'jumping\tchin-up jumping\tjumping chin-up\town\n'
    'jumping\tjack jumping\tjumping jack\town\n'
    'jumping\tjumping lunge\tsplit squat jump\n'
    'jumping\tjumping rope\tjump rope\n'
    'kettlebell\tand clean double jerk kettlebell\tkettlebell clean and jerk\n'
    'kettlebell\tand clean double kettlebell press\tdouble kettlebell clean and press\n'
    'kettlebell\tand clean double kettlebell press\tdouble kettlebell clean and press\town\n'
    'kettlebell\tand clean jerk kettlebell\tkettlebell clean and jerk\n'
    'kettlebell\tand clean jerk kettlebell\tkettlebell clean and jerk\town\n'
    'kettlebell\tand clean kettlebell one-arm press\tkettlebell clean and press\n'
    'kettlebell\tand clean kettlebell press\tkettlebell clean and press\n'
    'kettlebell\tand clean kettlebell press\tkettlebell clean and press\town\n'
    'kettlebell\tand clean kettlebell press two\tdouble kettlebell clean and press\n'
    'kettlebell\tarm bar kettlebell\tarm bar\n'
    'kettlebell\tbear carry hug kettlebell\tgoblet carry\n'
    'kettlebell\tbent-over kettlebell row\tkettlebell row\n'
    'kettlebell\tbottoms-up carry kettlebell\tbottoms-up carry\n'
    'kettlebell\tbottoms-up isometric kettlebell\tbottoms-up kettlebell hold\town\n'
    'kettlebell\tbottoms-up kettlebell overhead press\tbottoms-up kettlebell press\n'
    'kettlebell\tbottoms-up kettlebell press\tbottoms-up kettlebell press\town\n'
    'kettlebell\tbottoms-up kettlebell press seated\tbottoms-up kettlebell press\n'
    'kettlebell\tbottoms-up kettlebell press z\tbottoms-up kettlebell press\n'
    'kettlebell\tbug dead kettlebell\tweighted dead bug\t\tkettlebell\n'
    'kettlebell\tcalf kettlebell\tdumbbell calf raise\t\tkettlebell\n'
    'kettlebell\tcalf kettlebell raise\tdumbbell calf raise\t\tkettlebell\n'
    'kettlebell\tcalf kettlebell raise seated\tdumbbell seated calf raise\t\tkettlebell\n'
    'kettlebell\tcalf kettlebell seated\tdumbbell seated calf raise\t\tkettlebell\n'
    'kettlebell\tcarry cross kettlebell\tmixed carry\n'
    'kettlebell\tcarry double front-rack kettlebell\track carry\n'
    "kettlebell\tcarry farmer kettlebell\tkettlebell farmer's carry\town\n"
    'kettlebell\tcarry front-rack kettlebell\track carry\n'
    "kettlebell\tcarry kettlebell\tkettlebell farmer's carry\n"
    'kettlebell\tclean double kettlebell\tkettlebell clean\n'
    'kettlebell\tclean kettlebell\tkettlebell clean\n'
    'kettlebell\tclean kettlebell\tkettlebell clean\town\n'
    'kettlebell\tclean kettlebell one-arm\tkettlebell clean\n'
    'kettlebell\tcurl kettlebell\tkettlebell curl\n'
    'kettlebell\tcurl kettlebell\tkettlebell curl\town\n'
    'kettlebell\tcurl kettlebell two-arm\tkettlebell curl\n'
    'kettlebell\tcycle kettlebell long\tkettlebell clean and jerk\n'
    'kettlebell\tdeadlift kettlebell\tkettlebell deadlift\n'
    'kettlebell\tdeadlift kettlebell\tkettlebell deadlift\town\n'
    'kettlebell\tdeadlift kettlebell romanian\tdumbbell Romanian deadlift\t\tkettlebell\n'
    'kettlebell\tdeadlift kettlebell suitcase\tsuitcase deadlift\n'
    'kettlebell\tdeadlift kettlebell sumo\tkettlebell sumo deadlift\n'
    'kettlebell\tdeadlift kettlebell sumo\tkettlebell sumo deadlift\town\n'
    'kettlebell\tdouble front kettlebell squat\tkettlebell front squat\n'
    'kettlebell\tdouble kettlebell overhead press\tdouble kettlebell overhead press\town\n'
    'kettlebell\tdouble kettlebell press\tdouble kettlebell overhead press\n'
    'kettlebell\tdouble kettlebell row\tkettlebell row\n'
    'kettlebell\tdouble kettlebell swing\theavy kettlebell swing\n'
    'kettlebell\tdown kettlebell press upside\tbottoms-up kettlebell press\n'
    'kettlebell\tdrag kettlebell\tplank drag\t\tkettlebell\n'
    'kettlebell\textension kettlebell overhead\tkettlebell overhead triceps extension\n'
    'kettlebell\textension kettlebell overhead triceps\tkettlebell overhead triceps extension\town\n'
    'kettlebell\textension kettlebell triceps\tkettlebell overhead triceps extension\n'
    "kettlebell\tfarmer kettlebell walk\tkettlebell farmer's carry\n"
    'kettlebell\tfloor kettlebell one-arm press\tkettlebell floor press\n'
    'kettlebell\tfloor kettlebell press\tkettlebell floor press\n'
    'kettlebell\tfloor kettlebell press\tkettlebell floor press\town\n'
    'kettlebell\tfloor kettlebell pullover\tkettlebell pullover\n'
    'kettlebell\tfront kettlebell squat\tkettlebell front squat\n'
    'kettlebell\tfront kettlebell squat\tkettlebell front squat\town\n'
    'kettlebell\tfront-rack kettlebell squat\tkettlebell front squat\n'
    'kettlebell\tget-up kettlebell\tTurkish get-up\n'
    'kettlebell\tgoblet kettlebell squat\tgoblet squat\t\tkettlebell\n'
    'kettlebell\thalo kettlebell\tkettlebell halo\n'
    'kettlebell\thalo kettlebell\tkettlebell halo\town\n'
    'kettlebell\thang kettlebell raise tibialis\tkettlebell dorsiflexion\n'
    'kettlebell\theavy kettlebell swing\theavy kettlebell swing\town\n'
    'kettlebell\thigh kettlebell one-arm pull\tkettlebell high pull\n'
    'kettlebell\thigh kettlebell pull\tkettlebell high pull\n'
    'kettlebell\thigh kettlebell pull\tkettlebell high pull\town\n'
    'kettlebell\thip kettlebell thrust\tdumbbell hip thrust\t\tkettlebell\n'
    'kettlebell\tjerk kettlebell\tkettlebell jerk\n'
    'kettlebell\tjerk kettlebell\tkettlebell jerk\town\n'
    'kettlebell\tjerk kettlebell one-arm\tkettlebell jerk\n'
    'kettlebell\tjerk kettlebell push\tkettlebell jerk\n'
    'kettlebell\tjump kettlebell squat\tdumbbell squat jump\t\tkettlebell\n'
    'kettlebell\tkettlebell knee raise\tstanding knee raise\t\tkettlebell\n'
    'kettlebell\tkettlebell lateral raise\tkettlebell lateral raise\n'
    'kettlebell\tkettlebell lateral raise\tkettlebell lateral raise\town\n'
    'kettlebell\tkettlebell lunge\tforward lunge\t\tkettlebell\n'
    'kettlebell\tkettlebell lunge reverse\treverse lunge\t\tkettlebell\n'
    'kettlebell\tkettlebell march psoa\tband hip flexion\t\tkettlebell\n'
    'kettlebell\tkettlebell one-arm press\tkettlebell overhead press\n'
    'kettlebell\tkettlebell one-arm press push\tkettlebell push press\n'
    'kettlebell\tkettlebell one-arm row\tone-arm kettlebell row\n'
    'kettlebell\tkettlebell one-arm row\tone-arm kettlebell row\town\n'
    'kettlebell\tkettlebell one-arm snatch\tkettlebell snatch\n'
    'kettlebell\tkettlebell one-arm swing\tsingle-arm kettlebell swing\n'
    'kettlebell\tkettlebell one-arm swing\tsingle-arm kettlebell swing\town\n'
    'kettlebell\tkettlebell overhead press\tkettlebell overhead press\n'
    'kettlebell\tkettlebell overhead press\tkettlebell overhead press\town\n'
    'kettlebell\tkettlebell overhead swing\toverhead kettlebell swing\n'
    'kettlebell\tkettlebell overhead swing\toverhead kettlebell swing\town\n'
    'kettlebell\tkettlebell press\tkettlebell overhead press\n'
    'kettlebell\tkettlebell press push\tkettlebell push press\n'
    'kettlebell\tkettlebell press push\tkettlebell push press\town\n'
    'kettlebell\tkettlebell press two\tdouble kettlebell overhead press\n'
    'kettlebell\tkettlebell pullover\tkettlebell pullover\n'
    'kettlebell\tkettlebell pullover\tkettlebell pullover\town\n'
    'kettlebell\tkettlebell raise tibialis\tkettlebell dorsiflexion\n'
    'kettlebell\tkettlebell row\tkettlebell row\n'
    'kettlebell\tkettlebell row\tkettlebell row\town\n'
    'kettlebell\tkettlebell row stance wide\talternating kettlebell row\n'
    'kettlebell\tkettlebell row upright\tkettlebell upright row\n'
    'kettlebell\tkettlebell row upright\tkettlebell upright row\town\n'
    'kettlebell\tkettlebell shrug\tkettlebell shrug\n'
    'kettlebell\tkettlebell shrug\tkettlebell shrug\town\n'
    'kettlebell\tkettlebell sit-up\tTurkish sit-up\n'
    'kettlebell\tkettlebell snatch\tkettlebell snatch\n'
    'kettlebell\tkettlebell snatch\tkettlebell snatch\town\n'
    'kettlebell\tkettlebell split squat\tdumbbell split squat\t\tkettlebell\n'
    'kettlebell\tkettlebell squat sumo\tsumo squat\t\tkettlebell\n'
    'kettlebell\tkettlebell swing\tkettlebell swing\n'
    'kettlebell\tkettlebell swing\tkettlebell swing\town\n'
    'kettlebell\tkettlebell swing two-arm\tkettlebell swing\n'
    'kettlebell\tkettlebell thruster\tdumbbell thruster\t\tkettlebell\n'
    "kettlebell\tkettlebell walk\tkettlebell farmer's carry\n"
    'kettlebell\tkettlebell windmill\tkettlebell windmill\n'
    'kettlebell\tkettlebell windmill\tkettlebell windmill\town\n'
    'kickback\tband kickback\tband kickback\n'
    'kickback\tband kickback\tband kickback\town\n'
    'kickback\tcable glute kickback\tcable hip extension\n'
    'kickback\tcable kickback\tcable hip extension\n'
    'kickback\tcable kickback\tcable kickback for triceps\n'
    'kickback\tcable kickback triceps\tcable kickback for triceps\n'
    'kickback\tcable kickback triceps\tcable kickback for triceps\town\n'
    'kickback\tdumbbell kickback\ttriceps kickback\n'
    'kickback\tglute kickback\tcable hip extension\n'
    'kickback\tglute kickback machine\tmachine glute kickback\town\n'
    'kickback\tkickback\ttriceps kickback\n'
    'kickback\tkickback machine\tmachine glute kickback\n'
    'kickback\tkickback triceps\ttriceps kickback\town\n'
    'knee\tdrop knee\tbent-knee trunk rotation\n'
    'knee\thigh knee\tstanding knee raise\n'
    'knee\tjump knee\tkneeling jump\n'
    'knee\tknee pu\tknee push-up\n'
    'kneeling\tab kneeling rollout wheel\tab wheel rollout\n'
    'kneeling\tbarbell kneeling rollout\tbarbell rollout\n'
    'kneeling\tbox jump kneeling\tkneeling jump\n'
    'kneeling\tcable crunch kneeling\tcable crunch\n'
    'kneeling\tchest kneeling throw\tkneeling medicine ball chest pass\n'
    'kneeling\tchop kneeling\thalf-kneeling chop\n'
    'kneeling\tcurl kneeling leg\tkneeling leg curl\n'
    'kneeling\tcurl kneeling leg\tkneeling leg curl\town\n'
    'kneeling\tcurl kneeling leg machine\tkneeling leg curl\n'
    'kneeling\tfallout kneeling\tsuspension fallout\n'
    'kneeling\tglute kneeling machine\tmachine glute kickback\n'
    'kneeling\thigh kneeling row\thigh row\n'
    'kneeling\tjump kneeling\tkneeling jump\n'
    'kneeling\tjump kneeling\tkneeling jump\town\n'
    'kneeling\tjump kneeling squat\tkneeling jump\n'
    'kneeling\tkneeling lean quad\treverse Nordic curl\n'
    'kneeling\tkneeling lift\thalf-kneeling lift\n'
    'kneeling\tkneeling plank\tknee plank\n'
    'kneeling\tkneeling plank side\tknee side plank\n'
    'kneeling\tkneeling push-up\tknee push-up\n'
    'kneeling\tkneeling reverse throw\tkneeling reverse throw\town\n'
    'kneeling\tkneeling rollout\tab wheel rollout\n'
    'kneeling\tkneeling rollout slider\tslider rollout\n'
    'kneeling\tkneeling slam\tkneeling medicine ball slam\n'
    'l-sit\tbar l-sit\tL-sit\n'
    'l-sit\tl-sit\tL-sit\town\n'
    'ladder\tboard campu ladder\tcampus board ladder\town\n'
    'ladder\tcampu ladder\tcampus board ladder\n'
    'landing\tbox drop landing\tdrop landing\n'
    'landing\tbox landing\tdrop landing\n'
    'landing\tdown landing snap\tsnap-down\n'
    'landing\tdrill landing\tsnap-down\n'
    'landing\tdrop landing\tdrop landing\town\n'
    'landing\tdrop landing squat\tdrop landing\n'
    'landmine\t180 landmine\tlandmine rotation\n'
    'landmine\tback bar landmine squat\tlandmine hack squat\n'
    'landmine\tback landmine lunge step\tlandmine reverse lunge\n'
    'landmine\tgoblet landmine squat\tlandmine squat\n'
    'landmine\thack landmine squat\tlandmine hack squat\town\n'
    'landmine\thinge landmine\tlandmine Romanian deadlift\n'
    'landmine\tjerk landmine\tlandmine push press\n'
    'landmine\tkneeling landmine press\thalf-kneeling landmine press\n'
    'landmine\tlandmine lunge\tbarbell lunge\n'
    'landmine\tlandmine lunge reverse\tlandmine reverse lunge\town\n'
    'landmine\tlandmine one-arm press\tlandmine press\n'
    'landmine\tlandmine one-arm press push\tlandmine push press\n'
    'landmine\tlandmine one-arm row\tone-arm landmine row\n'
    'landmine\tlandmine one-arm row\tone-arm landmine row\town\n'
    'landmine\tlandmine press\tlandmine press\town\n'
    'landmine\tlandmine press push\tlandmine push press\town\n'
    'landmine\tlandmine press two-arm\ttwo-arm landmine press\n'
    'landmine\tlandmine press two-arm\ttwo-arm landmine press\town\n'
    'landmine\tlandmine punch throw\trotational landmine throw\n'
    'landmine\tlandmine rainbow\tlandmine rotation\n'
    'landmine\tlandmine reverse squat\tlandmine hack squat\n'
    'landmine\tlandmine row\tT-bar row\n'
    'landmine\tlandmine row side-on\tone-arm landmine row\n'
    'landmine\tlandmine squat\tlandmine squat\town\n'
    'landmine\tlandmine throw\trotational landmine throw\n'
    'landmine\tlandmine twist\tlandmine rotation\n'
    'larsen\tlarsen press\tfeet-up bench press\n'
    'lateral\tand bound lateral stick\tlateral bound\n'
    'lateral\tarm bent lateral raise\tbent-arm lateral raise\town\n'
    'lateral\taway cable lateral lean raise\tleaning lateral raise\n'
    'lateral\taway lateral lean raise\tleaning lateral raise\n'
    'lateral\tband flexion lateral neck\tband neck side bend\n'
    'lateral\tband lateral raise\tband lateral raise\n'
    'lateral\tband lateral raise\tband lateral raise\town\n'
    'lateral\tband lateral walk\tlateral band walk\town\n'
    'lateral\tbarrier jump lateral\tlateral hurdle jump\n'
    'lateral\tbear crawl lateral\tlateral bear crawl\town\n'
    'lateral\tbent elbow lateral raise\tbent-arm lateral raise\n'
    'lateral\tbottom half lateral raise\tpartial lateral raise\n'
    'lateral\tbound lateral\tlateral bound\town\n'
    'lateral\tbox jump lateral\tlateral hurdle jump\n'
    'lateral\tcable lateral low raise\tcable lateral raise\n'
    'lateral\tcable lateral raise\tcable lateral raise\town\n'
    'lateral\tdrag lateral sled\tlateral sled drag\town\n'
    'lateral\tflexion lateral manual neck\tisometric neck side bend\n'
    'lateral\tflexion lateral neck\tneck side bend\n'
    'lateral\tfull lateral raise range\tfull-range lateral raise\town\n'
    'lateral\tgoblet lateral lunge\tlateral lunge\n'
    'lateral\thop lateral line\tlateral hurdle jump\n'
    'lateral\thurdle jump lateral\tlateral hurdle jump\town\n'
    'lateral\tjump lateral\tlateral hurdle jump\n'
    'lateral\tlateral lunge\tlateral lunge\town\n'
    'lateral\tlateral lunge slider\tslider lateral lunge\n'
    'lateral\tlateral lunge slider\tslider lateral lunge\town\n'
    'lateral\tlateral lying raise\tside-lying lateral raise\n'
    'lateral\tlateral neck raise\tneck side bend\n'
    'lateral\tlateral plank\tside plank\n'
    'lateral\tlateral pull sled\tlateral sled drag\n'
    'lateral\tlateral raise\tlateral raise\n'
    'lateral\tlateral raise\tlateral raise\town\n'
    'lateral\tlateral raise raise\tlateral raise\n'
    'lateral\tlateral raise rear\tdumbbell reverse fly\n'
    'lateral\tlateral raise seated\tseated lateral raise\town\n'
    'lateral\tlateral raise static\tlateral raise hold\n'
    'lateral\tlateral sled walk\tlateral sled drag\n'
    'lateral\tlateral walk\tlateral band walk\n'
    'leaning\tcable lateral leaning raise\tleaning lateral raise\n'
    'leaning\tcurl leaning leg seated\tleaning seated leg curl\town\n'
    'leaning\tlateral leaning raise\tleaning lateral raise\town\n'
    'leap\tfrog leap\trepeated broad jump\n'
    'lengthened\tcurl leg lengthened seated\tleaning seated leg curl\n'
    'leopard\tcrawl leopard\tbear crawl\n'
    'lever\tfront lever\tfront lever hold\n'
    'lever\tfront lever row\tfront lever row\town\n'
    'lever\tfront lever row tuck\tfront lever row\n'
    'lever\tfront lever tuck\tfront lever hold\n'
    'lever\tlever lift\twrist deviation with a lever\n'
    'lever-arm\tlever-arm press standing\tstanding lever press\n'
    'lift\tarch lift\tshort foot\n'
    'lift\tbird dog leg lift\tdonkey kick\n'
    'lift\tedge lift\tedge lift\n'
    'lift\tedge lift\tedge lift\town\n'
    'lift\thack lift\tbehind-the-back deadlift\n'
    'lift\thead lift\tlying head lift hold\n'
    'lifted\tleg lifted plank side top\tside plank with leg raise\n'
    'light\tlight push sled\tsled sprint\n'
    'litter\tcarry litter\tstretcher carry\n'
    'long-lever\tadduction copenhagen long-lever\tCopenhagen adduction\n'
    'long-lever\tbridge glute long-lever\tlong-lever bridge\n'
    'long-lever\tbridge hamstring long-lever\tlong-lever bridge\n'
    'long-lever\tbridge isometric long-lever\tlong-lever bridge hold\n'
    'long-lever\tbridge isometric long-lever\tlong-lever bridge hold\town\n'
    'long-lever\tbridge isometric long-lever one-leg\tsingle-leg long-lever bridge hold\town\n'
    'long-lever\tbridge long-lever\tlong-lever bridge\town\n'
    'long-lever\tbridge long-lever one-leg\tsingle-leg hamstring bridge\n'
    'long-lever\tcopenhagen long-lever\tCopenhagen side plank\n'
    'long-lever\tcopenhagen long-lever plank\tCopenhagen side plank\n'
    'long-lever\tcrunch long-lever\tlong-arm crunch\n'
    'long-lever\tlong-lever plank\tlong-lever plank\town\n'
    'long-lever\tlong-lever squeeze\tball squeeze\n'
    'low-bar\tback low-bar squat\tlow-bar back squat\n'
    'low-bar\tback low-bar squat\tlow-bar back squat\town\n'
    'low-bar\tlow-bar squat\tlow-bar back squat\n'
    'low-to-high\tcable chop low-to-high\tlow-to-high cable chop\town\n'
    'low-to-high\tcable fly low-to-high\tlow-to-high cable fly\town\n'
    'low-to-high\tchop kneeling low-to-high\thalf-kneeling lift\n'
    'low-to-high\tchop low-to-high\tlow-to-high cable chop\n'
    'low-to-high\tcrossover low-to-high\tlow-to-high cable fly\n'
    'low-to-high\tkneeling lift low-to-high\thalf-kneeling lift\n'
    'low-to-high\tlift low-to-high\tlow-to-high cable chop\n'
    'low-to-high\tlow-to-high woodchop\tlow-to-high cable chop\n'
    'lower\tleg lower\tleg lowering\n'
    'lowering\tassisted leg lowering strap\thip flexor lowering\n'
    'lowering\tbench lowering press slow\ttempo bench press\n'
    'lowering\tbench lowering slow\ttempo bench press\n'
    'lowering\tbody leg length lowering\tbody-length leg lowering\town\n'
    'lowering\tbody leg lowering whole\tbody-length leg lowering\n'
    'lowering\tcalf lowering\theel drop\n'
    'lowering\tchin-up lowering\tnegative chin-up\n'
    'lowering\tchin-up lowering slow\tnegative chin-up\n'
    'lowering\tcurl lowering nordic\tlowering-only Nordic curl\n'
    'lowering\tcurl lowering slow\teccentric curl\n'
    'lowering\tdip lowering\tnegative dip\n'
    'lowering\tdip lowering slow\tnegative dip\n'
    'lowering\tdragon flag lowering\tbody-length leg lowering\n'
    'lowering\tflexor hip lowering\thip flexor lowering\town\n'
    'lowering\tleg lowering\tleg lowering\town\n'
    'lowering\tleg lowering lying\thip flexor lowering\n'
    'lowering\tlowering one-leg\thip flexor lowering\n'
    'lowering\tlowering pull-up\tnegative pull-up\n'
    'lowering\tlowering pull-up slow\tnegative pull-up\n'
    'lowering\tlowering push-up slow\ttempo push-up\n'
    'lowering\tlowering two-leg\tleg lowering\n'
    'lowering-only\tchin-up lowering-only\tnegative chin-up\n'
    'lowering-only\tcurl leg lowering-only slider\teccentric slider leg curl\n'
    'lowering-only\tcurl lowering-only nordic\tlowering-only Nordic curl\town\n'
    'lowering-only\tdip lowering-only\tnegative dip\n'
    'lowering-only\thamstring lowering-only slider\teccentric slider leg curl\n'
    'lowering-only\tlowering-only pull-up\tnegative pull-up\n'
    'lp\tlp\tleg press\n'
    'lunge\tback lunge\treverse lunge\n'
    'lunge\tback lunge step\treverse lunge\n'
    'lunge\tcross lunge\tcurtsy lunge\n'
    'lunge\tfront lunge\tforward lunge\n'
    'lunge\tjump lunge\tsplit squat jump\n'
    'lunge\tlunge\tforward lunge\n'
    'lunge\tlunge rear\treverse lunge\n'
    'lunge\tlunge side\tlateral lunge\n'
    'lunge\tlunge sled walk\tsled hip extension walk\n'
    'lunge\tlunge walk\twalking lunge\n'
    'lying\tarm bar lying\tarm bar\n'
    'lying\tband curl leg lying\tband leg curl\n'
    'lying\tband drive knee lying\tlying cable knee drive\t\tband\n'
    'lying\tbench lying row\tseal row\n'
    'lying\tbend lying neck side\tneck side bend\n'
    'lying\tcable curl leg lying\tlying cable leg curl\n'
    'lying\tcable curl leg lying\tlying cable leg curl\town\n'
    'lying\tcable curl lying\tlying cable curl\town\n'
    'lying\tcable drive knee lying\tlying cable knee drive\town\n'
    'lying\tcable fly lying\tlying cable fly\town\n'
    'lying\tchin lying tuck\tchin tuck\n'
    'lying\tcurl leg lying\tlying leg curl\n'
    'lying\tcurl leg lying\tlying leg curl\town\n'
    'lying\theel lying tap\tdead bug heel tap\n'
    'lying\tknee lying tuck\tbent-knee lying leg raise\n'
    'machine\tab crunch machine\tmachine crunch\n'
    'machine\tab machine\tmachine crunch\n'
    'machine\tarm curl machine\tmachine curl\n'
    'machine\tback lower machine\tmachine back extension\n'
    'machine\tbelt machine march squat\tbelt squat march\n'
    'machine\tbelt machine squat\tbelt squat\n'
    'machine\tbend machine neck side\tmachine neck side bend\n'
    'machine\tbend machine neck side\tmachine neck side bend\town\n'
    'machine\tbiceps curl machine\tmachine curl\n'
    'machine\tbridge glute machine\thip thrust machine\n'
    'machine\tcalf donkey machine\tdonkey calf raise\n'
    'machine\tcalf donkey machine raise\tdonkey calf raise\n'
    'machine\tcalf hack machine\thack squat calf raise\n'
    'machine\tcalf hack machine raise\thack squat calf raise\n'
    'machine\tcalf hack machine raise squat\thack squat calf raise\n'
    'machine\tcalf hack machine squat\thack squat calf raise\n'
    'machine\tcalf machine\tstanding calf raise\n'
    'machine\tcalf machine raise\tstanding calf raise\n'
    'machine\tcalf machine raise seated\tseated calf raise\n'
    'machine\tcalf machine seated\tseated calf raise\n'
    'machine\tcalf machine shrug\tmachine shrug\n'
    'machine\tchest decline machine press\tdecline machine press\n'
    'machine\tchest fly machine\tmachine fly\n'
    'machine\tchest incline machine press\tincline machine press\n'
    'machine\tchest machine press\tmachine chest press\n'
    'machine\tchest machine press\tmachine chest press\town\n'
    'machine\tcrunch machine\tmachine crunch\town\n'
    'machine\tcrunch machine seated\tmachine crunch\n'
    'machine\tcurl lat machine\thigh cable curl\n'
    'machine\tcurl leg machine\tlying leg curl\n'
    'machine\tcurl leg machine row\trowing-seat leg curl\n'
    'machine\tcurl leg machine seated\tseated leg curl\n'
    'machine\tcurl machine\tmachine curl\town\n'
    'machine\tcurl machine seated\tmachine curl\n'
    'machine\tdecline machine press\tdecline machine press\n'
    'machine\tdecline machine press\tdecline machine press\town\n'
    'machine\tdelt fly machine rear\tmachine reverse fly\n'
    'machine\tdelt machine rear\tmachine reverse fly\n'
    'machine\tdip machine\tmachine dip\n'
    'machine\tdip machine\tmachine dip\town\n'
    'machine\tdip machine seated\tmachine dip\n'
    'machine\tflexion hip machine\tmachine hip flexion\n'
    'machine\tflexion hip machine\tmachine hip flexion\town\n'
    'machine\tflexion lateral machine neck\tmachine neck side bend\n'
    'machine\tflexion machine neck\tmachine neck flexion\n'
    'machine\tflexion machine neck\tmachine neck flexion\town\n'
    'machine\tflexion machine trunk\tmachine crunch\n'
    'machine\tflexor hip machine\tmachine hip flexion\n'
    'machine\tfly machine\tmachine fly\town\n'
    'machine\tfly machine pec\tmachine fly\n'
    'machine\tfly machine seated\tmachine fly\n'
    'machine\tfront machine neck\tmachine neck flexion\n'
    'machine\tglute machine\tmachine glute kickback\n'
    'machine\thack machine squat\thack squat\n'
    'machine\thigh machine row\thigh row\n'
    'machine\thip machine thrust\thip thrust machine\n'
    'machine\thip machine thrust\thip thrust machine\town\n'
    'machine\tincline machine press\tincline machine press\n'
    'machine\tincline machine press\tincline machine press\town\n'
    'machine\tkayak machine\tkayak ergometer\n'
    'machine\tkick machine rear\tmachine glute kickback\n'
    'machine\tlateral machine raise\tmachine lateral raise\n'
    'machine\tlateral machine raise\tmachine lateral raise\town\n'
    'machine\tleg machine press\tleg press\n'
    'machine\tlever machine squat\tmachine squat\n'
    'machine\tmachine neck\tmachine neck flexion\n'
    'machine\tmachine neck rear\tmachine neck extension\n'
    'machine\tmachine press seated\tmachine chest press\n'
    'machine\tmachine raise side\tmachine lateral raise\n'
    'machine\tmachine row\tmachine row\n'
    'machine\tmachine row\tmachine row\town\n'
    'machine\tmachine row\trowing ergometer\n'
    'machine\tmachine row seated\tmachine row\n'
    'machine\tmachine row t-bar\tchest-supported T-bar row\n'
    'machine\tmachine shrug\tmachine shrug\n'
    'machine\tmachine shrug\tmachine shrug\town\n'
    'machine\tmachine sissy squat\tsissy squat\n'
    'machine\tmachine ski\tski ergometer\n'
    'machine\tmachine skiing\tski ergometer\n'
    'machine\tmachine squat\tmachine squat\town\n'
    'machine\tmachine stair\tloaded stair climb\n'
    'machine\tmachine step\tstair climber\n'
    'machine\tmachine twist\tmachine trunk rotation\n'
    'maker\tmaker man\tman-maker\town\n'
    'manual\tcurl leg manual\tmanual leg curl\town\n'
    'march\tband lying march\tband hip flexion\n'
    'march\tband march\tband hip flexion\n'
    'march\tband march psoa\tband hip flexion\n'
    'march\tbelt march\tbelt squat march\n'
    'march\thigh knee march\tstanding knee raise\n'
    'march\tmarch pack\truck\n'
    'march\tmarch psoa\tband hip flexion\n'
    'march\tmarch ruck\truck\n'
    'march\tmarch sled\tsled push\n'
    'march\tmarch spot\tstanding knee raise\n'
    'marching\tbridge glute marching\tmarching glute bridge\town\n'
    'marching\tbridge marching\tmarching glute bridge\n'
    'marching\tcarry farmer marching\tmarching carry\n'
    'marching\tcarry marching\tmarching carry\town\n'
    'marching\tmarching place\tstanding knee raise\n'
    'marching\tmarching seated\tseated march\n'
    'marching\tmarching spot\tstanding knee raise\n'
    'medicine-ball\tback medicine-ball overhead throw\tbackward overhead throw\n'
    'medicine-ball\tbackward medicine-ball overhead throw\tbackward overhead throw\n'
    'medicine-ball\tbackward medicine-ball overhead toss\tbackward overhead throw\n'
    'medicine-ball\tbackward medicine-ball throw\tbackward overhead throw\n'
    'medicine-ball\tbench medicine-ball throw\tlying medicine ball chest throw\n'
    'medicine-ball\tchest kneeling medicine-ball pass\tkneeling medicine ball chest pass\town\n'
    'medicine-ball\tchest lying medicine-ball pass\tlying medicine ball chest throw\n'
    'medicine-ball\tchest lying medicine-ball throw\tlying medicine ball chest throw\town\n'
    'medicine-ball\tchest medicine-ball pass\tmedicine ball chest pass\n'
    'medicine-ball\tchest medicine-ball pass\tmedicine ball chest pass\town\n'
    'medicine-ball\tchest medicine-ball pass seated\tseated medicine ball chest pass\town\n'
    'medicine-ball\tchest medicine-ball pass supine\tlying medicine ball chest throw\n'
    'medicine-ball\tchest medicine-ball throw\tmedicine ball chest pass\n'
    'medicine-ball\tdribble medicine-ball wall\toverhead wall dribble\n'
    'medicine-ball\tforward medicine-ball scoop\tforward scoop throw\n'
    'medicine-ball\thalf-kneeling medicine-ball rotation throw\thalf-kneeling rotational throw\n'
    'medicine-ball\thalf-kneeling medicine-ball throw\thalf-kneeling rotational throw\n'
    'medicine-ball\tkneeling medicine-ball slam\tkneeling medicine ball slam\town\n'
    'medicine-ball\tlunge medicine-ball rotational\tlunge with rotation\n'
    'medicine-ball\tmedicine-ball one-arm put\tone-arm medicine ball put\town\n'
    'medicine-ball\tmedicine-ball overhead pass\tmedicine ball overhead throw\n'
    'medicine-ball\tmedicine-ball overhead slam\tmedicine ball slam\n'
    'medicine-ball\tmedicine-ball overhead step throw\tstep-in overhead throw\n'
    'medicine-ball\tmedicine-ball overhead throw\tmedicine ball overhead throw\n'
    'medicine-ball\tmedicine-ball overhead throw\tmedicine ball overhead throw\town\n'
    'medicine-ball\tmedicine-ball pullover throw\tmedicine ball pullover throw\town\n'
    'medicine-ball\tmedicine-ball punch throw\tone-arm medicine ball put\n'
    'medicine-ball\tmedicine-ball push throw\tmedicine ball push throw\town\n'
    'medicine-ball\tmedicine-ball put\tone-arm medicine ball put\n'
    'medicine-ball\tmedicine-ball put shot\tone-arm medicine ball put\n'
    'medicine-ball\tmedicine-ball rotation throw\trotational medicine ball throw\n'
    'medicine-ball\tmedicine-ball rotational slam\trotational medicine ball slam\town\n'
    'medicine-ball\tmedicine-ball rotational throw\trotational medicine ball throw\n'
    'medicine-ball\tmedicine-ball rotational throw\trotational medicine ball throw\town\n'
    'medicine-ball\tmedicine-ball scoop toss\tscoop throw to the side\n'
    'medicine-ball\tmedicine-ball seated side throw\tseated rotational throw\n'
    'medicine-ball\tmedicine-ball seated throw\tseated medicine ball chest pass\n'
    'medicine-ball\tmedicine-ball side slam\trotational medicine ball slam\n'
    'medicine-ball\tmedicine-ball side toss\trotational medicine ball throw\n'
    'medicine-ball\tmedicine-ball slam\tmedicine ball slam\n'
    'medicine-ball\tmedicine-ball slam\tmedicine ball slam\town\n'
    'medicine-ball\tmedicine-ball squat throw\tmedicine ball squat throw\town\n'
    'medicine-ball\tmedicine-ball squat throw\twall ball squat\n'
    'medicine-ball\tmedicine-ball supine throw\tlying medicine ball chest throw\n'
    'medicine-ball\tmedicine-ball tap wall\tmedicine ball wall taps\town\n'
    'medicine-ball\tmedicine-ball throw vertical\tmedicine ball squat throw\n'
    'medicine-ball\tmedicine-ball thruster\twall ball squat\n'
    'medicine-ball\tmedicine-ball twist\tRussian twist\t\tmedicine ball\n'
    'medicine-ball\tmedicine-ball woodchop\tdumbbell woodchop\t\tmedicine ball\n'
    'mid-thigh\tclean mid-thigh pull\tmid-thigh pull\n'
    'mid-thigh\tdynamic mid-thigh pull\tmid-thigh pull\n'
    'mid-thigh\tisometric mid-thigh pull\tisometric mid-thigh pull\n'
    'mid-thigh\tisometric mid-thigh pull\tisometric mid-thigh pull\town\n'
    'mid-thigh\tmid-thigh pull\tmid-thigh pull\town\n'
    'military\tmilitary press\toverhead press\n'
    'military\tmilitary press seated\tseated barbell shoulder press\n'
    'mixed-grip\tcarry mixed-grip\tmixed carry\town\n'
    'mixed-grip\tchin-up mixed-grip\tmixed-grip pull-up\n'
    'mixed-grip\tmixed-grip pull-up\tmixed-grip pull-up\n'
    'mixed-grip\tmixed-grip pull-up\tmixed-grip pull-up\town\n'
    'modified\tmodified push-up\tknee push-up\n'
    'monster\tband monster walk\tmonster walk\n'
    'monster\tmonster walk\tmonster walk\town\n'
    'morning\tband good morning\tband good morning\n'
    'morning\tband good morning\tband good morning\town\n'
    'morning\tbarbell good morning\tgood morning\n'
    'morning\tbarbell good morning seated\tseated good morning\n'
    'morning\tgood morning\tgood morning\n'
    'morning\tgood morning\tgood morning\town\n'
    'morning\tgood morning seated\tseated good morning\town\n'
    'mountain\tclimber mountain\tmountain climber\town\n'
    'mountain\tclimber mountain slider\tslider knee tuck\n'
    'multidirectional\tand hop multidirectional stick\thop and stick\n'
    'multiple\tbroad jump multiple\trepeated broad jump\n'
    'muscle\tclean hang muscle\tmuscle clean\n'
    'muscle\tclean muscle\tmuscle clean\town\n'
    'muscle-up\tbar muscle-up\tmuscle-up\n'
    'muscle-up\tmuscle-up\tmuscle-up\town\n'
    'muscle-up\tmuscle-up ring\tring muscle-up\town\n'
    'muscle-up\tmuscle-up ring strict\tring muscle-up\n'
    'muscle-up\tmuscle-up strict\tmuscle-up\n'
    'neck\tcurl neck\tneck flexion\n'
    'neck\tneck nod\tchin tuck\n'
    'negative\tchin-up negative\tnegative chin-up\town\n'
    'negative\tcurl negative\teccentric curl\n'
    'negative\tcurl negative nordic\tlowering-only Nordic curl\n'
    'negative\tdip negative\tnegative dip\town\n'
    'negative\tjumping negative pull-up\tnegative pull-up\n'
    'negative\tnegative pull-up\tnegative pull-up\town\n'
    'negative\tnegative push-up\ttempo push-up\n'
    'neutral-grip\tbench dumbbell neutral-grip\tneutral-grip dumbbell bench press\n'
    'neutral-grip\tbench dumbbell neutral-grip press\tneutral-grip dumbbell bench press\town\n'
    'neutral-grip\tchin-up neutral-grip\tneutral-grip pull-up\n'
    'neutral-grip\tcurl neutral-grip\thammer curl\n'
    'neutral-grip\tcurl neutral-grip preacher\tpreacher hammer curl\n'
    'neutral-grip\tdumbbell neutral-grip press\tneutral-grip dumbbell bench press\n'
    'neutral-grip\tdumbbell neutral-grip press shoulder\tneutral-grip dumbbell shoulder press\town\n'
    'neutral-grip\tlat neutral-grip pulldown\tneutral-grip lat pulldown\town\n'
    'neutral-grip\tneutral-grip overhead press\tneutral-grip dumbbell shoulder press\n'
    'neutral-grip\tneutral-grip press shoulder\tneutral-grip dumbbell shoulder press\n'
    'neutral-grip\tneutral-grip pu\tneutral-grip pull-up\n'
    'neutral-grip\tneutral-grip pull-up\tneutral-grip pull-up\n'
    'neutral-grip\tneutral-grip pull-up\tneutral-grip pull-up\town\n'
    'neutral-grip\tneutral-grip pull-up weighted\tweighted neutral-grip pull-up\n'
    'neutral-grip\tneutral-grip pull-up weighted\tweighted neutral-grip pull-up\town\n'
    'neutral-grip\tneutral-grip pulldown\tneutral-grip lat pulldown\n'
    'no-money\tband no-money\tdouble band external rotation\n'
    'no-money\tno-money\tdouble band external rotation\n'
    'nordic\tband curl nordic\tassisted Nordic curl\n'
    'nordic\tbent curl hip nordic\trazor curl\n'
    'nordic\tcurl drop nordic\tlowering-only Nordic curl\n'
    'nordic\tcurl fall nordic\tlowering-only Nordic curl\n'
    'nordic\tcurl flexed hip nordic\trazor curl\n'
    'nordic\tcurl full nordic\tweighted Nordic curl\n'
    'nordic\tcurl lower nordic\tlowering-only Nordic curl\n'
    'nordic\tcurl nordic\tNordic curl\n'
    'nordic\tcurl nordic\tNordic curl\town\n'
    'nordic\tcurl nordic plate\tweighted Nordic curl\n'
    'object\tcarry object odd\tsandbag carry\n'
    'oblique\tcrunch oblique\tside crunch\n'
    'oblique\thang knee oblique raise\thanging oblique raise\n'
    'oblique\thang oblique raise\thanging oblique raise\town\n'
    'oblique\toblique raise\tside bend on the back extension bench\n'
    'oblique\toblique sit-up\tsit-up with rotation\n'
    'off-chest\tbench off-chest paused\tbench press stopped above the chest\n'
    'off-chest\tbench off-chest paused press\tbench press stopped above the chest\n'
    'off-chest\tbench off-chest press stopped\tbench press stopped above the chest\town\n'
    'off-chest\tbench off-chest stopped\tbench press stopped above the chest\n'
    "offset\tcarry farmer offset\toffset farmer's carry\town\n"
    "offset\tcarry load offset\toffset farmer's carry\n"
    'offset\tcarry offset\tsuitcase carry\n'
    'offset\tcarry offset rack\tone-arm rack carry\n'
    "offset\tfarmer offset walk\toffset farmer's carry\n"
    'one-arm\tand clean one-arm press\tkettlebell clean and press\n'
    'one-arm\tcable chest one-arm press\tone-arm cable press\n'
    'one-arm\tcable curl low one-arm\tone-arm cable curl\n'
    'one-arm\tcable curl one-arm\tone-arm cable curl\n'
    'one-arm\tcable curl one-arm\tone-arm cable curl\town\n'
    'one-arm\tcable delt fly one-arm rear\tone-arm cable reverse fly\n'
    'one-arm\tcable fly one-arm\tone-arm cable fly\n'
    'one-arm\tcable fly one-arm\tone-arm cable fly\town\n'
    'one-arm\tcable lateral one-arm raise\tcable lateral raise\n'
    'one-arm\tcable one-arm press\tone-arm cable press\n'
    'one-arm\tcable one-arm press\tone-arm cable press\town\n'
    'one-arm\tcable one-arm row\tone-arm cable row\n'
    'one-arm\tcable one-arm row\tone-arm cable row\town\n'
    'one-arm\tcable one-arm row seated\tone-arm cable row\n'
    'one-arm\tcarry farmer one-arm\tsuitcase carry\n'
    'one-arm\tcarry one-arm rack\tone-arm rack carry\n'
    'one-arm\tcarry one-arm rack\tone-arm rack carry\town\n'
    'one-arm\tchest machine one-arm press\tone-arm machine chest press\n'
    'one-arm\tchest machine one-arm press\tone-arm machine chest press\town\n'
    'one-arm\tchin-up one-arm\tone-arm chin-up\n'
    'one-arm\tchin-up one-arm\tone-arm chin-up\town\n'
    'one-arm\tclean one-arm\tkettlebell clean\n'
    'one-arm\tcrusher one-arm skull\tone-arm lying triceps extension\n'
    'one-arm\tdribble one-arm wall\toverhead wall dribble\n'
    'one-arm\tfront one-arm raise\talternating front raise\n'
    'one-arm\thang one-arm\tone-arm hang\n'
    'one-arm\thang one-arm\tone-arm hang\town\n'
    'one-arm\tlateral one-arm raise\tone-arm dumbbell lateral raise\n'
    'one-arm\tlift one-arm pinch\tpinch block lift\n'
    'one-arm\tmachine one-arm row\tone-arm machine row\n'
    'one-arm\tmachine one-arm row\tone-arm machine row\town\n'
    'one-arm\tone-arm plank\tone-arm plank\n'
    'one-arm\tone-arm plank\tone-arm plank\town\n'
    'one-arm\tone-arm ring row\tone-arm suspension row\n'
    'one-arm\tone-arm row\tone-arm dumbbell row\n'
    'one-arm\tone-arm row seated\tone-arm cable row\n'
    'one-arm\tone-arm row t-bar\tone-arm landmine row\n'
    'one-arm\tone-arm snatch\tkettlebell snatch\n'
    'one-arm\tone-arm swing\tsingle-arm kettlebell swing\n'
    'one-leg\tand drop one-leg stick\tsingle-leg landing\n'
    'one-leg\tand hop one-leg stick\thop and stick\n'
    'one-leg\tankle hop one-leg\tsingle-leg pogo\n'
    'one-leg\tbalance one-leg\tsingle-leg balance\n'
    'one-leg\tbalance one-leg\tsingle-leg balance\town\n'
    'one-leg\tball curl leg one-leg\tsingle-leg ball leg curl\town\n'
    'one-leg\tball curl one-leg\tsingle-leg ball leg curl\n'
    'one-leg\tbench hip one-leg thrust\tsingle-leg hip thrust\n'
    'one-leg\tbench one-leg squat\tsingle-leg box squat\n'
    'one-leg\tboard decline one-leg squat\tsingle-leg decline squat\n'
    'one-leg\tbox bridge one-leg\tsingle-leg hamstring bridge\n'
    'one-leg\tbox hop one-leg\tsingle-leg box jump\n'
    'one-leg\tbox jump one-leg\tsingle-leg box jump\n'
    'one-leg\tbox jump one-leg\tsingle-leg box jump\town\n'
    'one-leg\tbox one-leg squat\tsingle-leg box squat\n'
    'one-leg\tbox one-leg squat\tsingle-leg box squat\town\n'
    'one-leg\tbox one-leg squat\tsingle-leg squat\n'
    'one-leg\tbridge glute one-leg\tsingle-leg glute bridge\n'
    'one-leg\tbridge glute one-leg\tsingle-leg glute bridge\town\n'
    'one-leg\tbridge hip one-leg\tsingle-leg glute bridge\n'
    'one-leg\tbridge one-leg\tsingle-leg glute bridge\n'
    'one-leg\tbroad jump one-leg\tsingle-leg hop\n'
    'one-leg\tcalf leg one-leg press\tsingle-leg leg press calf raise\n'
    'one-leg\tcalf leg one-leg press raise\tsingle-leg leg press calf raise\town\n'
    'one-leg\tcalf one-leg\tsingle-leg calf raise\n'
    'one-leg\tcalf one-leg press\tsingle-leg leg press calf raise\n'
    'one-leg\tcalf one-leg raise\tsingle-leg calf raise\n'
    'one-leg\tcalf one-leg raise\tsingle-leg calf raise\town\n'
    'one-leg\tcalf one-leg raise seated\tsingle-leg seated calf raise\n'
    'one-leg\tcalf one-leg raise seated\tsingle-leg seated calf raise\town\n'
    'one-leg\tcalf one-leg raise soleu\tsingle-leg bent-knee calf raise\n'
    'one-leg\tcalf one-leg seated\tsingle-leg seated calf raise\n'
    'one-leg\tcalf one-leg soleu\tsingle-leg bent-knee calf raise\n'
    'one-leg\tcurl leg lying one-leg\tsingle-leg lying leg curl\n'
    'one-leg\tcurl leg lying one-leg\tsingle-leg lying leg curl\town\n'
    'one-leg\tcurl leg one-leg\tsingle-leg lying leg curl\n'
    'one-leg\tcurl leg one-leg prone\tsingle-leg lying leg curl\n'
    'one-leg\tcurl leg one-leg seated\tsingle-leg seated leg curl\n'
    'one-leg\tcurl leg one-leg seated\tsingle-leg seated leg curl\town\n'
    'one-leg\tcurl leg one-leg slider\tsingle-leg slider leg curl\n'
    'one-leg\tcurl leg one-leg slider\tsingle-leg slider leg curl\town\n'
    'one-leg\tdecline one-leg squat\tsingle-leg decline squat\n'
    'one-leg\tdecline one-leg squat\tsingle-leg decline squat\town\n'
    'one-leg\tdepth drop one-leg\tsingle-leg landing\n'
    'one-leg\tdepth jump one-leg\tsingle-leg drop jump\n'
    'one-leg\tdrop heel one-leg\theel drop\n'
    'one-leg\tdrop jump one-leg\tsingle-leg drop jump\n'
    'one-leg\tdrop jump one-leg\tsingle-leg drop jump\town\n'
    'one-leg\tdrop landing one-leg\tsingle-leg landing\n'
    'one-leg\tfoot one-leg short\tshort foot\n'
    'one-leg\tforward hop one-leg\tsingle-leg hop\n'
    'one-leg\thack one-leg squat\tsingle-leg hack squat\n'
    'one-leg\thack one-leg squat\tsingle-leg hack squat\town\n'
    'one-leg\theel one-leg raise\tsingle-leg calf raise\n'
    'one-leg\theel one-leg raise seated\tsingle-leg seated calf raise\n'
    'one-leg\thinge hip one-leg\tbodyweight single-leg Romanian deadlift\n'
    'one-leg\thinge one-leg\tbodyweight single-leg Romanian deadlift\n'
    'one-leg\thip one-leg thrust\tsingle-leg hip thrust\n'
    'one-leg\thip one-leg thrust\tsingle-leg hip thrust\town\n'
    'one-leg\thop hurdle one-leg\ttriple hop\n'
    'one-leg\thop one-leg\tsingle-leg hop\n'
    'one-leg\thop one-leg\tsingle-leg hop\town\n'
    'one-leg\thop one-leg pogo\tsingle-leg pogo\n'
    'one-leg\thop one-leg triple\ttriple hop\n'
    'one-leg\tjump one-leg\tsingle-leg hop\n'
    'one-leg\tjump one-leg pogo\tsingle-leg pogo\n'
    'one-leg\tlanding one-leg\tsingle-leg landing\town\n'
    'one-leg\tleg one-leg press\tsingle-leg leg press\n'
    'one-leg\tleg one-leg press\tsingle-leg leg press\town\n'
    'one-leg\tlying one-leg raise\tsupine straight-leg raise\n'
    'one-leg\tone-leg pistol squat\tpistol squat\n'
    'one-leg\tone-leg plank\tplank with leg lift\n'
    'one-leg\tone-leg pogo\tsingle-leg pogo\n'
    'one-leg\tone-leg pogo\tsingle-leg pogo\town\n'
    'one-leg\tone-leg press\tsingle-leg leg press\n'
    'one-leg\tone-leg press wall\twall press abduction hold\n'
    'one-leg\tone-leg raise soleu\tsingle-leg bent-knee calf raise\n'
    'one-leg\tone-leg reach\tbodyweight single-leg Romanian deadlift\n'
    'one-leg\tone-leg shrimp squat\tshrimp squat\n'
    'one-leg\tone-leg sit wall\tsingle-leg wall sit\n'
    'one-leg\tone-leg sit wall\tsingle-leg wall sit\town\n'
    'one-leg\tone-leg squat\tpistol squat\n'
    'one-leg\tone-leg squat\tsingle-leg squat\n'
    'one-leg\tone-leg squat\tsingle-leg squat\town\n'
    'one-leg\tone-leg squat wall\tsingle-leg wall sit\n'
    'one-leg\tone-leg stance\tsingle-leg balance\n'
    'one-leg\tone-leg stand\tsingle-leg balance\n'
    'one-side\tcarry one-side\tsuitcase carry\n'
    'one-side\tchest one-side press\tone-arm machine chest press\n'
    'one-side\tcurl leg one-side\tsingle-leg lying leg curl\n'
    'one-side\tcurl leg one-side seated\tsingle-leg seated leg curl\n'
    'one-side\tleg one-side press\tsingle-leg leg press\n'
    'one-side\tmachine one-side row\tone-arm machine row\n'
    'only\tbird dog leg only\tquadruped leg reach\n'
    'opening\tfinger opening\tfinger extension with band\n'
    'opposite-arm\tand leg opposite-arm raise\tprone alternating arm and leg raise\n'
    'outside\tcircle outside\trope outward circles\n'
    'outward\tcircle outward rope\trope outward circles\town\n'
    'overhand\tcable curl overhand\treverse cable curl\n'
    'overhand\tcurl overhand\treverse curl\n'
    'overhand\tcurl overhand wrist\treverse wrist curl\n'
    'overhand\thand overhand pull rope\trope sled pull\n'
    'overhand\thand overhand pull sled\trope sled pull\n'
    'overhand\thand overhand rope sled\trope sled pull\n'
    'overhand\toverhand pull-up\tpull-up\n'
    'overhead\tarm crunch overhead\tlong-arm crunch\n'
    'overhead\tback overhead throw\tbackward overhead throw\n'
    'overhead\tback overhead toss\tbackward overhead throw\n'
    'overhead\tbackward overhead throw\tbackward overhead throw\n'
    'overhead\tbackward overhead throw\tbackward overhead throw\town\n'
    'overhead\tbackward overhead toss\tbackward overhead throw\n'
    'overhead\tband bug dead overhead\tband dead bug\n'
    'overhead\tband overhead press\tband overhead press\n'
    'overhead\tband overhead press\tband overhead press\town\n'
    'overhead\tbarbell carry overhead\toverhead carry\t\tbarbell\n'
    'overhead\tbarbell overhead press\toverhead press\n'
    'overhead\tbarbell overhead press seated\tseated barbell shoulder press\n'
    'overhead\tbarbell overhead shrug\toverhead shrug\n'
    'overhead\tbarbell overhead squat\toverhead squat\n'
    'overhead\tbend one-arm overhead side\toverhead side bend\n'
    'overhead\tbend overhead side\toverhead side bend\town\n'
    'overhead\tcable curl overhead\thigh cable curl\n'
    'overhead\tcable overhead press\tcable shoulder press\n'
    'overhead\tcarry cross overhead\tmixed carry\n'
    'overhead\tcarry double overhead\toverhead carry\n'
    "overhead\tcarry one-arm overhead\twaiter's walk\n"
    'overhead\tcarry overhead\toverhead carry\town\n'
    'overhead\tcarry overhead two-arm\toverhead carry\n'
    'overhead\tdribble overhead wall\toverhead wall dribble\town\n'
    'overhead\tdumbbell one-arm overhead press\tone-arm dumbbell overhead press\n'
    'overhead\tdumbbell one-arm overhead press\tone-arm dumbbell overhead press\town\n'
    'overhead\tdumbbell overhead press\tstanding dumbbell shoulder press\n'
    'overhead\tdumbbell overhead press seated\tseated dumbbell shoulder press\n'
    'overhead\tfloor overhead press seated\tseated floor overhead press\town\n'
    'overhead\tlandmine overhead press\tlandmine press\n'
    'overhead\tlateral overhead raise\tfull-range lateral raise\n'
    'overhead\tlateral overhead raise thumb up\tfull-range lateral raise\n'
    'overhead\tlunge overhead\toverhead walking lunge\n'
    'overhead\tlunge overhead plate\toverhead walking lunge\n'
    'overhead\tlunge overhead plate walking\toverhead walking lunge\n'
    'overhead\tlunge overhead walking\toverhead walking lunge\town\n'
    'overhead\tlying overhead throw\tmedicine ball pullover throw\n'
    'overhead\tmachine overhead press\tmachine shoulder press\n'
    'overhead\tmachine overhead triceps\tmachine overhead triceps extension\n'
    'overhead\tout overhead press\tanti-rotation press overhead\n'
    'overhead\toverhead partial press\tpin overhead press\n'
    'overhead\toverhead paused press\tpaused overhead press\n'
    'overhead\toverhead paused press\tpaused overhead press\town\n'
    'overhead\toverhead pin press\tpin overhead press\n'
    'overhead\toverhead pin press\tpin overhead press\town\n'
    'overhead\toverhead press\toverhead press\n'
    'overhead\toverhead press\toverhead press\town\n'
    'overhead\toverhead press sandbag\tsandbag overhead press\town\n'
    'overhead\toverhead press seated\tseated barbell shoulder press\n'
    'overhead\toverhead reverse throw\tbackward overhead throw\n'
    'overhead\toverhead shrug\toverhead shrug\town\n'
    'overhead\toverhead slam\tmedicine ball slam\n'
    'overhead\toverhead squat\toverhead squat\n'
    'overhead\toverhead squat\toverhead squat\town\n'
    'overhead\toverhead step throw\tstep-in overhead throw\town\n'
    'overhead\toverhead supine throw\tmedicine ball pullover throw\n'
    'overhead\toverhead swing\toverhead kettlebell swing\n'
    'overhead\toverhead throw\tmedicine ball overhead throw\n'
    'overhead\toverhead throw two-arm\tmedicine ball overhead throw\n'
    'overhead\toverhead walk\toverhead carry\n'
    'overspeed\tjump overspeed\tband-assisted jump\n'
    'paddling\tmachine paddling\tkayak ergometer\n'
    'panda\tpanda pull\tclean high pull\n'
    'parallel\tparallel squat\tback squat\n'
    'parallel-bar\tdip parallel-bar\tdip\n'
    'parallel-bar\tdip parallel-bar weighted\tweighted dip\n'
    'parallel-bar\tisometric parallel-bar\tdip support hold\n'
    'parallel-bar\tl-sit parallel-bar\tL-sit\n'
    'partial\tbarbell curl partial range\tpartial-range barbell curl\town\n'
    'partial\tbench partial\tboard bench press\n'
    'partial\tbench partial press\tboard bench press\n'
    'partial\tcurl-up partial\tcurl-up\n'
    'partial\tget-up partial\thalf get-up\n'
    'partial\tlateral partial raise\tpartial lateral raise\n'
    'partial\tlateral partial raise\tpartial lateral raise\town\n'
    'partial\tpartial squat\tquarter squat\n'
    "partner\tcarry partner\tfireman's carry\n"
    'partner\tcurl held lower nordic partner\tlowering-only Nordic curl\n'
    'partner\tcurl leg partner\tmanual leg curl\n'
    'partner\tdown leg partner throw\tpartner leg throw\n'
    'partner\tleg partner throw\tpartner leg throw\town\n'
    'pass\tback back ball pass\tmedicine ball wall taps\n'
    'passive\thang passive\tdead hang\n'
    'patellar\tpatellar squat tendon\tsingle-leg decline squat\n'
    'paused\t3s bench paused\tbench press with a long pause\n'
    'paused\t3s bench paused press\tbench press with a long pause\n'
    'paused\tback paused squat\tpaused squat\n'
    'paused\tbench long paused\tbench press with a long pause\n'
    'paused\tbench long paused press\tbench press with a long pause\n'
    'paused\tbench long paused press\tbench press with a long pause\town\n'
    'paused\tbench paused\tpaused bench press\n'
    'paused\tbench paused press\tpaused bench press\n'
    'paused\tbench paused press\tpaused bench press\town\n'
    'paused\tbench paused press speed\tpaused bench press\n'
    'paused\tbench paused press tempo\tpaused bench press\n'
    'paused\tbench paused speed\tpaused bench press\n'
    'paused\tbench paused tempo\tpaused bench press\n'
    'paused\tjump paused squat\tsquat jump\n'
    'paused\tpaused row\ttempo bent-over row\n'
    'paused\tpaused squat\tpaused squat\n'
    'paused\tpaused squat\tpaused squat\town\n'
    'pec\tfly pec\tdumbbell fly\n'
    'pelvic\tcurl pelvic\treverse crunch\n'
    'pelvic\tdrop pelvic\tpelvic drop\town\n'
    'pelvic\thike pelvic\tpelvic drop\n'
    'pelvic\thitch pelvic\tpelvic drop\n'
    'pendlay\tpendlay row\tdead-stop row\n'
    'pendulum\tmachine pendulum squat\tpendulum squat\n'
    'pendulum\tpendulum squat\tpendulum squat\town\n'
    'penguin\tcrunch penguin\theel touch crunch\n'
    'peroneal\tband eversion peroneal\tband ankle eversion\n'
    'peroneal\tband peroneal work\tband ankle eversion\n'
    'pick\tedge pick up\tedge lift\n'
    "piggyback\tcarry piggyback\tfireman's carry\n"
    'pike\tball pike\tstability-ball pike\n'
    'pike\tleg lift pike\tseated straight-leg lift\n'
    'pike\tpike pu\tpike push-up\n'
    'pinch\tblock lift pinch\tpinch block lift\n'
    'pinch\tblock lift pinch\tpinch block lift\town\n'
    'pinch\tcarry pinch\tpinch carry\town\n'
    'pinch\thub lift pinch\tpinch block lift\n'
    'pinch\tlift pinch\tpinch block lift\n'
    'pinwheel\tcurl pinwheel\tcross-body hammer curl\n'
    'pistol\tbox pistol\tsingle-leg box squat\n'
    'pistol\tbox pistol\tsingle-leg squat\n'
    'pistol\tbox pistol squat\tsingle-leg box squat\n'
    'pistol\tpistol\tpistol squat\n'
    'pistol\tpistol squat\tpistol squat\town\n'
    'place\tjump place tuck\ttuck jump\n'
    'place\tmarch place\tstanding knee raise\n'
    'plank\tand plank row side\tside plank row\n'
    'plank\tarm lift plank\tplank with arm reach\n'
    'plank\tback plank\treverse plank\n'
    'plank\tball plank\tstability-ball plank\n'
    'plank\tband plank row side\tside plank row\t\tband\n'
    'plank\tbear leg lift plank\tbear hold march\n'
    'plank\tbear march plank\tbear hold march\n'
    'plank\tbear plank\tbear hold\n'
    'plank\tbench plank\tincline plank\n'
    'plank\tcable plank row side\tside plank row\n'
    'plank\tdip hip plank\tplank with hip dips\n'
    'plank\tdip hip plank\tplank with hip dips\town\n'
    'plank\tdip plank side\tside plank dip\town\n'
    'plank\tdown plank up\tplank up-down\n'
    'plank\tdown plank up\tplank up-down\town\n'
    'plank\tdrag plank\tplank drag\town\n'
    'plank\tdrive knee plank\tmountain climber\n'
    'plank\telbow plank\tplank\n'
    'plank\tfront plank\tplank\n'
    'plank\thalf plank\tknee plank\n'
    'plank\thalf plank side\tknee side plank\n'
    'plank\thand plank\thigh plank\n'
    'plank\thand plank side\tstraight-arm side plank\n'
    'plank\thard plank\tlong-lever plank\n'
    'plank\thigh plank\thigh plank\town\n'
    'plank\thigh plank side\tstraight-arm side plank\n'
    'plank\thip lift plank side\tside plank dip\n'
    'plank\tknee plank\tknee plank\town\n'
    'plank\tknee plank side\tknee side plank\town\n'
    'plank\tleg lift plank\tplank with leg lift\town\n'
    'plank\tleg lift plank side\tside plank with leg raise\n'
    'plank\tlow plank\tplank\n'
    'plank\tplank\tplank\town\n'
    'plank\tplank roll\trolling plank\n'
    'plank\tplank row\tplank row\town\n'
    'plank\tplank row side\tside plank row\town\n'
    'plank\tplank saw\tbody saw\n'
    'plank\tplank side\tside plank\town\n'
    'plank\tplank star\tside plank with leg raise\n'
    'plank\tplank tap\tplank shoulder tap\n'
    'plantarflexion\tankle band plantarflexion\tband plantarflexion\n'
    'plantarflexion\tband plantarflexion\tband plantarflexion\n'
    'plantarflexion\tband plantarflexion\tband plantarflexion\town\n'
    'plantarflexion\tisometric maximal plantarflexion\tisometric plantarflexion push\n'
    'plantarflexion\tisometric plantarflexion push\tisometric plantarflexion push\town\n'
    'plate\tbend neck plate side\tneck side bend\n'
    'plate\tcarry hug plate\tplate carry\n'
    'plate\tcarry pinch plate\tpinch carry\n'
    'plate\tcarry plate\tplate carry\town\n'
    'plate\tcurl neck plate\tneck flexion\n'
    'plate\thalo plate\tkettlebell halo\t\tplate\n'
    'plate\tpinch plate\tplate pinch\town\n'
    'plate\tpinch plate walk\tpinch carry\n'
    'plate\tplank plate\tweighted plank\n'
    'plate-loaded\tcurl plate-loaded preacher\tmachine preacher curl\n'
    'plate-loaded\tplate-loaded pulldown\tplate-loaded pulldown\town\n'
    'plate-loaded\tplate-loaded row\tmachine row\n'
    'plyometric\tplyometric push-up\tplyometric push-up\n'
    'plyometric\tplyometric push-up\tplyometric push-up\town\n'
    'plyometric\tplyometric step-up\texplosive step-up\n'
    'pogo\thop pogo\tpogo jump\n'
    'pogo\tjump pogo\tpogo jump\town\n'
    'pogo\tpogo\tpogo jump\n'
    'point\t3 point row\tone-arm dumbbell row\n'
    'point\tplank point two\tplank with arm reach\n'
    'pole\tpole row\tdoorway row\n'
    'portable\tedge lift portable\tedge lift\n'
    'pose\tboat pose\tV-sit hold\n'
    'position\tbear drag position sandbag\tbear crawl with drag\n'
    'position\thollow position\thollow hold\n'
    'position\tplank position push-up\thigh plank\n'
    'position\tposition press shrug\toverhead shrug\n'
    'position\tposition push-up row\tplank row\n'
    'post\tpost row\tdoorway row\n'
    'posterior\tcalf posterior raise tibialis\tball-squeeze calf raise\n'
    'posterior\tcalf posterior tibialis\tball-squeeze calf raise\n'
    'power\tand clean jerk power\tclean and jerk\n'
    'power\tblock clean power\tblock power clean\n'
    'power\tblock clean power\tblock power clean\town\n'
    'power\tbound power\tbounding\n'
    'power\tclean floor power\tpower clean\n'
    'power\tclean hang power\thang power clean\n'
    'power\tclean hang power\thang power clean\town\n'
    'power\tclean power\tpower clean\n'
    'power\tclean power\tpower clean\town\n'
    'power\tjerk power\tpush jerk\n'
    'power\tpower rope slam\trope slam\n'
    'power\tpower skip\tpower skip\town\n'
    'powerwalk\tpowerwalk sled\tsled hip extension walk\n'
    'prayer\tlat prayer\tstraight-arm pulldown\n'
    'preacher\tbarbell curl preacher\tpreacher curl\n'
    'preacher\tbench curl preacher\tpreacher curl\n'
    'preacher\tbent-bar curl preacher\tpreacher curl\n'
    'preacher\tcable curl preacher\tcable preacher curl\n'
    'preacher\tcable curl preacher\tcable preacher curl\town\n'
    'preacher\tcurl dumbbell preacher\tdumbbell preacher curl\n'
    'preacher\tcurl dumbbell preacher\tdumbbell preacher curl\town\n'
    'preacher\tcurl hammer preacher\tpreacher hammer curl\town\n'
    'preacher\tcurl machine preacher\tmachine preacher curl\n'
    'preacher\tcurl machine preacher\tmachine preacher curl\town\n'
    'preacher\tcurl one-arm preacher\tdumbbell preacher curl\n'
    'preacher\tcurl preacher\tpreacher curl\town\n'
    'preacher\tdumbbell preacher\tdumbbell preacher curl\n'
    'preacher\tmachine preacher\tmachine preacher curl\n'
    'preacher\tpreacher\tpreacher curl\n'
    'press\t45deg leg press\tleg press\n'
    'press\tand clean power press\tbarbell clean and press\n'
    'press\tand clean power press push\tbarbell clean and press\n'
    'press\tand clean press\tbarbell clean and press\n'
    'press\tand clean press push\tbarbell clean and press\n'
    'press\tand high leg press wide\thigh-foot leg press\n'
    'press\tball neck press\tstability-ball neck hold\n'
    'press\tband bench press\tbench press with bands\n'
    'press\tband bench press\tbench press with bands\town\n'
    'press\tband calf press\tband plantarflexion\n'
    'press\tband chest press\tband chest press\n'
    'press\tband chest press\tband chest press\town\n'
    'press\tband out press\tband anti-rotation press\n'
    'press\tbench board press\tboard bench press\town\n'
    'press\tbench chain press\tbench press with chains\n'
    'press\tbench chain press\tbench press with chains\town\n'
    'press\tbench de press\tspeed bench press\n'
    'press\tbench fast press\tspeed bench press\n'
    'press\tbench flat press\tbench press\n'
    'press\tbench hover press\tbench press stopped above the chest\n'
    'press\tbench pin press\tpin bench press\n'
    'press\tbench pin press\tpin bench press\town\n'
    'press\tbench press\tbench press\n'
    'press\tbench press\tbench press\town\n'
    'press\tbench press rack\tpin bench press\n'
    'press\tbench press slow\ttempo bench press\n'
    'press\tbench press wide\twide-grip bench press\n'
    'press\tboard press\tboard bench press\n'
    'press\tbug dead press wall\tdead bug\n'
    'press\tcable chest press\tstanding cable chest press\n'
    'press\tcable out press\tanti-rotation press\n'
    'press\tcable press\tstanding cable chest press\n'
    'press\tcalf leg press\tleg press calf raise\n'
    'press\tcalf leg press press\tleg press calf raise\n'
    'press\tcalf press\tleg press calf raise\n'
    'press\tchest press\tmachine chest press\n'
    'press\tchest press sled\tsled chest press\town\n'
    'press\tclean press\tkettlebell clean and press\n'
    'press\tcrush press\tdumbbell squeeze press\n'
    'press\tcuban press\thigh pull with external rotation\n'
    'press\tdevil press\tdevil press\town\n'
    'press\tfloor press\tfloor press\town\n'
    'press\tfoot high leg press\thigh-foot leg press\n'
    'press\tfoot high leg press\thigh-foot leg press\town\n'
    'press\tfoot leg low press\tlow-foot leg press\n'
    'press\tfoot leg low press\tlow-foot leg press\town\n'
    'press\thex press\tdumbbell squeeze press\n'
    'press\tjump leg press\tleg press jump\town\n'
    'press\tleg press\tleg press\town\n'
    'press\tleg press press toe\tleg press calf raise\n'
    'press\tleg press sled\tleg press\n'
    'press\tlog press\toverhead press\n'
    'press\tout plate press\tplate squeeze press\n'
    'press\tout press\tanti-rotation press\n'
    'press\tout press sled\tsled chest press\n'
    'press\tout press walk\tanti-rotation walk-out\n'
    'press\tpike press\tpike push-up\n'
    'press\tpin press\tpin bench press\n'
    'press\tpress push\tpush press\town\n'
    'press\tpress saw see\talternating dumbbell shoulder press\n'
    'press\tpress sot\tSots press\town\n'
    'press\tpress toe\tleg press calf raise\n'
    'press\tpress z\tseated floor overhead press\n'
    'pressing\tbalance pressing snatch\tsnatch balance\n'
    'pronation\tdumbbell pronation\tforearm pronation\n'
    'pronation\tforearm pronation\tforearm pronation\town\n'
    'pronation\thammer pronation\tforearm pronation\n'
    'pronation\tlever pronation\tforearm pronation\n'
    'prone\tband curl leg prone\tband leg curl\n'
    'prone\tcable curl leg prone\tlying cable leg curl\n'
    'prone\tcobra prone\tprone cobra hold\n'
    'prone\tcurl leg prone\tlying leg curl\n'
    'prone\tcurl prone\tprone incline curl\n'
    'prone\tfrog lift prone\tfrog raise\n'
    'prone\tleg lift prone\tprone hip extension\n'
    'prone\tplank prone\tplank\n'
    'prone\tprone row\tseal row\n'
    'protraction\tbear plank protraction\tkneeling scapular push-up\n'
    'protraction\tcable protraction\tcable serratus punch\n'
    'protraction\tdumbbell protraction\tserratus punch\n'
    'protraction\tprotraction quadruped\tkneeling scapular push-up\n'
    'protraction\tprotraction supine\tserratus punch\n'
    'pull\tarm arm pull\trope sled pull\n'
    'pull\tband face pull\tband face pull\n'
    'pull\tband face pull\tband face pull\town\n'
    'pull\tface high pull\tface pull with external rotation\n'
    'pull\tface pull\tface pull\town\n'
    'pull\thang high pull\thang high pull\n'
    'pull\thang high pull\thang high pull\town\n'
    'pull\thang pull\thang clean pull\n'
    'pull\thigh pull\tclean high pull\n'
    'pull\tpin pull\track pull\n'
    'pull-apart\tband pull-apart\tband pull-apart\n'
    'pull-apart\tband pull-apart\tband pull-apart\town\n'
    'pull-apart\tpull-apart\tband pull-apart\n'
    'pull-through\tband pull-through\tband pull-through\n'
    'pull-through\tband pull-through\tband pull-through\town\n'
    'pull-through\tcable pull-through\tcable pull-through\town\n'
    'pull-through\tdumbbell plank pull-through\tplank drag\n'
    'pull-through\tplank pull-through\tplank drag\n'
    'pull-through\tpull-through\tcable pull-through\n'
    'pull-through\tpull-through rope\tcable pull-through\n'
    'pull-up\t2 b c pull-up\tchest-to-bar pull-up\n'
    'pull-up\tarcher pull-up\tarcher pull-up\town\n'
    'pull-up\tband pull-up\tband-assisted pull-up\n'
    'pull-up\tbar chest pull-up\tchest-to-bar pull-up\town\n'
    'pull-up\tbar hang pull-up\tdead hang\n'
    'pull-up\tfront lever pull-up\tfront lever row\n'
    'pull-up\tgrip pull-up towel\ttowel pull-up\n'
    'pull-up\thigh pull-up\tchest-to-bar pull-up\n'
    'pull-up\tjump pull-up\tjumping chin-up\n'
    'pull-up\tjumping pull-up\tjumping chin-up\n'
    'pull-up\tl pull-up\tL-sit pull-up\n'
    'pull-up\tl-sit pull-up\tL-sit pull-up\town\n'
    'pull-up\tlock pull-up\tpull-up with stops\n'
    'pull-up\tlow one-arm pull-up\toffset pull-up\n'
    'pull-up\tlower pull-up\tnegative pull-up\n'
    'pull-up\tmachine pull-up\tassisted pull-up\n'
    'pull-up\tnarrow pull-up\tclose-grip pull-up\n'
    'pull-up\toffset pull-up\toffset pull-up\town\n'
    'pull-up\toffset pull-up towel\toffset pull-up\n'
    'pull-up\tone-arm pull-up\tone-arm chin-up\n'
    'pull-up\tpull-up\tpull-up\town\n'
    'pull-up\tpull-up ring\tring pull-up\n'
    'pull-up\tpull-up ring\tring pull-up\town\n'
    'pull-up\tpull-up rope\ttowel pull-up\n'
    'pull-up\tpull-up side side\tarcher pull-up\n'
    'pull-up\tpull-up stop\tpull-up with stops\town\n'
    'pull-up\tpull-up strict\tpull-up\n'
    'pull-up\tpull-up towel\ttowel pull-up\town\n'
    'pull-up\tpull-up uneven\toffset pull-up\n'
    'pull-up\tpull-up wide\twide-grip pull-up\n'
    'pulldown\tband lat pulldown\tband pulldown\n'
    'pulldown\tband pulldown\tband pulldown\n'
    'pulldown\tband pulldown\tband pulldown\town\n'
    'pulldown\tcable one-arm pulldown\tone-arm lat pulldown\n'
    'pulldown\tcable pulldown\tlat pulldown\t\tcable\n'
    'pulldown\tfront pulldown\tlat pulldown\n'
    'pulldown\tlat one-arm pulldown\tone-arm lat pulldown\n'
    'pulldown\tlat one-arm pulldown\tone-arm lat pulldown\town\n'
    'pulldown\tlat overhand pulldown\tlat pulldown\n'
    'pulldown\tlat pulldown\tlat pulldown\n'
    'pulldown\tlat pulldown\tlat pulldown\town\n'
    'pulldown\tlat pulldown shrug\tmachine shoulder depression\n'
    'pulldown\tlat pulldown wide\twide-grip lat pulldown\n'
    'pulldown\tlever pulldown\tplate-loaded pulldown\n'
    'pulldown\tmachine pulldown\tlat pulldown\n'
    'pulldown\tone-arm pulldown\tone-arm lat pulldown\n'
    'pulldown\toverhand pulldown\tlat pulldown\n'
    'pulldown\tpulldown\tlat pulldown\n'
    'pulldown\tpulldown rear\tbehind-the-neck pulldown\n'
    'pulldown\tpulldown shrug\tmachine shoulder depression\n'
    'pulldown\tpulldown v-bar\tclose-grip lat pulldown\n'
    'pulldown\tpulldown wide\twide-grip lat pulldown\n'
    'pullover\tarm bent pullover\tdumbbell pullover\n'
    'pullover\tbarbell pullover\tbarbell pullover\town\n'
    'pullover\tbench cable pullover\tlying cable pullover\n'
    'pullover\tbench cross pullover\tdumbbell pullover\n'
    'pullover\tbent-bar pullover\tbarbell pullover\n'
    'pullover\tbug dead pullover\tband dead bug\n'
    'pullover\tcable floor pullover\tlying cable pullover\n'
    'pullover\tcable lying pullover\tlying cable pullover\town\n'
    'pullover\tcable one-arm pullover\tone-arm straight-arm pulldown\n'
    'pullover\tcable pullover\tstraight-arm pulldown\n'
    'pullover\tdumbbell floor pullover\tdumbbell pullover\n'
    'pullover\tdumbbell pullover\tdumbbell pullover\n'
    'pullover\tdumbbell pullover\tdumbbell pullover\town\n'
    'pullover\tmachine pullover\tmachine pullover\n'
    'pullover\tmachine pullover\tmachine pullover\town\n'
    'pullover\tpass pullover\tmedicine ball pullover throw\n'
    'pullover\tpullover\tdumbbell pullover\n'
    'pullover\tpullover seated\tmachine pullover\n'
    'pump\tfrog pump\tfrog pump\town\n'
    'punch\tlying punch\tserratus punch\n'
    'push\tbox push\texplosive step-up\n'
    'push\tjerk push\tpush jerk\town\n'
    'push-up\tarcher push-up\tarcher push-up\town\n'
    'push-up\tband push-up\tband-resisted push-up\n'
    'push-up\tbench push-up\tincline push-up\n'
    'push-up\tblock push-up\tdeficit push-up\n'
    'push-up\tbomber dive push-up\tswooping push-up\n'
    'push-up\tbox pike push-up\tfeet-elevated pike push-up\n'
    'push-up\tbox push-up\tincline push-up\n'
    'push-up\tburpee push-up\tburpee\n'
    'push-up\tchair push-up\tchair push-up\town\n'
    'push-up\tchair push-up seated\tchair push-up\n'
    'push-up\tclap push-up\tplyometric push-up\n'
    'push-up\tclean press push-up row\tman-maker\n'
    'push-up\tdecline push-up\tdecline push-up\town\n'
    'push-up\tdeep push-up\tdeficit push-up\n'
    'push-up\tdeficit plate push-up\tdeficit push-up\t\tplate\n'
    'push-up\tdeficit push-up\tdeficit push-up\town\n'
    'push-up\tdepth drop push-up\tdepth push-up\n'
    'push-up\tdepth push-up\tdepth push-up\town\n'
    'push-up\tdiamond push-up\tdiamond push-up\town\n'
    'push-up\tdrop push-up\tdepth push-up\n'
    'push-up\tfeet-up push-up\tdecline push-up\n'
    'push-up\tfloor push-up\tpush-up\n'
    'push-up\tforward lean push-up\tforward-lean push-up\town\n'
    'push-up\tfull push-up\tpush-up\n'
    'push-up\thandle push-up\tdeficit push-up\n'
    'push-up\thindu push-up\tswooping push-up\n'
    'push-up\tincline push-up\tincline push-up\town\n'
    'push-up\tknee push-up\tknee push-up\town\n'
    'push-up\tlean planche push-up\tforward-lean push-up\n'
    'push-up\tnarrow push-up\tclose-grip push-up\n'
    'push-up\tone-arm push-up\tone-arm push-up\n'
    'push-up\tone-arm push-up\tone-arm push-up\town\n'
    'push-up\tpaused push-up\tpaused push-up\n'
    'push-up\tpaused push-up\tpaused push-up\town\n'
    'push-up\tpike push-up\tpike push-up\town\n'
    'push-up\tplanche pseudo push-up\tforward-lean push-up\n'
    'push-up\tplank push-up\thigh plank\n'
    'push-up\tplank push-up\tplank up-down\n'
    'push-up\tplate push-up\tweighted push-up\n'
    'push-up\tpush-up\tpush-up\n'
    'push-up\tpush-up\tpush-up\town\n'
    'push-up\tpush-up ring\tring push-up\n'
    'push-up\tpush-up ring\tring push-up\town\n'
    'push-up\tpush-up side side\tarcher push-up\n'
    'push-up\tpush-up slow\ttempo push-up\n'
    'push-up\tpush-up t\tpush-up with rotation\n'
    'push-up\tpush-up tempo\ttempo push-up\town\n'
    'push-up\tpush-up wall\twall push-up\n'
    'push-up\tpush-up wall\twall push-up\town\n'
    'push-up\tpush-up wide\twide push-up\town\n'
    'pushdown\tband lat pushdown\tband straight-arm pulldown\n'
    'pushdown\tband pushdown\tband pushdown\n'
    'pushdown\tband pushdown\tband pushdown\town\n'
    'pushdown\tband pushdown triceps\tband pushdown\n'
    'pushdown\tbar pushdown\tcable pushdown\n'
    'pushdown\tcable one-arm pushdown\tone-arm cable pushdown\n'
    'pushdown\tcable one-arm pushdown\tone-arm cable pushdown\town\n'
    'pushdown\tcable pushdown\tcable pushdown\town\n'
    'pushdown\tcable pushdown triceps\tcable pushdown\n'
    'pushdown\tlat pushdown\tstraight-arm pulldown\n'
    'pushdown\tleg partner pushdown raise\tpartner leg throw\n'
    'pushdown\tone-arm pushdown\tone-arm cable pushdown\n'
    'pushdown\tone-arm pushdown triceps\tone-arm cable pushdown\n'
    'pushdown\tpushdown\tcable pushdown\n'
    'pushdown\tpushdown rope\trope pushdown\n'
    'pushdown\tpushdown rope\trope pushdown\town\n'
    'pushdown\tpushdown rope triceps\trope pushdown\n'
    'pushdown\tpushdown triceps\tcable pushdown\n'
    'pushdown\tpushdown v-bar\tstraight-bar pushdown\n'
    'quad\tarc long quad\tankle-weight leg extension\n'
    'quad\tquad set\tquad set\n'
    'quad\tquad set\tquad set\town\n'
    'quadruped\tabduction hip quadruped\tfire hydrant\n'
    'quadruped\tand arm leg quadruped raise\tbird dog\n'
    'quadruped\tand arm leg quadruped reach\tbird dog\n'
    'quadruped\tband extension neck quadruped\tband neck extension\n'
    'quadruped\tdrag quadruped sled\tbear-crawl sled drag\n'
    'quadruped\textension hip isometric quadruped\tquadruped leg reach\n'
    'quadruped\textension hip quadruped\tdonkey kick\n'
    'quadruped\textension neck plate quadruped\tneck extension\n'
    'quadruped\textension neck quadruped\tneck extension\n'
    'quadruped\tglute kickback quadruped\tdonkey kick\n'
    'quadruped\thover quadruped\tbear hold\n'
    'quadruped\thovering isometric quadruped\tbear hold\n'
    'quadruped\tisometric neck quadruped\tquadruped neck hold\n'
    'quadruped\tisometric neck quadruped\tquadruped neck hold\town\n'
    'quadruped\tkickback quadruped\tdonkey kick\n'
    'quadruped\tleg quadruped reach\tquadruped leg reach\n'
    'quadruped\tleg quadruped reach\tquadruped leg reach\town\n'
    'quadruped\tpush-up quadruped scapular\tkneeling scapular push-up\n'
    'quarter\tback quarter squat\tquarter squat\n'
    'quarter\tjump quarter turn\trotational jump\n'
    'quarter\tquarter squat\tquarter squat\town\n'
    'rack\tjerk rack\tsplit jerk\n'
    'rack\tpull rack\track pull\town\n'
    'rainbow\trainbow slam\trotational medicine ball slam\n'
    'raise\t3 raise trap\tY raise\n'
    'raise\tand hip leg lying raise\tlying leg raise with hip lift\n'
    'raise\tarch raise\tshort foot\n'
    'raise\tback leg raise\tbodyweight standing hip extension\n'
    'raise\tball calf heel raise\tball-squeeze calf raise\n'
    'raise\tband front raise\tband front raise\n'
    'raise\tband front raise\tband front raise\town\n'
    'raise\tbar knee raise\thanging knee raise\n'
    'raise\tbar leg raise\thanging leg raise\n'
    'raise\tbench raise side\tside bend on the back extension bench\n'
    'raise\tcable front low raise\tcable front raise\n'
    'raise\tcable front raise\tcable front raise\town\n'
    'raise\tcable knee raise\tcable hip flexion\n'
    'raise\tcable low raise y\tcable Y raise\n'
    'raise\tcable raise side\tcable lateral raise\n'
    'raise\tcable raise y\tcable Y raise\town\n'
    'raise\tcalf leg press raise\tleg press calf raise\town\n'
    'raise\tcalf raise\tstanding calf raise\n'
    'raise\tcan full raise\tscaption raise\n'
    'raise\tchair knee raise\tsupported knee raise\n'
    'raise\tchair leg raise side\tbodyweight standing hip abduction\n'
    'raise\tchin head raise tuck\tlying head lift hold\n'
    'raise\tdelt front raise\tfront raise\n'
    'raise\tdelt lying raise rear\tside-lying reverse fly\n'
    'raise\tdelt raise rear\tdumbbell reverse fly\n'
    'raise\tdelt raise side\tlateral raise\n'
    'raise\tfloor knee raise\tbent-knee lying leg raise\n'
    'raise\tfloor leg raise\tlying leg raise\n'
    'raise\tfrog prone raise\tfrog raise\n'
    'raise\tfrog raise\tfrog raise\town\n'
    'raise\tfront plate raise\tplate front raise\n'
    'raise\tfront plate raise\tplate front raise\town\n'
    'raise\tfront raise\tfront raise\town\n'
    'raise\tfront raise rope\tcable front raise\n'
    'raise\thang knee raise\thanging knee raise\n'
    'raise\thang knee raise\thanging knee raise\town\n'
    'raise\thang knee raise side\thanging oblique raise\n'
    'raise\thang leg raise\thanging leg raise\n'
    'raise\thang leg raise\thanging leg raise\town\n'
    'raise\theel leg press raise\tleg press calf raise\n'
    'raise\theel raise\tbodyweight calf raise\n'
    'raise\thip leg lift lying raise\tlying leg raise with hip lift\town\n'
    'raise\thip leg lift raise\tlying leg raise with hip lift\n'
    'raise\thip lying raise\treverse crunch\n'
    'raise\thip raise\tglute bridge\n'
    'raise\ti prone raise\tY raise\n'
    'raise\ti raise\tY raise\n'
    'raise\ti-y-t raise\tI-Y-T raise\town\n'
    'raise\tknee lying raise\tbent-knee lying leg raise\n'
    'raise\tknee raise side side\thanging oblique raise\n'
    'raise\tleg lying raise\tlying leg raise\town\n'
    'raise\tleg plank raise\tplank with leg lift\n'
    'raise\tleg plank raise side\tside plank with leg raise\town\n'
    'raise\tleg prone raise\tprone hip extension\n'
    'raise\tleg raise\tlying leg raise\n'
    'raise\tleg raise side\tside-lying hip abduction\n'
    'raise\tlower raise trap\tY raise\n'
    'raise\tneck raise side\tneck side bend\n'
    'raise\tplank raise side\tside plank dip\n'
    'raise\traise raise t\tT raise\n'
    'raise\traise raise w\tW raise\n'
    'raise\traise raise y\tY raise\n'
    'raise\traise ring y\tsuspension Y raise\n'
    'raise\traise shin\ttibialis raise\n'
    'raise\traise side\tlateral raise\n'
    'raise\traise t\tT raise\n'
    'raise\traise t\tT raise\town\n'
    'raise\traise toe\ttibialis raise\n'
    'raise\traise w\tW raise\n'
    'raise\traise w\tW raise\town\n'
    'raise\traise y\tY raise\n'
    'raise\traise y\tY raise\town\n'
    'razor\tcurl leg razor\trazor curl\n'
    'razor\tcurl razor\trazor curl\town\n'
    'reach\tarm plank reach\tplank with arm reach\town\n'
    'reach\tplank reach\tplank with arm reach\n'
    'reach\tplank reach side\tside plank with rotation\n'
    'reactive\tdrop jump reactive\tdrop jump\n'
    'rear\tdeck delt pec rear\tmachine reverse fly\n'
    'rear\tdelt fly rear\tdumbbell reverse fly\n'
    'rear\tdelt rear row\tchest-supported rear-shoulder row\n'
    'rear-foot-elevated\tbarbell rear-foot-elevated split squat\tbarbell rear-foot-elevated split squat\n'
    'rear-foot-elevated\tbarbell rear-foot-elevated split squat\tbarbell rear-foot-elevated split squat\town\n'
    'rear-foot-elevated\tdeficit rear-foot-elevated split squat\trear-foot-elevated split squat\n'
    'rear-foot-elevated\tdumbbell rear-foot-elevated split squat\trear-foot-elevated split squat\n'
    'rear-foot-elevated\tfront-rack rear-foot-elevated split squat\tbarbell rear-foot-elevated split squat\n'
    'rear-foot-elevated\tisometric rear-foot-elevated split squat\tsplit squat hold\n'
    'rear-foot-elevated\trear-foot-elevated\trear-foot-elevated split squat\n'
    'rear-foot-elevated\trear-foot-elevated split squat\trear-foot-elevated split squat\n'
    'rear-foot-elevated\trear-foot-elevated split squat\trear-foot-elevated split squat\town\n'
    'rebound\tdrop jump rebound\tdrop jump\n'
    'recovery\tjerk pin recovery\tjerk recovery\n'
    'recovery\tjerk recovery\tjerk recovery\town\n'
    'recovery\tjerk recovery split\tjerk recovery\n'
    'recumbent\tbike recumbent\tstationary bike\n'
    'release\thand push-up release\thand-release push-up\town\n'
    'release\tpush-up release\thand-release push-up\n'
    'renegade\trenegade row\tplank row\n'
    'repeated\tbroad jump repeated\trepeated broad jump\town\n'
    'repeated\thop one-leg repeated\ttriple hop\n'
    'repeated\thop repeated\ttriple hop\n'
    'repeated\thurdle jump repeated\thurdle jump\n'
    'repeated\tjump repeated tuck\ttuck jump\n'
    'repeater\trepeater\tfingertip hang\n'
    'rescue\tdrag rescue\tdummy drag\n'
    'resistance\tcurl leg manual resistance\tmanual leg curl\n'
    'resisted\tband broad jump resisted\tband-resisted jump\n'
    'resisted\tband hinge jump resisted\tband swing\n'
    'resisted\tband jump resisted\tband-resisted jump\town\n'
    'resisted\tband push-up resisted\tband-resisted push-up\town\n'
    'resisted\tband resisted squat\tbanded squat\n'
    'resisted\tband resisted swing\tband swing\n'
    'resisted\tbend hand neck resisted side\tisometric neck side bend\n'
    'resisted\tbird dog resisted\tbird dog with band\n'
    'resisted\tcurl hand leg resisted\tmanual leg curl\n'
    'resisted\tflexion hand neck resisted\tisometric neck flexion\n'
    'resisted\tresisted sled sprint\tresisted sprint\n'
    'resisted\tresisted sprint\tresisted sprint\town\n'
    'retraction\tband retraction\tband scapular retraction\n'
    'retraction\tband retraction scapular\tband scapular retraction\town\n'
    'retraction\tcable retraction scapular\tstraight-arm row\n'
    'retraction\thead quadruped retraction\tquadruped neck hold\n'
    'retraction\tretraction scapular\tstraight-arm row\n'
    'retraction\tretraction scapular seated\tstraight-arm row\n'
    'retraction\tretraction shrug\tchest-supported shrug\n'
    'retro\tretro walk\tbackward walk\n'
    'reverse\tand drive knee lunge reverse\treverse lunge\n'
    'reverse\tband fly reverse\tband pull-apart\n'
    'reverse\tbarbell curl reverse\treverse curl\n'
    'reverse\tbarbell curl reverse wrist\treverse wrist curl\t\tbarbell\n'
    'reverse\tbarbell lunge reverse\tbarbell reverse lunge\n'
    'reverse\tbarbell lunge reverse\tbarbell reverse lunge\town\n'
    'reverse\tbench crunch decline reverse\tincline reverse crunch\n'
    'reverse\tbench fly incline reverse\tchest-supported reverse fly\n'
    'reverse\tbiceps curl reverse\treverse curl\n'
    'reverse\tboard crunch reverse slant\tincline reverse crunch\n'
    'reverse\tbox lunge reverse\tdeficit reverse lunge\n'
    'reverse\tcable crunch low reverse\tcable reverse crunch\n'
    'reverse\tcable crunch reverse\tcable reverse crunch\town\n'
    'reverse\tcable curl reverse\treverse cable curl\n'
    'reverse\tcable curl reverse\treverse cable curl\town\n'
    'reverse\tcable fly one-arm reverse\tone-arm cable reverse fly\n'
    'reverse\tcable fly one-arm reverse\tone-arm cable reverse fly\town\n'
    'reverse\tcable fly reverse\tcable reverse fly\town\n'
    'reverse\tchop reverse\tlow-to-high cable chop\n'
    'reverse\tcrawl reverse\tcrab walk\n'
    'reverse\tcrunch decline reverse\tincline reverse crunch\n'
    'reverse\tcrunch floor reverse\treverse crunch\n'
    'reverse\tcrunch incline reverse\tincline reverse crunch\town\n'
    'reverse\tcrunch reverse\treverse crunch\town\n'
    'reverse\tcurl lower nordic reverse\treverse Nordic curl\n'
    'reverse\tcurl nordic reverse\treverse Nordic curl\n'
    'reverse\tcurl nordic reverse\treverse Nordic curl\town\n'
    'reverse\tcurl reverse\treverse curl\town\n'
    'reverse\tcurl reverse seated wrist\treverse wrist curl\n'
    'reverse\tcurl reverse wrist\treverse wrist curl\town\n'
    'reverse\tcurl-up reverse\treverse crunch\n'
    'reverse\tdeck pec reverse\tmachine reverse fly\n'
    'reverse\tdeficit lunge reverse\tdeficit reverse lunge\town\n'
    'reverse\tdrag reverse sled\tbackward sled drag\n'
    'reverse\tdrive knee lunge reverse\treverse lunge\n'
    'reverse\tfly incline reverse\tchest-supported reverse fly\n'
    'reverse\tfly machine reverse\tmachine reverse fly\n'
    'reverse\tfly machine reverse\tmachine reverse fly\town\n'
    'reverse\tfly reverse\tdumbbell reverse fly\n'
    'reverse\tfly reverse ring\tsuspension reverse fly\n'
    'reverse\tgoblet lunge reverse\treverse lunge\n'
    'reverse\tlunge reverse\treverse lunge\town\n'
    'reverse\tlunge reverse slider\tslider reverse lunge\n'
    'reverse\tlunge reverse slider\tslider reverse lunge\town\n'
    'reverse\tplank reverse\treverse plank\town\n'
    'reverse\tpull reverse sled\tbackward sled drag\n'
    'reverse\treverse sled walk\tbackward sled drag\n'
    'reverse\treverse squat\tlying cable knee drive\n'
    'reverse\treverse walk\tbackward walk\n'
    'reverse-grip\tbarbell reverse-grip row\tunderhand barbell row\n'
    'reverse-grip\tbench press reverse-grip\tunderhand-grip bench press\n'
    'reverse-grip\tbench reverse-grip\tunderhand-grip bench press\n'
    'reverse-grip\tcable reverse-grip row\tunderhand cable row\n'
    'reverse-grip\tcurl reverse-grip\treverse curl\n'
    'reverse-grip\tinverted reverse-grip row\tunderhand inverted row\n'
    'reverse-grip\tlat pulldown reverse-grip\tunderhand lat pulldown\n'
    'reverse-grip\tpulldown reverse-grip\tunderhand lat pulldown\n'
    'reverse-grip\tpushdown reverse-grip\treverse-grip pushdown\town\n'
    'reverse-grip\treverse-grip row\tunderhand barbell row\n'
    'rhythmic\t90/90 rhythmic stab\trhythmic stabilisation\n'
    'rhythmic\tpartner rhythmic stab\trhythmic stabilisation\n'
    'rhythmic\trhythmic stab\trhythmic stabilisation\n'
    'rice\tdig rice\trice bucket\n'
    'ride\tbike ride\tstationary bike\n'
    'ring\tcurl hang leg ring\thanging leg curl\t\tsuspension\n'
    'ring\tcurl leg ring\tsuspension leg curl\n'
    'ring\tcurl ring\tsuspension curl\n'
    'ring\tdip ring\tring dip\n'
    'ring\tdip ring\tring dip\town\n'
    'ring\tface pull ring\tsuspension face pull\n'
    'ring\tfly ring\tsuspension fly\n'
    'ring\tring row\tsuspension row\n'
    'rise\trise toe\tbodyweight calf raise\n'
    'rising\tchair rising\tchair squat\n'
    'roll\tdown roll\tloaded spinal roll-down\n'
    'rollback\tdumbbell rollback\trolling dumbbell extension\n'
    'roller\tab roller\tab wheel rollout\n'
    'roller\troller up wrist\twrist roller\n'
    'roller\troller wrist\twrist roller\town\n'
    'rolling\tplank rolling\trolling plank\town\n'
    'rollout\tab barbell rollout\tbarbell rollout\n'
    'rollout\tab full rollout wheel\tstanding ab wheel rollout\n'
    'rollout\tab range rollout short wheel\tab wheel rollout to a wall\n'
    'rollout\tab rollout\tab wheel rollout\n'
    'rollout\tab rollout wall wheel\tab wheel rollout to a wall\town\n'
    'rollout\tab rollout wheel\tab wheel rollout\town\n'
    'rollout\tball rollout\tstability-ball rollout\n'
    'rollout\tbarbell rollout\tbarbell rollout\town\n'
    'rollout\tpartial rollout\tab wheel rollout to a wall\n'
    'rollout\tring rollout\tsuspension fallout\n'
    'rollout\trollout\tab wheel rollout\n'
    'rollout\trollout slider\tslider rollout\n'
    'rollout\trollout slider\tslider rollout\town\n'
    'rollout\trollout wheel\tab wheel rollout\n'
    'roman\tbend chair roman side\tside bend on the back extension bench\n'
    'romanian\tbarbell deadlift one-leg romanian\tbarbell single-leg Romanian deadlift\n'
    'romanian\tbarbell deadlift one-leg romanian\tbarbell single-leg Romanian deadlift\town\n'
    'romanian\tbarbell deadlift romanian\tRomanian deadlift\n'
    'romanian\tcable deadlift romanian\tcable Romanian deadlift\n'
    'romanian\tcable deadlift romanian\tcable Romanian deadlift\town\n'
    'romanian\tdeadlift deficit romanian\tdeficit Romanian deadlift\n'
    'romanian\tdeadlift deficit romanian\tdeficit Romanian deadlift\town\n'
    'romanian\tdeadlift dumbbell one-leg romanian\tsingle-leg Romanian deadlift\n'
    'romanian\tdeadlift dumbbell romanian\tdumbbell Romanian deadlift\n'
    'romanian\tdeadlift dumbbell romanian\tdumbbell Romanian deadlift\town\n'
    'romanian\tdeadlift landmine one-leg romanian\tlandmine single-leg Romanian deadlift\n'
    'romanian\tdeadlift landmine one-leg romanian\tlandmine single-leg Romanian deadlift\town\n'
    'romanian\tdeadlift landmine romanian\tlandmine Romanian deadlift\n'
    'romanian\tdeadlift landmine romanian\tlandmine Romanian deadlift\town\n'
    'romanian\tdeadlift one-leg romanian\tsingle-leg Romanian deadlift\n'
    'romanian\tdeadlift one-leg romanian\tsingle-leg Romanian deadlift\town\n'
    'romanian\tdeadlift plate romanian\tdeficit Romanian deadlift\n'
    'romanian\tdeadlift romanian\tRomanian deadlift\n'
    'romanian\tdeadlift romanian\tRomanian deadlift\town\n'
    'romanian\tdeadlift romanian stance wide\tsumo Romanian deadlift\n'
    'romanian\tdeadlift romanian sumo\tsumo Romanian deadlift\n'
    'romanian\tdeadlift romanian sumo\tsumo Romanian deadlift\town\n'
    'romanian\tromanian\tRomanian deadlift\n'
    'rope\tface pull rope\tface pull\n'
    'rope\thang rope\ttowel hang\n'
    'rope\tjump rope\tjump rope\n'
    'rope\tjump rope\tjump rope\town\n'
    'rotating\tcurl rotating\trotating curl\town\n'
    'rotating\tplank rotating\trolling plank\n'
    'rotating\tpush-up rotating\tpush-up with rotation\n'
    'rotation\t90/90 external prone rotation\tprone external rotation\n'
    'rotation\t90/90 external rotation\texternal rotation at 90 degrees\n'
    'rotation\t90/90 hip rotation\t90/90 hip lift-off\n'
    'rotation\t90/90 internal lift rotation\t90/90 hip lift-off\n'
    'rotation\t90/90 internal rotation\tinternal rotation at 90 degrees\n'
    'rotation\t90deg external rotation\texternal rotation at 90 degrees\town\n'
    'rotation\t90deg internal rotation\tinternal rotation at 90 degrees\town\n'
    'rotation\tabducted external rotation\texternal rotation at 90 degrees\n'
    'rotation\tabducted internal rotation\tinternal rotation at 90 degrees\n'
    'rotation\tback pass rotation wall\tmedicine ball wall taps\n'
    'rotation\tband double external rotation\tdouble band external rotation\town\n'
    'rotation\tband external hip prone rotation\tprone hip external rotation\n'
    'rotation\tband external hip rotation\tseated hip external rotation\n'
    'rotation\tband external hip rotation seated\tseated hip external rotation\n'
    'rotation\tband external rotation\tband external rotation\n'
    'rotation\tband external rotation\tband external rotation\town\n'
    'rotation\tband external rotation two-arm\tdouble band external rotation\n'
    'rotation\tband external rotation two-leg\tdouble band external rotation\n'
    'rotation\tband external rotation walkout\tisometric external rotation\t\tband\n'
    'rotation\tband hip internal prone rotation\tprone hip internal rotation\n'
    'rotation\tband hip internal rotation\tseated hip internal rotation\n'
    'rotation\tband hip internal rotation seated\tseated hip internal rotation\n'
    'rotation\tband internal rotation\tband internal rotation\n'
    'rotation\tband internal rotation\tband internal rotation\town\n'
    'rotation\tband neck rotation\tband neck rotation\n'
    'rotation\tband neck rotation\tband neck rotation\town\n'
    'rotation\tband rotation\tband rotation\n'
    'rotation\tband rotation\tband rotation\town\n'
    'rotation\tbarbell corner rotation\tlandmine rotation\n'
    'rotation\tbridged rotation trunk\tstability-ball Russian twist\n'
    'rotation\tcable external hip rotation\tseated hip external rotation\t\tcable\n'
    'rotation\tcable external rotation\tcable external rotation\n'
    'rotation\tcable external rotation\tcable external rotation\town\n'
    'rotation\tcable hip internal rotation\tseated hip internal rotation\t\tcable\n'
    'rotation\tcable internal rotation\tcable internal rotation\n'
    'rotation\tcable internal rotation\tcable internal rotation\town\n'
    'rotation\tcable neck rotation\tband neck rotation\t\tcable\n'
    'rotation\tcable rotation\tcable rotation\town\n'
    'rotation\tcuban rotation\thigh pull with external rotation\n'
    'rotation\tdumbbell external rotation\tside-lying external rotation\n'
    'rotation\tdumbbell external rotation seated\tseated external rotation on the knee\n'
    'rotation\tdumbbell forearm rotation\tforearm pronation and supination\n'
    'rotation\telbow external knee rotation\tseated external rotation on the knee\n'
    'rotation\texternal face pull rotation\tface pull with external rotation\n'
    'rotation\texternal face pull rotation\tface pull with external rotation\town\n'
    'rotation\texternal high pull rotation\thigh pull with external rotation\town\n'
    'rotation\texternal high rotation\texternal rotation at 90 degrees\n'
    'rotation\texternal hip lying rotation\tprone hip external rotation\n'
    'rotation\texternal hip prone rotation\tprone hip external rotation\n'
    'rotation\texternal hip prone rotation\tprone hip external rotation\town\n'
    'rotation\texternal hip rotation\tseated hip external rotation\n'
    'rotation\texternal hip rotation seated\tseated hip external rotation\n'
    'rotation\texternal hip rotation seated\tseated hip external rotation\town\n'
    'rotation\texternal knee rotation seated\tseated external rotation on the knee\town\n'
    'rotation\texternal lying rotation\tside-lying external rotation\n'
    'rotation\texternal prone rotation\tprone external rotation\n'
    'rotation\texternal prone rotation\tprone external rotation\town\n'
    'rotation\texternal rotation\tcable external rotation\n'
    'rotation\texternal rotation wall\tisometric external rotation\n'
    'rotation\thand neck resisted rotation\tisometric neck rotation\n'
    'rotation\theel rotation squeeze\tprone hip external rotation\n'
    'rotation\thip internal lying rotation\tprone hip internal rotation\n'
    'rotation\thip internal prone rotation\tprone hip internal rotation\n'
    'rotation\thip internal prone rotation\tprone hip internal rotation\town\n'
    'rotation\thip internal rotation\tseated hip internal rotation\n'
    'rotation\thip internal rotation seated\tseated hip internal rotation\n'
    'rotation\thip internal rotation seated\tseated hip internal rotation\town\n'
    'rotation\thip one-leg rotation\thip airplane\n'
    'rotation\tinternal rotation\tcable internal rotation\n'
    'rotation\tinternal rotation wall\tisometric internal rotation\n'
    'rotation\tknee rotation supine\tbent-knee trunk rotation\n'
    'rotation\tlandmine rotation\tlandmine rotation\town\n'
    'rotation\tleg lying rotation\tlying windshield wiper\n'
    'rotation\tlower rotation trunk\tbent-knee trunk rotation\n'
    'rotation\tmachine rotation\tmachine trunk rotation\n'
    'rotation\tmachine rotation torso\tmachine trunk rotation\n'
    'rotation\tmachine rotation trunk\tmachine trunk rotation\town\n'
    'rotation\tmanual neck rotation\tisometric neck rotation\n'
    'rotation\tmuscle rotation\thigh pull with external rotation\n'
    'rotation\trotation seated\tRussian twist\n'
    'rotation\trotation supine trunk\tlying windshield wiper\n'
    'rotation\trotation trunk\tcable rotation\n'
    'rotational\tbox jump rotational\trotational jump\n'
    'rotational\tcurl dumbbell rotational\tdumbbell curl\n'
    'rotational\tdumbbell press rotational\trotating dumbbell shoulder press\n'
    'rotational\tface pull rotational\tface pull with external rotation\n'
    'rotational\thang knee raise rotational\thanging oblique raise\n'
    'rotational\tjump rotational\trotational jump\town\n'
    'rotational\tkneeling rotational throw\thalf-kneeling rotational throw\n'
    'rotational\tlandmine punch rotational throw\trotational landmine throw\n'
    'rotational\tlandmine rotational throw\trotational landmine throw\town\n'
    'rotational\tlunge rotational\tlunge with rotation\n'
    'rotational\tlunge rotational\tlunge with rotation\town\n'
    'rotational\tplank rotational side\tside plank with rotation\town\n'
    'rotational\tpush-up rotational\tpush-up with rotation\town\n'
    'rotational\tput rotational\tone-arm medicine ball put\n'
    'rotational\trotational running throw\tstep-behind rotational throw\n'
    'rotational\trotational scoop toss\tscoop throw to the side\n'
    'rotational\trotational seated throw\tseated rotational throw\town\n'
    'rotational\trotational shuffle throw\tstep-behind rotational throw\n'
    'rotational\trotational sit-up\tsit-up with rotation\n'
    'rotational\trotational sit-up\tsit-up with rotation\town\n'
    'rotational\trotational slam\trotational medicine ball slam\n'
    'rotational\trotational step throw\tstep-behind rotational throw\town\n'
    'rotational\trotational throw\trotational medicine ball throw\n'
    'rotational\trotational throw wall\trotational medicine ball throw\n'
    'rotator\tband cuff rotator work\tband external rotation\n'
    'row\tlow row\tseated cable row\n'
    'rower\tcurl leg rower\trowing-seat leg curl\n'
    'rower\trower\trowing ergometer\n'
    'rubber\tband finger open rubber\tfinger extension with band\n'
    'rubber\tbar rubber twist\teccentric wrist extension\n'
    'ruck\truck\truck\town\n'
    'rucking\trucking\truck\n'
    'run\trun\trun\town\n'
    'running\tbound running\tbounding\n'
    'running\tplank running\tmountain climber\n'
    'running\trunning\trun\n'
    'running\trunning stair\tstair run\n'
    'russian\tball russian twist\tstability-ball Russian twist\n'
    'russian\tcurl leg russian\tNordic curl\n'
    'russian\trussian swing\tkettlebell swing\n'
    'russian\trussian throw twist\tseated rotational throw\n'
    'russian\trussian twist\tRussian twist\town\n'
    'safety-bar\tassisted hand safety-bar split squat\thand-assisted safety bar split squat\town\n'
    'safety-bar\tassisted hand safety-bar squat\thand-assisted safety bar squat\town\n'
    'safety-bar\tassisted safety-bar squat\thand-assisted safety bar squat\n'
    'safety-bar\tbox safety-bar squat\tsafety bar box squat\n'
    'safety-bar\tbox safety-bar squat\tsafety bar box squat\town\n'
    'safety-bar\tgood morning safety-bar\tsafety bar good morning\n'
    'safety-bar\tgood morning safety-bar\tsafety bar good morning\town\n'
    'safety-bar\tsafety-bar split squat\tbarbell split squat\n'
    'safety-bar\tsafety-bar squat\tsafety bar squat\n'
    'safety-bar\tsafety-bar squat\tsafety bar squat\town\n'
    'sandbag\tbar sandbag\tsandbag over shoulder\n'
    'sandbag\tbear carry hug sandbag\tsandbag carry\n'
    'sandbag\tbear crawl drag sandbag\tbear crawl with drag\n'
    'sandbag\tbear hug sandbag squat\tsandbag squat\n'
    'sandbag\tcarry front sandbag\tsandbag carry\n'
    'sandbag\tcarry sandbag\tsandbag carry\town\n'
    'sandbag\tclean sandbag\tsandbag over shoulder\n'
    'sandbag\tdrag sandbag\tdummy drag\n'
    'sandbag\tfront sandbag squat\tsandbag squat\n'
    'sandbag\tget-up sandbag\tsandbag get-up\town\n'
    'sandbag\tlift sandbag\tsandbag deadlift\n'
    'sandbag\tpress sandbag\tsandbag overhead press\n'
    'sandbag\tsandbag squat\tsandbag squat\town\n'
    'sandbag\tsandbag walk\tsandbag carry\n'
    'saq\tsaq\tshort-arc leg extension\n'
    'scaption\tdumbbell scaption\tscaption raise\n'
    'scaption\traise scaption\tscaption raise\town\n'
    'scaption\tscaption\tscaption raise\n'
    'scapular\tcable punch scapular\tcable serratus punch\n'
    'scapular\tcurl-up scapular\tcrunch\n'
    'scapular\tdecline push-up scapular\tfeet-elevated scapular push-up\n'
    'scapular\tdip scapular\tscapular dip\town\n'
    'scapular\telbow push-up scapular\tforearm scapular push-up\n'
    'scapular\televated push-up scapular\tfeet-elevated scapular push-up\n'
    'scapular\tforearm push-up scapular\tforearm scapular push-up\n'
    'scapular\tforearm push-up scapular\tforearm scapular push-up\town\n'
    'scapular\thang pull scapular\tscapular pull-up\n'
    'scapular\tknee push-up scapular\tkneeling scapular push-up\n'
    'scapular\tkneeling push-up scapular\tkneeling scapular push-up\town\n'
    'scapular\tplane raise scapular\tscaption raise\n'
    'scapular\tplank push-up scapular\tforearm scapular push-up\n'
    'scapular\tprone scapular setting\tscapular setting\n'
    'scapular\tpull-up scapular\tscapular pull-up\n'
    'scapular\tpull-up scapular\tscapular pull-up\town\n'
    'scapular\tpulldown scapular\tmachine shoulder depression\n'
    'scapular\tpunch scapular\tserratus punch\n'
    'scapular\tpush-up scapular\tscapular push-up\n'
    'scapular\tpush-up scapular\tscapular push-up\town\n'
    'scapular\tpush-up scapular wall\twall scapular push-up\n'
    'scapular\tpush-up scapular wall\twall scapular push-up\town\n'
    'scapular\trow scapular\tstraight-arm row\n'
    'scapular\tscapular setting\tscapular setting\n'
    'scapular\tscapular setting\tscapular setting\town\n'
    'scapular\tscapular slide wall\twall slide\n'
    'scapular\tscapular squeeze\tband scapular retraction\n'
    'scarecrow\tdumbbell scarecrow\thigh pull with external rotation\n'
    'scissor\tjump scissor\tsplit squat jump\n'
    'scissor\tkick scissor\tflutter kick\n'
    'scissor\tleg scissor\tflutter kick\n'
    'scoop\tscoop side toss\tscoop throw to the side\n'
    'scoop\tscoop toss\tscoop throw to the side\n'
    'scr\tscr\tstanding calf raise\n'
    'screwdriver\tscrewdriver\tarm bar\n'
    'scrunch\tscrunch toe\ttowel scrunch\n'
    'scrunch\tscrunch towel\ttowel scrunch\town\n'
    'seal\trow seal\tseal row\town\n'
    'seat\tcurl leg row seat\trowing-seat leg curl\n'
    'seat\tcurl leg row seat\trowing-seat leg curl\town\n'
    'seated\tband curl leg seated\tseated band leg curl\n'
    'seated\tband curl leg seated\tseated band leg curl\town\n'
    'seated\tband row seated\tband row\n'
    'seated\tbox jump seated\tseated box jump\n'
    'seated\tbox jump seated\tseated box jump\town\n'
    'seated\tcable pull seated\tseated cable row\n'
    'seated\tcable row seated\tseated cable row\town\n'
    'seated\tcalf plate raise seated\tdumbbell seated calf raise\n'
    'seated\tcalf plate seated\tdumbbell seated calf raise\n'
    'seated\tcalf raise seated\tseated calf raise\town\n'
    'seated\tcalf seated\tseated calf raise\n'
    'seated\tchest pass seated\tseated medicine ball chest pass\n'
    'seated\tchest press seated\tmachine chest press\n'
    'seated\tchest seated throw\tseated medicine ball chest pass\n'
    'seated\tchin seated tuck\tchin tuck\n'
    'seated\tcurl down leg one seated two up\teccentric seated leg curl\n'
    'seated\tcurl hammer seated\tseated hammer curl\town\n'
    'seated\tcurl leg seated\tseated leg curl\n'
    'seated\tcurl leg seated\tseated leg curl\town\n'
    'seated\tcurl seated\tseated dumbbell curl\n'
    'seated\tcurl seated wrist\twrist curl\n'
    'seated\tfloor press seated\tseated floor overhead press\n'
    'seated\theel raise seated\tseated calf raise\n'
    'seated\tjump seated\tseated box jump\n'
    'seated\tknee raise seated\tseated march\n'
    'seated\tknee seated tuck\ttuck-up\n'
    'seated\tleg lift seated\tseated straight-leg lift\n'
    'seated\tleg object raise seated\tseated straight-leg lift\n'
    'seated\tleg press seated\thorizontal leg press\n'
    'seated\tlift pike seated\tseated straight-leg lift\n'
    'seated\tmarch seated\tseated march\n'
    'seated\tmarch seated\tseated march\town\n'
    'seated\tpull rope seated sled\trope sled pull\n'
    'seated\traise seated side\tseated lateral raise\n'
    'seated\traise seated soleu\tseated calf raise\n'
    'seated\traise seated toe\tloaded tibialis raise\n'
    'seated\trow seated\tseated cable row\n'
    'seated\trow seated wide\twide-grip seated row\n'
    'seated\tseated side toss\tseated rotational throw\n'
    'seated\tseated twist\tRussian twist\n'
    'segmental\tdown roll segmental\tloaded spinal roll-down\n'
    'selectorised\tleg press selectorised\thorizontal leg press\n'
    'serratus\tband press serratus slide wall\twall slide with band\n'
    'serratus\tband punch serratus\tcable serratus punch\t\tband\n'
    'serratus\tband serratus slide\twall slide with band\n'
    'serratus\tband serratus slide wall\twall slide with band\n'
    'serratus\tcable punch serratus\tcable serratus punch\town\n'
    'serratus\tdumbbell punch serratus\tserratus punch\n'
    'serratus\tpress serratus supine\tserratus punch\n'
    'serratus\tpunch serratus\tserratus punch\town\n'
    'serratus\tpush-up serratus\tscapular push-up\n'
    'serratus\tserratus slide\twall slide\n'
    'serratus\tserratus slide wall\twall slide\n'
    'sheet\trow sheet\tdoorway row\n'
    'shin\tbox lift shin\t90/90 hip lift-off\n'
    'short\tarc quad short\tshort-arc leg extension\n'
    'short\tbench press short stop\tbench press stopped above the chest\n'
    'short\tbench short stop\tbench press stopped above the chest\n'
    'short\tfoot short\tshort foot\town\n'
    'short\tplank short\tknee plank\n'
    'short\tplank short side\tknee side plank\n'
    'short-lever\tadduction copenhagen short-lever\tshort-lever Copenhagen adduction\town\n'
    'short-lever\tcopenhagen plank short-lever\tshort-lever Copenhagen side plank\n'
    'short-lever\tcopenhagen plank short-lever side\tshort-lever Copenhagen side plank\town\n'
    'short-lever\tcopenhagen raise short-lever\tshort-lever Copenhagen adduction\n'
    'short-lever\tcopenhagen short-lever\tshort-lever Copenhagen side plank\n'
    'short-lever\tlateral raise short-lever\tbent-arm lateral raise\n'
    'shoulder\tband press shoulder\tband overhead press\n'
    'shoulder\tbarbell press seated shoulder\tseated barbell shoulder press\town\n'
    'shoulder\tbarbell press shoulder\toverhead press\n'
    'shoulder\tbarbell shoulder shrug\tbarbell shrug\n'
    'shoulder\tbear plank shoulder tap\tbear hold march\n'
    'shoulder\tcable press shoulder\tcable shoulder press\town\n'
    "shoulder\tcarry partner shoulder\tfireman's carry\n"
    'shoulder\tcarry sandbag shoulder\tsandbag shoulder carry\n'
    'shoulder\tcarry sandbag shoulder\tsandbag shoulder carry\town\n'
    'shoulder\tcarry shoulder\tsandbag shoulder carry\n'
    'shoulder\tdown hang shoulder shrug\tscapular pull-up\n'
    'shoulder\tdumbbell one-arm press shoulder\tone-arm dumbbell overhead press\n'
    'shoulder\tdumbbell press rotating shoulder\trotating dumbbell shoulder press\town\n'
    'shoulder\tdumbbell press seated shoulder\tseated dumbbell shoulder press\n'
    'shoulder\tdumbbell press seated shoulder\tseated dumbbell shoulder press\town\n'
    'shoulder\tdumbbell press shoulder\tseated dumbbell shoulder press\n'
    'shoulder\tdumbbell shoulder shrug\tdumbbell shrug\n'
    'shoulder\texternal rotation shoulder\tcable external rotation\n'
    'shoulder\thigh plank shoulder tap\tplank shoulder tap\n'
    'shoulder\tinternal rotation shoulder\tcable internal rotation\n'
    'shoulder\tlandmine press shoulder\tlandmine press\n'
    'shoulder\tmachine press seated shoulder\tmachine shoulder press\n'
    'shoulder\tmachine press shoulder\tmachine shoulder press\n'
    'shoulder\tmachine press shoulder\tmachine shoulder press\town\n'
    'shoulder\tpalm press shoulder\tneutral-grip dumbbell shoulder press\n'
    'shoulder\tplank shoulder tap\tplank shoulder tap\town\n'
    'shoulder\tpress sandbag shoulder\tsandbag overhead press\n'
    'shoulder\tpress shoulder\toverhead press\n'
    'shoulder\tpush-up shoulder\tpike push-up\n'
    'shoulder\tsandbag shoulder\tsandbag over shoulder\n'
    'shoulder\tsandbag shoulder\tsandbag over shoulder\town\n'
    'shoulder\tsandbag shoulder toss\tsandbag over shoulder\n'
    'shoulder\tshoulder stone\tsandbag over shoulder\n'
    'shoulder\tshoulder tap\tplank shoulder tap\n'
    'shouldered\tget-up shouldered\tsandbag get-up\n'
    'shouldering\tsandbag shouldering\tsandbag over shoulder\n'
    'shrimp\tshrimp squat\tshrimp squat\town\n'
    'shrug\tand clean pull shrug\tclean pull\n'
    'shrug\tcable low shrug\tcable shrug\n'
    'shrug\tcable shrug\tcable shrug\town\n'
    'shrug\tclean pull shrug\tclean pull\n'
    'shrug\tdip shrug\tscapular dip\n'
    'shrug\thang jump shrug\tjump shrug\n'
    'shrug\thang jump shrug\tpower shrug\n'
    'shrug\tjump shrug\tjump shrug\town\n'
    'shrug\tlever shrug\tmachine shrug\n'
    'shrug\tpower shrug\tpower shrug\town\n'
    'shrug\tprone shrug\tchest-supported shrug\n'
    'shrug\trear shrug\tbehind-the-back shrug\n'
    'shrug\trow shrug\tstraight-arm row\n'
    'shrug\tshrug\tbarbell shrug\n'
    'shuttle\trun shuttle\trun\n'
    'side\tband bend neck side\tband neck side bend\n'
    'side\tband bend neck side\tband neck side bend\town\n'
    'side\tband bend side\toverhead side bend\t\tband\n'
    'side\tbend neck side\tneck side bend\town\n'
    'side\tbend side\tdumbbell side bend\n'
    'side\tjump side side\tlateral hurdle jump\n'
    'side-lying\tabduction hip side-lying\tside-lying hip abduction\town\n'
    'side-lying\tabduction raise side-lying\tside-lying lateral raise\n'
    'side-lying\tabduction side-lying\tside-lying hip abduction\n'
    'side-lying\tadduction hip side-lying\tside-lying hip adduction\town\n'
    'side-lying\tadduction side-lying\tside-lying hip adduction\n'
    'side-lying\tclamshell side-lying\tclamshell\n'
    'side-lying\tcrunch side-lying\tside crunch\n'
    'side-lying\tdelt fly rear side-lying\tside-lying reverse fly\n'
    'side-lying\tdelt raise rear side-lying\tside-lying reverse fly\n'
    'side-lying\tdumbbell external rotation side-lying\tside-lying external rotation\n'
    'side-lying\texternal rotation side-lying\tside-lying external rotation\n'
    'side-lying\texternal rotation side-lying\tside-lying external rotation\town\n'
    'side-lying\tfly reverse side-lying\tside-lying reverse fly\town\n'
    'side-lying\thip internal rotation side-lying\treverse clamshell\n'
    'side-lying\thip leg lift raise side-lying\tside plank with leg raise\n'
    'side-lying\thip raise side-lying\tside plank dip\n'
    'side-lying\tincline lateral raise side-lying\tside-lying lateral raise\n'
    'side-lying\tinner lift side-lying thigh\tside-lying hip adduction\n'
    'side-lying\tlateral raise side-lying\tside-lying lateral raise\town\n'
    'side-lying\tleg lift side-lying\tside-lying hip abduction\n'
    'side-lying\tleg raise side-lying\tside-lying hip abduction\n'
    'sideway\tband sideway walk\tlateral band walk\n'
    'sideway\tbear crawl sideway\tlateral bear crawl\n'
    'sideway\tdrag sideway sled\tlateral sled drag\n'
    'simulator\tcar deadlift simulator\ttrap bar deadlift\n'
    'single\tbar dip single\tstraight-bar dip\n'
    'sit-to-stand\tchair sit-to-stand\tchair squat\n'
    'sit-to-stand\tone-leg sit-to-stand\tsingle-leg box squat\n'
    'sit-to-stand\tsit-to-stand\tchair squat\n'
    'sit-to-stand\tsit-to-stand\tchair squat\town\n'
    'sit-to-stand\tsit-to-stand test\tchair squat\n'
    'sit-up\tboard sit-up slant\tdecline sit-up\n'
    'sit-up\tfloor sit-up\tsit-up\n'
    'sit-up\tfull sit-up\tsit-up\n'
    'sit-up\tget-up sit-up\tTurkish sit-up\n'
    'sit-up\tguard sit-up\tsit-up\n'
    'sit-up\tknee sit-up tuck\ttuck-up\n'
    'sit-up\tplate sit-up\tweighted sit-up\n'
    'sit-up\tsit-up\tsit-up\town\n'
    'sit-up\tsit-up throw\tmedicine ball pullover throw\n'
    'skater\tbound skater\tlateral bound\n'
    'skater\thop skater\tlateral bound\n'
    'skater\tjump skater\tlateral bound\n'
    'skater\tjump skater speed\tlateral bound\n'
    'skater\tlunge skater\tskater squat\n'
    'skater\tskater squat\tskater squat\town\n'
    'skip\thigh knee skip\tA-skip\n'
    'skip\trope skip\tjump rope\n'
    'skipping\tdistance skipping\tpower skip\n'
    'skipping\theight skipping\tpower skip\n'
    'skipping\thigh knee skipping\tA-skip\n'
    'skipping\trope skipping\tjump rope\n'
    'skipping\tskipping two-leg\tjump rope\n'
    'slam\tball slam\tmedicine ball slam\n'
    'slam\trope slam\trope slam\town\n'
    'slam\tside slam\trotational medicine ball slam\n'
    'slant\tboard leg raise slant\tincline leg raise\n'
    'slcr\tslcr\tsingle-leg calf raise\n'
    'sled\tarm arm pull sled\trope sled pull\n'
    'sled\tdelt rear row sled\tsled face pull\n'
    'sled\tdrag side sled\tlateral sled drag\n'
    'sled\tdrag sled\tsled drag\town\n'
    'sled\tface pull sled\tsled face pull\town\n'
    'sled\tfast push sled\tsled sprint\n'
    'sled\thip sled\tleg press\n'
    'sled\tjump sled\tleg press jump\n'
    'sled\tout push sled\tsled chest press\n'
    'sled\tpull rope sled\trope sled pull\town\n'
    'sled\tpull row sled\tsled row\n'
    'sled\tpull sled\tsled drag\n'
    'sled\tpush sled\tsled push\n'
    'sled\tpush sled\tsled push\town\n'
    'sled\trow sled\tsled row\town\n'
    'sled\tsled tow\tsled drag\n'
    'sledgehammer\tlever sledgehammer\twrist deviation with a lever\n'
    'slhb\tslhb\tsingle-leg hamstring bridge\n'
    'slide\tband slide wall\twall slide with band\n'
    'slide\tband slide wall\twall slide with band\town\n'
    'slide\tcurl leg slide\tslider leg curl\n'
    'slide\tfloor slide\twall slide\n'
    'slide\thack slide\thack squat\n'
    'slide\tlift slide wall\twall slide\n'
    'slide\tslide wall\twall slide\town\n'
    'slider\tbody reach slider\tslider rollout\n'
    'slider\tcurl leg lower slider\teccentric slider leg curl\n'
    'slider\tcurl leg slider\tslider leg curl\n'
    'slider\tcurl leg slider\tslider leg curl\town\n'
    'slider\tcurtsy lunge slider\tcurtsy lunge\t\tsliders\n'
    'slider\tknee slider tuck\tslider knee tuck\n'
    'slider\tknee slider tuck\tslider knee tuck\town\n'
    'slider\tlunge slider\tslider reverse lunge\n'
    'slider\tpike slider\tslider pike\n'
    'slider\tpike slider\tslider pike\town\n'
    'slider\tpike slider up\tslider pike\n'
    'slider\tplank saw slider\tbody saw\n'
    'snap\tband hip snap\tband swing\n'
    'snap\tdown snap\tsnap-down\town\n'
    'snatch\tand pull shrug snatch\tsnatch pull\n'
    'snatch\tblock power snatch\thang power snatch\n'
    'snatch\tblock pull snatch\thang snatch pull\n'
    'snatch\tblock snatch\thang snatch\n'
    'snatch\tcatch snatch split\tpower snatch\n'
    'snatch\tdrop snatch\tsnatch balance\n'
    'snatch\tfloor power snatch\tpower snatch\n'
    'snatch\tfloor pull snatch\tsnatch pull\n'
    'snatch\tfloor snatch\tsnatch\n'
    'snatch\tfull snatch\tsnatch\n'
    'snatch\thang muscle snatch\thang muscle snatch\town\n'
    'snatch\thang power snatch\thang power snatch\n'
    'snatch\thang power snatch\thang power snatch\town\n'
    'snatch\thang pull snatch\thang snatch pull\n'
    'snatch\thang pull snatch\thang snatch pull\town\n'
    'snatch\thang snatch\thang snatch\n'
    'snatch\thang snatch\thang snatch\town\n'
    'snatch\thang snatch squat\thang snatch\n'
    'snatch\thigh pull snatch\tsnatch high pull\town\n'
    'snatch\tmuscle snatch\thang muscle snatch\n'
    'snatch\tpower snatch\tpower snatch\town\n'
    'snatch\tpull shrug snatch\tsnatch pull\n'
    'snatch\tpull snatch\tsnatch pull\town\n'
    'snatch\tshrug snatch\tsnatch-grip shrug\n'
    'snatch\tsnatch\tsnatch\town\n'
    'snatch\tsnatch split\tpower snatch\n'
    'snatch\tsnatch squat\tsnatch\n'
    'snatch\tsnatch tall\ttall snatch\town\n'
    'snatch\tsnatch toe\ttall snatch\n'
    'snatch-grip\tbarbell row snatch-grip\tsnatch-grip row\n'
    'snatch-grip\tbent-over row snatch-grip\tsnatch-grip row\n'
    'snatch-grip\tdeadlift romanian snatch-grip\tsnatch-grip Romanian deadlift\n'
    'snatch-grip\tdeadlift romanian snatch-grip\tsnatch-grip Romanian deadlift\town\n'
    'snatch-grip\tdeadlift snatch-grip\tsnatch-grip deadlift\n'
    'snatch-grip\tdeadlift snatch-grip\tsnatch-grip deadlift\town\n'
    'snatch-grip\thigh pull snatch-grip\tsnatch high pull\n'
    'snatch-grip\toverhead shrug snatch-grip\toverhead shrug\n'
    'snatch-grip\tpress push snatch-grip\tbehind-the-neck push press\n'
    'snatch-grip\tpress snatch-grip squat\tSots press\n'
    'snatch-grip\tpull snatch-grip\tsnatch pull\n'
    'snatch-grip\trow snatch-grip\tsnatch-grip row\town\n'
    'snatch-grip\tshrug snatch-grip\tsnatch-grip shrug\town\n'
    'soccer\tsoccer throw\tmedicine ball overhead throw\n'
    'soleu\tcalf raise soleu\tbent-knee calf raise\n'
    'soleu\tcalf soleu\tbent-knee calf raise\n'
    'soleu\tpush soleu wall\tbent-knee calf hold\n'
    'soleu\traise soleu\tbent-knee calf raise\n'
    'spanish\tband spanish squat\tSpanish squat\n'
    'spanish\tspanish squat\tSpanish squat\town\n'
    'speed\tbench press speed\tspeed bench press\town\n'
    'speed\tbench speed\tspeed bench press\n'
    'speed\thop speed\ttriple hop\n'
    'speed\tpush sled speed\tsled sprint\n'
    'spider\tcurl spider\tprone incline curl\n'
    'spin\tbike spin\tstationary bike\n'
    'spinal\tdown roll spinal\tloaded spinal roll-down\n'
    'spinning\tbike spinning\tstationary bike\n'
    'split\tand clean jerk split\tclean and jerk\n'
    'split\tcatch clean split\tpower clean\n'
    'split\tclean split\tpower clean\n'
    'split\tjerk split\tsplit jerk\town\n'
    'split\tjump lunge split\tsplit squat jump\n'
    'split\tjump split\tsplit squat jump\n'
    'split-stance\tbent-knee calf raise split-stance\tguided-bar bent-knee calf raise\n'
    'split-stance\tbent-knee calf split-stance\tguided-bar bent-knee calf raise\n'
    'split-stance\tcable press split-stance\tone-arm cable press\n'
    'split-stance\tcable row split-stance\tstanding cable row\n'
    'split-stance\tdeadlift romanian split-stance\tB-stance Romanian deadlift\n'
    'split-stance\tdeadlift split-stance trap-bar\tB-stance trap bar deadlift\n'
    'split-stance\tdumbbell press split-stance\tstanding dumbbell shoulder press\n'
    'split-stance\tkettlebell row split-stance\tone-arm kettlebell row\n'
    'split-stance\tlandmine press push split-stance\tlandmine push press\n'
    'split-stance\tout press split-stance\tsplit-stance anti-rotation press\n'
    'sprint\tair bike sprint\tfan bike\n'
    'sprint\tbike fan sprint\tfan bike\n'
    'sprint\tbike sprint\tstationary bike\n'
    'sprint\tbuild sprint up\tsprint\n'
    'sprint\tflat sprint\tsprint\n'
    'sprint\tflying sprint\tsprint\n'
    'sprint\thill sprint\thill sprint\town\n'
    'sprint\tpull sled sprint\tresisted sprint\n'
    'sprint\tpush sled sprint\tsled sprint\n'
    'sprint\tsled sprint\tsled sprint\town\n'
    'sprint\tsled sprint tow\tresisted sprint\n'
    'sprint\tsprint\tsprint\town\n'
    'sprint\tsprint stair\tstair run\n'
    'sprint\tsprint step\tstair run\n'
    'sprint\tsprint towed\tresisted sprint\n'
    'sprinting\tresisted sprinting\tresisted sprint\n'
    'sprinting\tsprinting\tsprint\n'
    'squat\tair squat\tbodyweight squat\n'
    'squat\tback box squat\tbox squat\n'
    'squat\tback half squat\thalf squat\n'
    'squat\tback jump squat\tsquat jump\n'
    'squat\tback squat\tback squat\town\n'
    'squat\tball squat wall\tball wall squat\n'
    'squat\tball squat wall\tball wall squat\town\n'
    'squat\tball squat wall\twall ball squat\town\n'
    'squat\tband knee squat\tSpanish squat\n'
    'squat\tband squat\tbanded squat\n'
    'squat\tband squat\tbanded squat\town\n'
    'squat\tbar elbow squat\telbow-crook squat\n'
    'squat\tbear hug squat\tsandbag squat\n'
    'squat\tbelt hip squat\tbelt squat\n'
    'squat\tbelt march squat\tbelt squat march\town\n'
    'squat\tbelt squat\tbelt squat\town\n'
    'squat\tbench sissy squat\tsissy squat\n'
    'squat\tblock clean squat\tblock clean\n'
    'squat\tboard slant squat\theel-elevated squat\n'
    'squat\tbox squat\tbox squat\town\n'
    'squat\tcalf hack raise squat\thack squat calf raise\town\n'
    'squat\tcalf hack squat\thack squat calf raise\n'
    'squat\tcalf raise split squat\tguided-bar bent-knee calf raise\n'
    'squat\tcalf split squat\tguided-bar bent-knee calf raise\n'
    'squat\tchair squat\tchair squat\n'
    'squat\tclean hang squat\thang clean\n'
    'squat\tclean squat\tclean\n'
    'squat\tcrook elbow squat\telbow-crook squat\n'
    'squat\tcrook elbow squat\telbow-crook squat\town\n'
    'squat\tdeep squat\tback squat\n'
    'squat\tdepth half squat\thalf squat\n'
    'squat\tdip jerk squat\tjerk dip\n'
    'squat\tdip squat\tjerk dip\n'
    'squat\tdrop rapid squat\tsnap-down\n'
    'squat\tdrop squat\tsnap-down\n'
    'squat\tfree squat\tbodyweight squat\n'
    'squat\tfront lunge squat\tfront-rack reverse lunge\n'
    'squat\tfront press squat\tthruster\n'
    'squat\tfront squat\tfront squat\n'
    'squat\tfront squat\tfront squat\town\n'
    'squat\tfull squat\tback squat\n'
    'squat\thack sled squat\thack squat\n'
    'squat\thack squat\thack squat\town\n'
    'squat\thalf squat\thalf squat\town\n'
    'squat\tjerk squat\tsquat jerk\town\n'
    'squat\tjump split squat\tsplit squat jump\town\n'
    'squat\tjump squat\tbarbell squat jump\n'
    'squat\tjump squat\tsquat jump\n'
    'squat\tjump squat\tsquat jump\town\n'
    'squat\tmini squat\tmini squat\town\n'
    'squat\tpin squat\tisometric squat\n'
    'squat\tpin squat\tpin squat\n'
    'squat\tpin squat\tpin squat\town\n'
    'squat\tplie squat\tsumo squat\n'
    'squat\tpress squat\tSots press\n'
    'squat\tpress squat\tthruster\n'
    'squat\tside side squat\tCossack squat\n'
    'squat\tsissy squat\tsissy squat\town\n'
    'squat\tsplit squat\tsplit squat\town\n'
    'squat\tsquat\tback squat\n'
    'squat\tsquat sumo\tsumo squat\town\n'
    'squat\tsquat v\tmachine squat\n'
    'squat\tsquat wall\twall sit\n'
    'squeeze\tball bug dead squeeze\tstability-ball dead bug\n'
    'squeeze\tball calf raise squeeze\tball-squeeze calf raise\town\n'
    'squeeze\tball calf squeeze\tball-squeeze calf raise\n'
    'squeeze\tball grip squeeze\thand gripper squeeze\n'
    'squeeze\tball heel raise squeeze\tball-squeeze calf raise\n'
    'squeeze\tball squeeze\tball squeeze\town\n'
    'squeeze\tcalf heel raise squeeze\tball-squeeze calf raise\n'
    'squeeze\tcalf heel squeeze\tball-squeeze calf raise\n'
    'squeeze\tgrip squeeze\thand gripper squeeze\n'
    'squeeze\tgripper hand squeeze\thand gripper squeeze\town\n'
    'squeeze\tgroin squeeze\tball squeeze\n'
    'squeeze\tknee squeeze\tball squeeze\n'
    'squeeze\tplate press squeeze\tplate squeeze press\town\n'
    'squeeze\tpress squeeze\tdumbbell squeeze press\n'
    'squeeze\tputty squeeze\thand gripper squeeze\n'
    'stabilisation\trhythmic stabilisation\trhythmic stabilisation\town\n'
    'stability-ball\tback extension stability-ball\tstability-ball back extension\n'
    'stability-ball\tback extension stability-ball\tstability-ball back extension\town\n'
    'stability-ball\tbug dead stability-ball\tstability-ball dead bug\n'
    'stability-ball\tbug dead stability-ball\tstability-ball dead bug\town\n'
    'stability-ball\tcircle plank stability-ball\tstability-ball circle plank\town\n'
    'stability-ball\tcrunch stability-ball\tstability-ball crunch\n'
    'stability-ball\tcrunch stability-ball\tstability-ball crunch\town\n'
    'stability-ball\tcrunch stability-ball weighted\tweighted stability-ball crunch\n'
    'stability-ball\tcrunch stability-ball weighted\tweighted stability-ball crunch\town\n'
    'stability-ball\tcurl leg one-leg stability-ball\tsingle-leg ball leg curl\n'
    'stability-ball\tcurl leg stability-ball\tball leg curl\n'
    'stability-ball\tcurl stability-ball\tball leg curl\n'
    'stability-ball\tisometric neck stability-ball\tstability-ball neck hold\town\n'
    'stability-ball\tjackknife stability-ball\tstability-ball knee tuck\n'
    'stability-ball\tknee stability-ball tuck\tstability-ball knee tuck\town\n'
    'stability-ball\tpike stability-ball\tstability-ball pike\n'
    'stability-ball\tpike stability-ball\tstability-ball pike\town\n'
    'stability-ball\tplank stability-ball\tstability-ball plank\n'
    'stability-ball\tplank stability-ball\tstability-ball plank\town\n'
    'stability-ball\trollout stability-ball\tstability-ball rollout\n'
    'stability-ball\trollout stability-ball\tstability-ball rollout\town\n'
    'stability-ball\trotation stability-ball\tstability-ball Russian twist\n'
    'stability-ball\trussian stability-ball twist\tstability-ball Russian twist\town\n'
    'stability-ball\tsquat stability-ball wall\tball wall squat\n'
    'stabilization\trhythmic stabilization\trhythmic stabilisation\n'
    'stack\tleg press stack\thorizontal leg press\n'
    'stadium\trun stadium\tstair run\n'
    'staggered-stance\tdeadlift romanian staggered-stance\tB-stance Romanian deadlift\n'
    'staggered-stance\tdeadlift romanian staggered-stance\tB-stance Romanian deadlift\town\n'
    'staggered-stance\tdeadlift staggered-stance\tB-stance Romanian deadlift\n'
    'staggered-stance\tdeadlift staggered-stance trap-bar\tB-stance trap bar deadlift\n'
    'staggered-stance\tdeadlift staggered-stance trap-bar\tB-stance trap bar deadlift\town\n'
    'staggered-stance\thip staggered-stance thrust\tB-stance hip thrust\n'
    'staggered-stance\thip staggered-stance thrust\tB-stance hip thrust\town\n'
    'staggered-stance\thip staggered-stance thruster\tB-stance hip thrust\n'
    'stair\tclimb load stair\tloaded stair climb\n'
    'stair\tclimb stair\tloaded stair climb\n'
    'stair\tmill stair\tstair climber\n'
    'stair\trun stair\tstair run\town\n'
    'stair\tstair walk\tloaded stair climb\n'
    'stance\tleg narrow press stance\tlow-foot leg press\n'
    'stance\tleg press stance wide\thigh-foot leg press\n'
    'stance\tsquat stance wide\tsumo squat\n'
    'stand\tchair stand up\tchair squat\n'
    'stand\theel stand toe\ttandem stand\n'
    'stand\tstand toe\tbodyweight calf raise\n'
    'standing\tab rollout standing wheel\tstanding ab wheel rollout\town\n'
    'standing\tab standing wheel\tstanding ab wheel rollout\n'
    'standing\tairplane hip standing\thip airplane\n'
    'standing\tback leg raise standing\tbodyweight standing hip extension\n'
    'standing\tband curl leg standing\tband standing leg curl\n'
    'standing\tband curl leg standing\tband standing leg curl\town\n'
    'standing\tband flexion hip standing\tband hip flexion\n'
    'standing\tband row standing\tband row\n'
    'standing\tbarbell calf raise standing\tbarbell calf raise\n'
    'standing\tbarbell calf standing\tbarbell calf raise\n'
    'standing\tbarbell curl standing\tbarbell curl\n'
    'standing\tbarbell press standing\toverhead press\n'
    'standing\tbarbell rollout standing\tstanding ab wheel rollout\t\tbarbell\n'
    'standing\tbend knee standing\tbodyweight standing leg curl\n'
    'standing\tbend side standing\tdumbbell side bend\n'
    'standing\tbox jump standing\tbox jump\n'
    'standing\tbroad jump standing\tbroad jump\n'
    'standing\tcable chest press standing\tstanding cable chest press\town\n'
    'standing\tcable crunch standing\tstanding cable crunch\town\n'
    'standing\tcable curl leg standing\tcable leg curl\n'
    'standing\tcable curl standing\tcable curl\n'
    'standing\tcable drive knee standing\tcable hip flexion\n'
    'standing\tcable external rotation standing\tcable external rotation\n'
    'standing\tcable flexion hip standing\tcable hip flexion\n'
    'standing\tcable fly standing\tcable fly\n'
    'standing\tcable lift standing\tlow-to-high cable chop\n'
    'standing\tcable one-arm row standing\tone-arm cable row\n'
    'standing\tcable press shoulder standing\tcable shoulder press\n'
    'standing\tcable pullover standing\tstraight-arm pulldown\n'
    'standing\tcable punch standing\tcable serratus punch\n'
    'standing\tcable raise standing y\tcable Y raise\n'
    'standing\tcable rotation standing\tcable rotation\n'
    'standing\tcable row standing\tstanding cable row\town\n'
    'standing\tcalf dumbbell raise standing\tdumbbell calf raise\n'
    'standing\tcalf dumbbell standing\tdumbbell calf raise\n'
    'standing\tcalf machine raise standing\tstanding calf raise\n'
    'standing\tcalf machine standing\tstanding calf raise\n'
    'standing\tcalf one-leg raise standing\tsingle-leg calf raise\n'
    'standing\tcalf one-leg standing\tsingle-leg calf raise\n'
    'standing\tcalf raise standing\tstanding calf raise\town\n'
    'standing\tcalf standing\tstanding calf raise\n'
    'standing\tchest standing throw\tmedicine ball chest pass\n'
    'standing\tchin standing tuck\tchin tuck\n'
    'standing\tcrunch rope standing\tstanding cable crunch\n'
    'standing\tcurl dumbbell standing\tdumbbell curl\n'
    'standing\tcurl hammer standing\thammer curl\n'
    'standing\tcurl knee standing\tbodyweight standing leg curl\n'
    'standing\tcurl leg machine standing\tstanding leg curl\n'
    'standing\tcurl leg one-leg standing\tstanding leg curl\n'
    'standing\tcurl leg standing\tstanding leg curl\n'
    'standing\tcurl leg standing\tstanding leg curl\town\n'
    'standing\tcurl standing\tbarbell curl\n'
    'standing\tcurl standing wrist\tbehind-the-back wrist curl\n'
    'standing\tdumbbell overhead press standing\tstanding dumbbell shoulder press\n'
    'standing\tdumbbell press shoulder standing\tstanding dumbbell shoulder press\town\n'
    'standing\tdumbbell press standing\tstanding dumbbell shoulder press\n'
    'standing\tdumbbell shrug standing\tdumbbell shrug\n'
    'standing\texternal rotation standing\tcable external rotation\n'
    'standing\tfallout standing\tsuspension fallout\n'
    'standing\tflexion hip machine standing\tmachine hip flexion\n'
    'standing\tflexion knee standing\tbodyweight standing leg curl\n'
    'standing\tfoot short standing\tshort foot\n'
    'standing\tfront raise standing\tfront raise\n'
    'standing\theel raise standing\tstanding calf raise\n'
    'standing\thike hip standing\tpelvic drop\n'
    'standing\tinternal rotation standing\tcable internal rotation\n'
    'standing\tjump long standing\tbroad jump\n'
    'standing\tjump standing triple\tbounding\n'
    'standing\tknee lift standing\tstanding knee raise\n'
    'standing\tknee raise standing\tstanding knee raise\town\n'
    'standing\tlateral raise standing\tlateral raise\n'
    'standing\tleg lift side standing\tbodyweight standing hip abduction\n'
    'standing\tleg raise side standing\tbodyweight standing hip abduction\n'
    'standing\tlever press standing\tstanding lever press\town\n'
    'standing\tmachine squat standing\tmachine squat\n'
    'standing\tmarch standing\tstanding knee raise\n'
    'standing\tone-leg standing\tsingle-leg balance\n'
    'standing\toverhead press standing\toverhead press\n'
    'standing\tplate press standing\tplate squeeze press\n'
    'standing\tpower standing throw\tbackward overhead throw\n'
    'standing\tpress standing\toverhead press\n'
    'standing\tpress standing wall\twall press abduction hold\n'
    'standing\tpush-up scapular standing\twall scapular push-up\n'
    'standing\tpush-up standing wall\twall push-up\n'
    'standing\traise standing toe\ttibialis raise\n'
    'standing\trollout standing\tstanding ab wheel rollout\n'
    'standing\trollout standing wheel\tstanding ab wheel rollout\n'
    'standing\trotation standing trunk\tcable rotation\n'
    'standing\trow sled standing\tsled row\n'
    'standing\trow standing\tstanding cable row\n'
    'standing\trow standing t-bar\tT-bar row\n'
    'star\tjump star\tjumping jack\n'
    'static\tcurl static\tcurl hold\n'
    'static\tjump squat static\tsquat jump\n'
    'static\tjump static\tsquat jump\n'
    'static\tlunge static\tsplit squat\n'
    'station\tdip knee raise station\tsupported knee raise\n'
    'station\tdip leg raise station\tsupported leg raise\n'
    'stationary\tbike sprint stationary\tstationary bike\n'
    'stationary\tbike stationary\tstationary bike\town\n'
    'stationary\tlunge stationary\tsplit squat\n'
    'steep-incline\tdumbbell press steep-incline\tsteep incline dumbbell press\n'
    'steep-incline\tdumbbell press steep-incline\tsteep incline dumbbell press\town\n'
    'step\tband side step\tlateral band walk\n'
    'step\tmill step\tstair climber\n'
    'step-down\tbackward step-down\tstep-down\n'
    'step-down\tbox jump step-down\tbox jump\n'
    'step-down\tbox step-down\tstep-down\n'
    'step-down\teccentric step-down\tstep-down\n'
    'step-down\tforward step-down\tstep-down\n'
    'step-down\tlateral step-down\tstep-down\n'
    'step-down\treverse step-down\tstep-down\n'
    'step-down\tstep-down\tstep-down\town\n'
    'step-over\tbench step-over\tbox step-over\n'
    'step-over\tbox burpee step-over\tburpee\n'
    'step-over\tbox lateral step-over\tbox step-over\n'
    'step-over\tbox step-over\tbox step-over\town\n'
    'step-over\tlateral step-over\tbox step-over\n'
    'step-over\tside step-over\tbox step-over\n'
    'step-over\tstep-over\tbox step-over\n'
    'step-up\tbarbell step-up\tbarbell step-up\n'
    'step-up\tbarbell step-up\tbarbell step-up\town\n'
    'step-up\tbench step-up\tstep-up\n'
    'step-up\tbox front step-up\theel-raised step-up\n'
    'step-up\tbox high step-up\thigh step-up\n'
    'step-up\tbox step-up\tstep-up\n'
    'step-up\tdrive knee step-up\tstep-up with knee drive\n'
    'step-up\tdrive knee step-up\tstep-up with knee drive\town\n'
    'step-up\tforward step-up\tstep-up\n'
    'step-up\thigh step-up\thigh step-up\town\n'
    'step-up\tjump step-up\texplosive step-up\n'
    'step-up\tjumping step-up\texplosive step-up\n'
    'step-up\tknee raise step-up\tstep-up with knee drive\n'
    'step-up\tlateral step-up\tlateral step-up\town\n'
    'step-up\tother side step-up\tbox step-over\n'
    'step-up\tquad step-up\theel-raised step-up\n'
    'step-up\tside step-up\tlateral step-up\n'
    'step-up\tstair step-up\tbodyweight step-up\n'
    'step-up\tstep-up\tstep-up\town\n'
    'step-up\tstep-up wedge\theel-raised step-up\n'
    'stepper\tmachine stepper\tstair climber\n'
    'stepper\tstair stepper\tstair climber\n'
    'stepper\tstepper\tstair climber\n'
    'stepping\toverhead stepping throw\tstep-in overhead throw\n'
    'stick\tand drop stick\tdrop landing\n'
    'stick\tand hop stick\thop and stick\town\n'
    'stick\thinge hip stick\thip hinge drill\n'
    'stiff-leg\tbarbell deadlift stiff-leg\tstiff-leg deadlift\n'
    'stiff-leg\tcable deadlift stiff-leg\tcable Romanian deadlift\n'
    'stiff-leg\tdeadlift deficit stiff-leg\tdeficit stiff-leg deadlift\n'
    'stiff-leg\tdeadlift deficit stiff-leg\tdeficit stiff-leg deadlift\town\n'
    'stiff-leg\tdeadlift dumbbell stiff-leg\tdumbbell stiff-leg deadlift\n'
    'stiff-leg\tdeadlift dumbbell stiff-leg\tdumbbell stiff-leg deadlift\town\n'
    'stiff-leg\tdeadlift one-leg stiff-leg\tsingle-leg Romanian deadlift\n'
    'stiff-leg\tdeadlift plate stiff-leg\tdeficit stiff-leg deadlift\n'
    'stiff-leg\tdeadlift stiff-leg\tstiff-leg deadlift\n'
    'stiff-leg\tdeadlift stiff-leg\tstiff-leg deadlift\town\n'
    'stiff-leg\thop stiff-leg\tpogo jump\n'
    'stiff-leg\tstiff-leg\tstiff-leg deadlift\n'
    'stir\tpot stir\tstability-ball circle plank\n'
    'stone\tatla bar stone\tsandbag over shoulder\n'
    'stone\tatla lift stone\tsandbag over shoulder\n'
    'stone\tatla stone\tsandbag over shoulder\n'
    'stone\tcarry stone\tsandbag carry\n'
    'stopped\trollout stopped wall\tab wheel rollout to a wall\n'
    'straddle\tdeadlift straddle\tstraddle deadlift\town\n'
    'straddle\thop side straddle\tjumping jack\n'
    'straddle\tlift straddle\tstraddle deadlift\n'
    'straight\tdrop heel knee straight\theel drop\n'
    'straight-arm\tband pulldown straight-arm\tband straight-arm pulldown\n'
    'straight-arm\tband pulldown straight-arm\tband straight-arm pulldown\town\n'
    'straight-arm\tcable pulldown straight-arm\tstraight-arm pulldown\n'
    'straight-arm\tcrunch straight-arm\tlong-arm crunch\n'
    'straight-arm\tdip straight-arm\tscapular dip\n'
    'straight-arm\thang straight-arm\tdead hang\n'
    'straight-arm\tone-arm pulldown straight-arm\tone-arm straight-arm pulldown\n'
    'straight-arm\tone-arm pulldown straight-arm\tone-arm straight-arm pulldown\town\n'
    'straight-arm\tplank shoulder straight-arm tap\tplank shoulder tap\n'
    'straight-arm\tplank side straight-arm\tstraight-arm side plank\town\n'
    'straight-arm\tplank straight-arm\thigh plank\n'
    'straight-arm\tpull-up scapular straight-arm\tscapular pull-up\n'
    'straight-arm\tpulldown rope straight-arm\tstraight-arm pulldown\n'
    'straight-arm\tpulldown scapular straight-arm\tmachine shoulder depression\n'
    'straight-arm\tpulldown straight-arm\tstraight-arm pulldown\n'
    'straight-arm\tpulldown straight-arm\tstraight-arm pulldown\town\n'
    'straight-arm\trow straight-arm\tstraight-arm row\town\n'
    'straight-arm\tsit-up straight-arm\tTurkish sit-up\n'
    'straight-bar\tcurl straight-bar\tbarbell curl\n'
    'straight-bar\tdip straight-bar\tstraight-bar dip\town\n'
    'straight-bar\tpushdown straight-bar\tstraight-bar pushdown\town\n'
    'straight-leg\tbound distance straight-leg\tstraight-leg bound\n'
    'straight-leg\tbound straight-leg\tstraight-leg bound\town\n'
    'straight-leg\tbounding straight-leg\tstraight-leg bound\n'
    'straight-leg\tbridge straight-leg\tlong-lever bridge\n'
    'straight-leg\tdeadlift dumbbell straight-leg\tdumbbell stiff-leg deadlift\n'
    'straight-leg\tdeadlift straight-leg\tstiff-leg deadlift\n'
    'straight-leg\tdrag sled straight-leg\tsled hip extension walk\n'
    'straight-leg\thang raise straight-leg\thanging leg raise\n'
    'straight-leg\tleg lying raise straight-leg\tlying leg raise\n'
    'straight-leg\tlift seated straight-leg\tseated straight-leg lift\town\n'
    'straight-leg\tlift straight-leg supine\tsupine straight-leg raise\n'
    'straight-leg\tlowering straight-leg\tleg lowering\n'
    'straight-leg\tone-leg raise straight-leg\tsupine straight-leg raise\n'
    'straight-leg\tpress seated straight-leg\tseated floor overhead press\n'
    'straight-leg\traise single straight-leg\tsupine straight-leg raise\n'
    'straight-leg\traise straight-leg\tsupine straight-leg raise\n'
    'straight-leg\traise straight-leg supine\tsupine straight-leg raise\town\n'
    'strap\tankle curl leg strap\tcable leg curl\n'
    'strap\tcurl leg strap\tsuspension leg curl\n'
    'strap\tface pull sled strap\tsled face pull\n'
    'strap\trow sled strap\tsled row\n'
    'strap\trow strap\tsuspension row\n'
    'strap\tsquat strap\tsuspension squat\n'
    'stretcher\tcarry stretcher\tstretcher carry\town\n'
    'stretcher\tstretcher walk\tstretcher carry\n'
    'strict\tbar strict toe\ttoes to bar\n'
    'strict\tcurl strict\tstrict curl against the wall\n'
    'strict\tcurl strict wall\tstrict curl against the wall\town\n'
    'strict\tfloor row strict\tdead-stop row\n'
    'stride\tdrag long sled stride\tsled hip extension walk\n'
    'style\thard plank style\tlong-lever plank\n'
    'suitcase\tand carry overhead suitcase\tmixed carry\n'
    'suitcase\tcarry suitcase\tsuitcase carry\town\n'
    'suitcase\tdeadlift suitcase\tsuitcase deadlift\town\n'
    'suitcase\tdumbbell squat suitcase\tdumbbell squat\n'
    'suitcase\tmarch suitcase\tmarching carry\n'
    'suitcase\tsuitcase walk\tsuitcase carry\n'
    'sumo\tpull sumo\tsumo deadlift\n'
    'super\tsuper yoke\tyoke carry\n'
    'superman\thollow roll superman\thollow-to-arch roll\n'
    'superman\tsuperman\tprone back extension\n'
    'supinating\tcurl supinating\tdumbbell curl\n'
    'supination\tand dumbbell pronation supination\tforearm pronation and supination\n'
    'supination\tand forearm pronation supination\tforearm pronation and supination\town\n'
    'supination\tand hammer pronation supination\tforearm pronation and supination\n'
    'supination\tand pronation supination\tforearm pronation and supination\n'
    'supination\tand pronation supination wrist\tforearm pronation and supination\n'
    'supination\tcurl pronation supination\trotating curl\n'
    'supination\tdumbbell pronation supination\tforearm pronation and supination\n'
    'supination\tdumbbell supination\tforearm supination\n'
    'supination\tforearm supination\tforearm supination\town\n'
    'supination\thammer pronation supination\tforearm pronation and supination\n'
    'supination\thammer supination\tforearm supination\n'
    'supination\tlever supination\tforearm supination\n'
    'supination\tpronation supination\tforearm pronation and supination\n'
    'supine\tband march supine\tband hip flexion\n'
    'supine\tcable curl supine\tlying cable curl\n'
    'supine\tcable knee raise supine\tlying cable knee drive\n'
    'supine\tchest supine throw\tlying medicine ball chest throw\n'
    'supine\tflexor hip march supine\tband hip flexion\n'
    'supine\thead lift supine\tlying head lift hold\n'
    'supine\tleg raise supine\tlying leg raise\n'
    'supine\tmarch supine\tdead bug heel tap\n'
    'supine\tplank supine\treverse plank\n'
    'supine\trow supine\tinverted row\n'
    'supine\tsupine tap toe\tdead bug heel tap\n'
    'support\tbar dip support\tstraight-bar dip\n'
    'support\tshrug support\tscapular dip\n'
    'supported\tdip foot supported\tbench dip\n'
    'supported\tdumbbell row supported\tone-arm dumbbell row\n'
    'supported\texternal knee rotation supported\tseated external rotation on the knee\n'
    'supported\tknee raise supported\tsupported knee raise\town\n'
    'supported\tleg raise supported\tsupported leg raise\town\n'
    'supported\trow supported t-bar\tchest-supported T-bar row\n'
    'suspension\tassisted lunge suspension\tsuspension lunge\n'
    'suspension\tassisted squat suspension\tsuspension squat\n'
    'suspension\tbiceps curl suspension\tsuspension curl\n'
    'suspension\tbody saw suspension\tbody saw\t\tsuspension\n'
    'suspension\tchest fly suspension\tsuspension fly\n'
    'suspension\tcurl leg suspension\tsuspension leg curl\n'
    'suspension\tcurl leg suspension\tsuspension leg curl\town\n'
    'suspension\tcurl suspension\tsuspension curl\town\n'
    'suspension\textension suspension triceps\tsuspension triceps extension\n'
    'suspension\textension suspension triceps\tsuspension triceps extension\town\n'
    'suspension\tface pull suspension\tsuspension face pull\n'
    'suspension\tface pull suspension\tsuspension face pull\town\n'
    'suspension\tfallout kneeling suspension\tsuspension fallout\n'
    'suspension\tfallout suspension\tsuspension fallout\town\n'
    'suspension\tfly reverse suspension\tsuspension reverse fly\n'
    'suspension\tfly reverse suspension\tsuspension reverse fly\town\n'
    'suspension\tfly suspension\tsuspension fly\n'
    'suspension\tfly suspension\tsuspension fly\town\n'
    'suspension\tfly suspension t\tsuspension reverse fly\n'
    'suspension\tfly suspension y\tsuspension Y raise\n'
    'suspension\tfoot plank suspension\tsuspension plank\n'
    'suspension\tinverted row suspension\tsuspension row\n'
    'suspension\tknee suspension tuck\tsuspension knee tuck\n'
    'suspension\tknee suspension tuck\tsuspension knee tuck\town\n'
    'suspension\tlunge suspension\tsuspension lunge\town\n'
    'suspension\tone-arm row suspension\tone-arm suspension row\n'
    'suspension\tone-arm row suspension\tone-arm suspension row\town\n'
    'suspension\tpike suspension\tsuspension pike\n'
    'suspension\tpike suspension\tsuspension pike\town\n'
    'suspension\tplank suspension\tsuspension plank\n'
    'suspension\tplank suspension\tsuspension plank\town\n'
    'suspension\tpull-up suspension\tring pull-up\n'
    'suspension\tpush-up suspension\tsuspension push-up\n'
    'suspension\tpush-up suspension\tsuspension push-up\town\n'
    'suspension\traise suspension y\tsuspension Y raise\town\n'
    'suspension\trollout suspension\tsuspension fallout\n'
    'suspension\trow suspension\tsuspension row\n'
    'suspension\trow suspension\tsuspension row\town\n'
    'suspension\tsplit squat suspension\tsuspension lunge\n'
    'suspension\tsquat suspension\tsuspension squat\town\n'
    'suspension\tsuspension tuck\tsuspension knee tuck\n'
    'swim\tband pull swim\tband swim pull\town\n'
    'swimmer\tprone swimmer\tprone alternating arm and leg raise\n'
    'swimmer\tswimmer\tprone alternating arm and leg raise\n'
    'swimming\tband pull swimming\tband swim pull\n'
    'swing\tband swing\tband swing\town\n'
    'swing\tbody curl swing\tcheat curl\n'
    'swing\tfull swing\toverhead kettlebell swing\n'
    'swing\theavy swing\theavy kettlebell swing\n'
    'swing\thinge hip swing\tkettlebell swing\n'
    'swing\tswing\tkettlebell swing\n'
    'swooping\tpush-up swooping\tswooping push-up\town\n'
    't\t2 b t\ttoes to bar\n'
    't-bar\tlying row t-bar\tchest-supported T-bar row\n'
    't-bar\trow t-bar\tT-bar row\town\n'
    't-bar\tt-bar\tT-bar row\n'
    'table\trow table\tinverted row\n'
    'tall-kneeling\tadduction out slide tall-kneeling\tslider adduction\n'
    'tall-kneeling\tadduction slider tall-kneeling\tslider adduction\n'
    'tall-kneeling\tanti-rotation press tall-kneeling\thalf-kneeling anti-rotation press\n'
    'tall-kneeling\tchest pass tall-kneeling\tkneeling medicine ball chest pass\n'
    'tall-kneeling\tchop high-to-low tall-kneeling\thalf-kneeling chop\n'
    'tall-kneeling\tchop low-to-high tall-kneeling\thalf-kneeling lift\n'
    'tall-kneeling\tchop tall-kneeling\thalf-kneeling chop\n'
    'tall-kneeling\tlift low-to-high tall-kneeling\thalf-kneeling lift\n'
    'tall-kneeling\tlift tall-kneeling\thalf-kneeling lift\n'
    'tall-kneeling\tslam tall-kneeling\tkneeling medicine ball slam\n'
    'tandem\tgait tandem\theel-to-toe walk\n'
    'tandem\tsemi stand tandem\ttandem stand\n'
    'tandem\tstance tandem\ttandem stand\n'
    'tandem\tstand tandem\ttandem stand\town\n'
    'tandem\ttandem walk\theel-to-toe walk\n'
    'tempo\tbench press tempo\ttempo bench press\town\n'
    'tempo\tbench tempo\ttempo bench press\n'
    'tempo\tsquat tempo\tback squat\n'
    'tension\tbody plank tension\tlong-lever plank\n'
    'thick-bar\tisometric thick-bar\tbarbell hold\n'
    "thick-grip\tcarry thick-grip\ttowel farmer's carry\n"
    'thigh\tinner raise thigh\tside-lying hip adduction\n'
    'third\tcurl third\tpartial-range barbell curl\n'
    'thread\tneedle plank thread\tside plank with rotation\n'
    'thread\tplank side thread\tside plank with rotation\n'
    'three\tplank point three\tplank with leg lift\n'
    'three\tpoint row three\tone-arm dumbbell row\n'
    'throw\tball throw wall\twall ball squat\n'
    'throw\tbench press throw\tbench press throw\town\n'
    'throw\tbench throw\tbench press throw\n'
    'throw\tbomb throw\tbackward overhead throw\n'
    'throw\tchest lying throw\tlying medicine ball chest throw\n'
    'throw\tleg press throw\tleg press jump\n'
    'throw\tpress squat throw\tmedicine ball squat throw\n'
    'throw\tput shot throw\tone-arm medicine ball put\n'
    'throw\tscoop side throw\tscoop throw to the side\town\n'
    'throw\tside throw\trotational medicine ball throw\n'
    'throw\tsquat throw\tmedicine ball squat throw\n'
    'throw\tstep throw\tstep-behind rotational throw\n'
    'thrust\tband hip thrust\tband hip thrust\n'
    'thrust\tband hip thrust\tband hip thrust\town\n'
    'thrust\tbench hip thrust\thip thrust\n'
    'thrust\tfloor hip thrust\tbarbell glute bridge\n'
    'thrust\thip lever thrust\thip thrust machine\n'
    'thrust\thip thrust\thip thrust\town\n'
    'thrust\tjump squat thrust\tburpee\n'
    'thrust\tsquat thrust\tsquat thrust\town\n'
    'thrust\tthrust\thip thrust\n'
    'thruster\tbarbell thruster\tthruster\n'
    'thruster\tdumbbell thruster\tdumbbell thruster\n'
    'thruster\tdumbbell thruster\tdumbbell thruster\town\n'
    'thruster\thip thruster\thip thrust\n'
    'thruster\tthruster\tthruster\town\n'
    'thumb\traise thumb up\tscaption raise\n'
    'tibia\tbar raise tibia\tloaded tibialis raise\n'
    'tibia\tbar tibia\tloaded tibialis raise\n'
    'tibialis\tanterior raise tibialis\ttibialis raise\n'
    'tibialis\tmachine raise tibialis\tloaded tibialis raise\n'
    'tibialis\traise seated tibialis\tloaded tibialis raise\n'
    'tibialis\traise tibialis\ttibialis raise\n'
    'tibialis\traise tibialis\ttibialis raise\town\n'
    'tibialis\traise tibialis wall\ttibialis raise\n'
    'tiptoe\ttiptoe walk\ttoe walk\n'
    'tire\tdrag tire\tsled drag\n'
    'tire\tflip tire\ttire flip\town\n'
    'toe\tbar toe\ttoes to bar\town\n'
    'toe\ttap toe\tdead bug heel tap\n'
    'toe-in\tcurl leg lying toe-in\tlying leg curl with feet turned in\n'
    'toe-in\tcurl leg lying toe-in\tlying leg curl with feet turned in\town\n'
    'toe-in\tcurl leg seated toe-in\tseated leg curl with feet turned in\n'
    'toe-in\tcurl leg seated toe-in\tseated leg curl with feet turned in\town\n'
    'toe-in\tcurl leg toe-in\tlying leg curl with feet turned in\n'
    'toe-out\tcurl leg lying toe-out\tlying leg curl with feet turned out\n'
    'toe-out\tcurl leg lying toe-out\tlying leg curl with feet turned out\town\n'
    'toe-out\tcurl leg seated toe-out\tseated leg curl with feet turned out\n'
    'toe-out\tcurl leg seated toe-out\tseated leg curl with feet turned out\town\n'
    'toe-out\tcurl leg toe-out\tlying leg curl with feet turned out\n'
    'together\tsit-up sole together\tbutterfly sit-up\n'
    'toss\tside toss\trotational medicine ball throw\n'
    'touch\tboard campu touch\tcampus board ladder\n'
    'touch\tcampu touch\tcampus board ladder\n'
    'touch\theel touch\theel touch crunch\n'
    'touch\tlying toe touch\tcrunch\n'
    "towel\tcarry towel\ttowel farmer's carry\n"
    'towel\tchin towel\ttowel pull-up\n'
    'towel\tcurl leg towel\tslider leg curl\n'
    'towel\tcurl toe towel\ttowel scrunch\n'
    'towel\tdoor row towel\tdoorway row\n'
    'towel\tgrip hang towel\ttowel hang\n'
    'towel\thang towel\ttowel hang\town\n'
    'towing\tsled sprint towing\tresisted sprint\n'
    'tractor\tflip tire tractor\ttire flip\n'
    'tractor\tflip tractor tyre\ttire flip\n'
    'trainer\tcross trainer\tcross trainer\town\n'
    'trainer\tski trainer\tski ergometer\n'
    'trap-bar\tcarry trap-bar\ttrap bar carry\n'
    'trap-bar\tcarry trap-bar\ttrap bar carry\town\n'
    'trap-bar\tdeadlift deficit trap-bar\tdeficit trap bar deadlift\n'
    'trap-bar\tdeadlift deficit trap-bar\tdeficit trap bar deadlift\town\n'
    'trap-bar\tdeadlift handle high trap-bar\ttrap bar deadlift\n'
    'trap-bar\tdeadlift handle low trap-bar\tdeficit trap bar deadlift\n'
    'trap-bar\tdeadlift jump trap-bar\ttrap bar jump\n'
    'trap-bar\tdeadlift romanian trap-bar\ttrap bar Romanian deadlift\n'
    'trap-bar\tdeadlift romanian trap-bar\ttrap bar Romanian deadlift\town\n'
    'trap-bar\tdeadlift trap-bar\ttrap bar deadlift\n'
    'trap-bar\tdeadlift trap-bar\ttrap bar deadlift\town\n'
    'trap-bar\tfarmer trap-bar walk\ttrap bar carry\n'
    'trap-bar\tjump squat trap-bar\ttrap bar jump\n'
    'trap-bar\tjump trap-bar\ttrap bar jump\n'
    'trap-bar\tjump trap-bar\ttrap bar jump\town\n'
    'trap-bar\trow trap-bar\ttrap bar row\n'
    'trap-bar\trow trap-bar\ttrap bar row\town\n'
    'trap-bar\tshrug trap-bar\ttrap bar shrug\n'
    'trap-bar\tshrug trap-bar\ttrap bar shrug\town\n'
    'trap-bar\tsquat trap-bar\ttrap bar deadlift\n'
    'trap-bar\ttrap-bar walk\ttrap bar carry\n'
    'travelling\tlunge travelling\twalking lunge\n'
    'treadmill\tbackward drag power treadmill\tbackward walk\n'
    'treadmill\tbackward drag treadmill\tbackward walk\n'
    'treadmill\tbackward treadmill walk\tbackward walk\n'
    'treadmill\tincline treadmill walk\tloaded hill walk\n'
    'treadmill\tjog treadmill\trun\n'
    'treadmill\trun treadmill\trun\n'
    'treadmill\tsprint treadmill\trun\n'
    'treadmill\ttreadmill\trun\n'
    'triangle\tpush-up triangle\tdiamond push-up\n'
    'triceps\tdip triceps\tdip\n'
    'triceps\tmachine seated triceps\tmachine triceps extension\n'
    'triceps\tmachine triceps\tmachine triceps extension\n'
    'triceps\tout push triceps\tbodyweight triceps extension\n'
    'triceps\tpush-up triceps\tclose-grip push-up\n'
    'triple\tbroad jump triple\trepeated broad jump\n'
    'triple\thop triple\ttriple hop\town\n'
    'trunk\tprone raise trunk\tprone back extension\n'
    'ttb\tttb\ttoes to bar\n'
    'tuck\tand chin head lift tuck\tlying head lift hold\n'
    'tuck\tand chin lift tuck\tlying head lift hold\n'
    'tuck\tball knee tuck\tstability-ball knee tuck\n'
    'tuck\tball tuck\tstability-ball knee tuck\n'
    'tuck\tchin head lift tuck\tlying head lift hold\n'
    'tuck\tchin lift tuck\tlying head lift hold\n'
    'tuck\tchin tuck\tchin tuck\town\n'
    'tuck\thang knee tuck\thanging knee raise\n'
    'tuck\thang leg tuck\thanging knee raise\n'
    'tuck\tjump knee tuck\ttuck jump\n'
    'tuck\tjump tuck\ttuck jump\town\n'
    'tuck\tleg tuck\thanging knee raise\n'
    'tuck-up\ttuck-up\ttuck-up\town\n'
    'tucked\tl-sit tucked\ttuck hold on bars\n'
    'turkish\telbow get-up turkish\thalf get-up\n'
    'turkish\tget-up half turkish\thalf get-up\n'
    'turkish\tget-up hand turkish\thalf get-up\n'
    'turkish\tget-up sandbag turkish\tsandbag get-up\n'
    'turkish\tget-up turkish\tTurkish get-up\n'
    'turkish\tget-up turkish\tTurkish get-up\town\n'
    'turkish\tsit-up turkish\tTurkish sit-up\town\n'
    'turn\tcurl turn\trotating curl\n'
    'turn\tjump turn\trotational jump\n'
    'turning\tpalm press turning\trotating dumbbell shoulder press\n'
    'twenty\tone twenty\tpartial-range barbell curl\n'
    'twist\tband twist\tband rotation\n'
    'twist\tcable twist\tcable rotation\n'
    'twist\tlunge twist\tlunge with rotation\n'
    'twist\tplank twist\tplank with hip dips\n'
    'twist\tplate twist\tRussian twist\n'
    'twisting\tclimber mountain twisting\tcross-body mountain climber\n'
    'twisting\tcrunch twisting\tbicycle crunch\n'
    'twisting\tdumbbell press twisting\trotating dumbbell shoulder press\n'
    'twisting\thang knee raise twisting\thanging oblique raise\n'
    'twisting\tsit-up twisting\tsit-up with rotation\n'
    'two-arm\tjammer press two-arm\tstanding lever press\n'
    'two-arm\tplate raise two-arm\tplate front raise\n'
    'two-arm\trope slam two-arm\trope slam\n'
    'two-arm\trope two-arm wave\tdouble rope wave\n'
    'two-arm\tswing two-arm\tkettlebell swing\n'
    'two-arm\ttwo-arm wave\tdouble rope wave\n'
    'two-leg\tbridge two-leg\tglute bridge\n'
    'two-leg\tcalf raise two-leg\tbodyweight calf raise\n'
    'two-leg\tcalf two-leg\tbodyweight calf raise\n'
    'two-leg\theel raise two-leg\tbodyweight calf raise\n'
    'two-leg\thurdle jump two-leg\thurdle jump\n'
    'two-leg\tlower two-leg\tleg lowering\n'
    'two-leg\tlying raise two-leg\tlying leg raise\n'
    'two-leg\tpogo two-leg\tpogo jump\n'
    'typewriter\tpull-up typewriter\tarcher pull-up\n'
    'typewriter\tpush-up typewriter\tarcher push-up\n'
    'tyre\tdrag tyre\tsled drag\n'
    'tyre\tflip tyre\ttire flip\n'
    'underhand\tbarbell row underhand\tunderhand barbell row\n'
    'underhand\tbarbell row underhand\tunderhand barbell row\town\n'
    'underhand\tbench press underhand\tunderhand-grip bench press\n'
    'underhand\tbench press underhand\tunderhand-grip bench press\town\n'
    'underhand\tbench underhand\tunderhand-grip bench press\n'
    'underhand\tbent-over row underhand\tunderhand barbell row\n'
    'underhand\tcable row underhand\tunderhand cable row\n'
    'underhand\tcable row underhand\tunderhand cable row\town\n'
    'underhand\tcurl overhand underhand\trotating curl\n'
    'underhand\tcurl underhand wrist\twrist curl\n'
    'underhand\tforward throw underhand\tforward scoop throw\n'
    'underhand\tinverted row underhand\tunderhand inverted row\n'
    'underhand\tinverted row underhand\tunderhand inverted row\town\n'
    'underhand\tlat pulldown underhand\tunderhand lat pulldown\n'
    'underhand\tlat pulldown underhand\tunderhand lat pulldown\town\n'
    'underhand\tpull-up underhand\tchin-up\n'
    'underhand\tpulldown underhand\tunderhand lat pulldown\n'
    'underhand\tpushdown triceps underhand\treverse-grip pushdown\n'
    'underhand\tpushdown underhand\treverse-grip pushdown\n'
    'underhand\trow seated underhand\tunderhand cable row\n'
    'underhand\trow underhand\tunderhand barbell row\n'
    "unequal\tcarry farmer unequal\toffset farmer's carry\n"
    "uneven\tcarry farmer uneven\toffset farmer's carry\n"
    "uneven\tcarry uneven\toffset farmer's carry\n"
    'unpowered\tbackward treadmill unpowered walk\tbackward walk\n'
    'uphill\truck uphill\tloaded hill walk\n'
    'uphill\trun uphill\thill sprint\n'
    'uphill\tsprint uphill\thill sprint\n'
    'uphill\tuphill walk\tloaded hill walk\n'
    'upright\tbarbell row upright\tupright row\n'
    'upright\tbike upright\tstationary bike\n'
    'upright\tcable low row upright\tcable upright row\n'
    'upright\tcable row upright\tcable upright row\town\n'
    'upright\trope row upright\tcable upright row\n'
    'upright\trow upright\tupright row\town\n'
    'upward\tcable fly upward\tlow-to-high cable fly\n'
    'v-sit\tup v-sit\tV-up\n'
    'v-up\tv-up\tV-up\town\n'
    'vertical\tassisted band jump vertical\tband-assisted jump\n'
    'vertical\tchest press vertical\tmachine chest press\n'
    'vertical\tchest throw vertical\tlying medicine ball chest throw\n'
    'vertical\tjump one-leg vertical\tsingle-leg hop\n'
    'vertical\tjump seated vertical\tseated box jump\n'
    'vertical\tjump vertical\tcountermovement jump\n'
    'vertical\tknee raise vertical\tsupported knee raise\n'
    'vertical\tleap vertical\tcountermovement jump\n'
    'vertical\tleg raise vertical\tsupported leg raise\n'
    'vertical\toverhead throw vertical\tmedicine ball squat throw\n'
    'vertical\tpush-up vertical\thandstand push-up\n'
    'vertical\ttoss vertical\tmedicine ball squat throw\n'
    'viking\tpress viking\tstanding lever press\n'
    'vmo\tdip vmo\tstep-down\n'
    'waiter\tbend side waiter\toverhead side bend\n'
    "waiter\tcarry waiter\twaiter's walk\n"
    'waiter\tcurl waiter\tdumbbell curl\n'
    "waiter\twaiter walk\twaiter's walk\town\n"
    'walk\tband crab walk\tlateral band walk\n'
    'walk\tband walk\tlateral band walk\n'
    'walk\tband walk x\tlateral band walk\n'
    'walk\tbear walk\tbear crawl\n'
    'walk\tcalf walk\ttoe walk\n'
    'walk\tcrab walk\tcrab walk\town\n'
    'walk\theel toe walk\theel-to-toe walk\town\n'
    'walk\theel walk\theel walk\town\n'
    'walk\tline walk\theel-to-toe walk\n'
    'walk\track walk\track carry\n'
    'walk\tshin walk\theel walk\n'
    'walk\tsled walk\tsled drag\n'
    'walk\ttoe walk\ttoe walk\town\n'
    'walking\tbarbell lunge walking\tbarbell walking lunge\n'
    'walking\tbarbell lunge walking\tbarbell walking lunge\town\n'
    'walking\theel walking\theel walk\n'
    'walking\tlunge walking\twalking lunge\town\n'
    'walking\tplank walking\tplank up-down\n'
    'walking\ttoe walking\ttoe walk\n'
    'walkout\tback squat walkout\tsquat walkout\n'
    'walkout\tbridge glute walkout\thamstring walkout\n'
    'walkout\tbridge walkout\thamstring walkout\n'
    'walkout\tcable walkout\tanti-rotation walk-out\t\tcable\n'
    'walkout\thand walkout\tinchworm\n'
    'walkout\theel walkout\thamstring walkout\n'
    'walkout\tplank walkout\tinchworm\n'
    'walkout\tsquat walkout\tsquat walkout\town\n'
    'walkout\twalkout\tinchworm\n'
    'wall\tback curl wall\tstrict curl against the wall\n'
    'wall\tball shot wall\twall ball squat\n'
    'wall\tball wall\twall ball squat\n'
    'wall\tcurl wall\tstrict curl against the wall\n'
    'wall\tsit wall\twall sit\town\n'
    'water\tcan carry water\tbucket carry\n'
    'wave\trope wave\talternating rope wave\n'
    'wedge\tsquat wedge\theel-elevated squat\n'
    'weight\thang knee raise weight\tweighted hanging knee raise\n'
    'weight\tsit-up weight\tweighted sit-up\n'
    'weighted\tball crunch weighted\tweighted stability-ball crunch\n'
    'weighted\tball kneeling reverse throw weighted\tkneeling reverse throw\n'
    'weighted\tball reverse throw weighted\tkneeling reverse throw\n'
    'weighted\tbar carry front weighted\tfront-loaded bar carry\town\n'
    'weighted\tbear crawl weighted\tbear crawl with drag\n'
    'weighted\tbend side weighted\tdumbbell side bend\n'
    'weighted\tbird dog weighted\tbird dog with band\n'
    'weighted\tbridge glute weighted\tbarbell glute bridge\n'
    'weighted\tbug dead weighted\tweighted dead bug\n'
    'weighted\tbug dead weighted\tweighted dead bug\town\n'
    'weighted\tcable crunch weighted\tcable crunch\n'
    'weighted\tcalf one-leg raise weighted\tdumbbell single-leg calf raise\n'
    'weighted\tcalf one-leg weighted\tdumbbell single-leg calf raise\n'
    "weighted\tcarry weighted\tfarmer's carry\n"
    'weighted\tchin weighted\tweighted chin-up\n'
    'weighted\tchin-up weighted\tweighted chin-up\n'
    'weighted\tchin-up weighted\tweighted chin-up\town\n'
    'weighted\tclimb stair weighted\tloaded stair climb\n'
    'weighted\tclimb stair weighted\tloaded stair climb\town\n'
    'weighted\tcrunch reverse weighted\tcable reverse crunch\n'
    'weighted\tcrunch weighted\tweighted crunch\n'
    'weighted\tcrunch weighted\tweighted crunch\town\n'
    'weighted\tcurl nordic weighted\tweighted Nordic curl\n'
    'weighted\tcurl nordic weighted\tweighted Nordic curl\town\n'
    'weighted\tdecline sit-up weighted\tweighted decline sit-up\n'
    'weighted\tdecline sit-up weighted\tweighted decline sit-up\town\n'
    'weighted\tdip weighted\tweighted dip\n'
    'weighted\tdip weighted\tweighted dip\town\n'
    'weighted\tdown roll spinal weighted\tloaded spinal roll-down\town\n'
    'weighted\tdown roll weighted\tloaded spinal roll-down\n'
    'weighted\tflexion neck weighted\tneck flexion\n'
    'weighted\tfrog pump weighted\tfrog pump\n'
    'weighted\thang knee raise weighted\tweighted hanging knee raise\n'
    'weighted\thang knee raise weighted\tweighted hanging knee raise\town\n'
    'weighted\thigh knee march weighted\tmarching carry\n'
    'weighted\thill walk weighted\tloaded hill walk\n'
    'weighted\thill walk weighted\tloaded hill walk\town\n'
    'weighted\tincline walk weighted\tloaded hill walk\n'
    'weighted\tinverted row weighted\tweighted inverted row\n'
    'weighted\tinverted row weighted\tweighted inverted row\town\n'
    'weighted\tjump squat weighted\tbarbell squat jump\n'
    'weighted\tjump weighted\tbarbell squat jump\n'
    'weighted\tmarch place weighted\tmarching carry\n'
    'weighted\tmarch weighted\truck\n'
    'weighted\tplank side weighted\tweighted side plank\n'
    'weighted\tplank side weighted\tweighted side plank\town\n'
    'weighted\tplank weighted\tweighted plank\n'
    'weighted\tplank weighted\tweighted plank\town\n'
    'weighted\tpull-up weighted\tweighted pull-up\n'
    'weighted\tpull-up weighted\tweighted pull-up\town\n'
    'weighted\tpush sled weighted\tsled push\n'
    'weighted\tpush-up weighted\tweighted push-up\n'
    'weighted\tpush-up weighted\tweighted push-up\town\n'
    'weighted\traise tibialis weighted\tloaded tibialis raise\n'
    'weighted\traise tibialis weighted\tloaded tibialis raise\town\n'
    'weighted\tsit-up weighted\tweighted sit-up\n'
    'weighted\tsit-up weighted\tweighted sit-up\town\n'
    'weighted\ttoe walk weighted\ttoe walk\n'
    'weighted\twalk weighted\truck\n'
    'wheel\tab wheel\tab wheel rollout\n'
    'wheelbarrow\tcarry wheelbarrow\twheelbarrow carry\town\n'
    'wheelbarrow\thand walk wheelbarrow\twheelbarrow walk\n'
    'wheelbarrow\tpartner walk wheelbarrow\twheelbarrow walk\n'
    'wheelbarrow\tpartner wheelbarrow\twheelbarrow walk\n'
    'wheelbarrow\tpush wheelbarrow\twheelbarrow carry\n'
    'wheelbarrow\trace wheelbarrow\twheelbarrow carry\n'
    'wheelbarrow\twalk weighted wheelbarrow\twheelbarrow carry\n'
    'wheelbarrow\twalk wheelbarrow\twheelbarrow walk\town\n'
    'wheelbarrow\tweighted wheelbarrow\twheelbarrow carry\n'
    'wide\tcurl wide\twide-grip barbell curl\n'
    'wide-grip\tbarbell curl wide-grip\twide-grip barbell curl\town\n'
    'wide-grip\tbarbell row wide-grip\twide-grip bent-over row\n'
    'wide-grip\tbench press wide-grip\twide-grip bench press\town\n'
    'wide-grip\tbench wide-grip\twide-grip bench press\n'
    'wide-grip\tbent-over row wide-grip\twide-grip bent-over row\town\n'
    'wide-grip\tcable row seated wide-grip\twide-grip seated row\n'
    'wide-grip\tcable row wide-grip\twide-grip seated row\n'
    'wide-grip\tcurl wide-grip\twide-grip barbell curl\n'
    'wide-grip\tdeadlift romanian wide-grip\tsnatch-grip Romanian deadlift\n'
    'wide-grip\tdeadlift wide-grip\tsnatch-grip deadlift\n'
    'wide-grip\thigh pull wide-grip\tsnatch high pull\n'
    'wide-grip\tlat pulldown wide-grip\twide-grip lat pulldown\town\n'
    'wide-grip\tpu wide-grip\twide-grip pull-up\n'
    'wide-grip\tpull-up wide-grip\twide-grip pull-up\n'
    'wide-grip\tpull-up wide-grip\twide-grip pull-up\town\n'
    'wide-grip\tpulldown wide-grip\twide-grip lat pulldown\n'
    'wide-grip\tpush-up wide-grip\twide push-up\n'
    'wide-grip\trow seated wide-grip\twide-grip seated row\town\n'
    'wide-grip\tshrug wide-grip\tsnatch-grip shrug\n'
    'wind\tbike wind\tfan bike\n'
    'windmill\toverhead windmill\tkettlebell windmill\n'
    'windmill\twindmill\tkettlebell windmill\n'
    'windshield\tbent-knee windshield wiper\tbent-knee trunk rotation\n'
    'windshield\tfloor windshield wiper\tlying windshield wiper\n'
    'windshield\thang windshield wiper\thanging windshield wiper\town\n'
    'windshield\tlying windshield wiper\tlying windshield wiper\town\n'
    'windshield\twindshield wiper\thanging windshield wiper\n'
    'wiper\thang wiper\thanging windshield wiper\n'
    'wiper\tlying wiper\tlying windshield wiper\n'
    'without\tburpee jump without\tsquat thrust\n'
    'without\tload step-up without\tbodyweight step-up\n'
    'woodchop\tband woodchop\tband rotation\n'
    'woodchop\tcable woodchop\tcable woodchop\n'
    'woodchop\tcable woodchop\tcable woodchop\town\n'
    'woodchop\tdumbbell woodchop\tdumbbell woodchop\town\n'
    'woodchop\tfree weight woodchop\tdumbbell woodchop\n'
    'woodchop\tplate woodchop\tdumbbell woodchop\t\tplate\n'
    'woodchop\treverse woodchop\tlow-to-high cable chop\n'
    'woodchop\twoodchop\tcable woodchop\n'
    'wrestling\tbridge wrestling\tneck bridge\n'
    'wrist\tcable curl wrist\tcable wrist curl\town\n'
    'wrist\tcurl wrist\twrist curl\town\n'
    'wrist\troll up wrist\twrist roller\n'
    'yoga\ttoe yoga\ttowel scrunch\n'
    'yoke\twalk yoke\tyoke carry\n'
    'yoke\tyoke\tyoke carry\n'
    'zercher\tcarry zercher\tfront-loaded bar carry\n'
    'zercher\tsquat zercher\telbow-crook squat\n'
    'zercher\twalk zercher\tfront-loaded bar carry\n'
    'zottman\tcurl zottman\trotating curl\n'
)
