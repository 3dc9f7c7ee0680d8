"""Words of what athletes do that is no lift: to move freely, to run, to play, to keep one's balance.

Common practice, no source. Commas and line breaks stand between phrases; case, hyphens and a plural s make no
difference.
"""

from __future__ import annotations

import re
from functools import lru_cache

from .names import fold

WORDS = re.compile(r"\d+[/:]\d+s?|[^\W_]+(?:['’][^\W_]+)?")
"""The words of a name, and numbers that a slash or a colon ties."""

SURE, LIKELY, VAGUE, SPORT, NEUTRAL = "sure", "likely", "vague", "sport", "neutral"

PHRASES = {
    # What no lift has: with a lift before it, too, as in "lunge stretch".
    SURE: """
stretch, stretching, PNF, contract relax, hold relax, hip CARs, shoulder CARs, scap CARs, scapular CARs
ankle CARs, spine CARs, spinal CARs, thoracic CARs, neck CARs, wrist CARs, knee CARs, elbow CARs
controlled articular rotation, nerve glide, nerve gliding, nerve floss, nerve flossing, nerve slider
nerve tensioner, neural glide, neural slider, neural floss, neural flossing, neural tensioner, tendon glide
foam roll, foam rolling, myofascial release, self massage, massage, trigger point, lacrosse ball
peanut ball, joint distraction, hip distraction, ankle distraction, breathwork, meditation, visualisation
visualization, mindfulness, body scan, muscle relaxation, relaxation, ice bath, contrast bath
contrast shower, cold plunge, sauna, hot tub, cold water immersion
""",
    # What is no lift unless another word of the name is a lift's own: "sled sprint", "balance squat".
    LIKELY: """
mobility, mobilisation, mobilization, mobilise, mobilize, mobs, flexibility, limber, limbering, breathing
breath, breathe, yoga, vinyasa, qigong, qi gong, tai chi, sun salutation, downward dog, downward facing dog
down dog, upward dog, upward facing dog, child's pose, pigeon, pigeon pose, cobra pose, warrior pose
tree pose, puppy pose, lizard pose, happy baby, corpse pose, savasana, cat cow, cat camel, legs up the wall
reclined twist, reclining twist, spinal twist, open book, thread the needle, couch stretch, brettzel
world's greatest, shin box switch, 90/90 switch, 90/90 hip switch, 90/90 flow, hip flow, yoga flow
mobility flow, crab flow, animal flow, movement flow, scorpion, frog rock, adductor rockback, rockback
rock back, adductor rock, groin rock, ankle rock, wrist rock, hip rock, quadruped rock, rib roll
t spine rotation, thoracic rotation, thoracic spine rotation, t spine extension, thoracic extension
thoracic spine extension, ankle alphabet, ankle circle, ankle pump, ankle roll, wrist circle, arm circle
arm swing, leg swing, hip circle, knee circle, trunk circle, shoulder circle, shoulder roll, neck circle
neck roll, neck turn, head turn, pendulum swing codman, shoulder pass through, dislocate, hip opener
open the gate, close the gate, sit and reach, movement assessment, movement screen, seated butterfly
butterfly sit, toe touch progression, recovery, flush, flushing, cooldown, cool down, warm down, warmup
warm up, shake out, rest day

run, running, jog, jogging, sprint, sprinting, stride, striding, fartlek, shuttle, run through, start
flying 10, flying 20, flying 30, flying 40, flying 60, fly 10, fly 20, fly 30, flying sprint, wicket
acceleration, deceleration, hill rep, hill repeat, stair rep, repeat, threshold, steady state, interval
time trial, TT, best effort, pace, lactate, speed endurance, special endurance, VO2, VO2max, vVO2, MAS, RSA
HRmax, sweet spot, big gear climb, zone 1, zone 2, zone 3, zone 4, zone 5, z1, z2, z3, z4, z5, cadence, rpm
spm, 30/30s, aerobic, anaerobic, tempo on grass, tempo on track, tempo on bend, calorie, norwegian 4 x 4
bronco, malcolm, yo yo, yo yo IR1, yo yo IR2, bleep, beep, cooper, 30 15, 30 15 IFT, easy spin, spin
brisk walk, brisk walking, six minute walk, 6 minute walk, nordic walk, nordic walking, power walk, hike
hiking, ruck interval, stepmill, stairmaster, stair machine, climber machine, elliptical, cross trainer
bike, biking, cycling, ride, riding, rower, ergometer, ergo, erg, ski erg, rowing machine, 2k row, 5k row
10k row, row steady state, swim, swimming, swim bench, freestyle, front crawl, backstroke, breaststroke
sidestroke, treading water, tread water, aqua jog, pool, sculling, tumble turn, kick with board, kick set
IM, lap, skate, skating, crossover skating, paddling, pedalling

A march, B march, C march, B skip, C skip, ankling, dribble, dribbling, heel flick, butt kick, bum kick
high knee, fast leg, carioca, karaoke, grapevine, gallop, side shuffle, lateral shuffle, backpedal
back pedal, hurdle walkover, hurdle walk over, trail leg, penultimate, agility, speed ladder, agility ladder
floor ladder, icky shuffle, ladder icky shuffle, ladder two feet, in in out out, quick foot, quick feet
fast feet, footwork
cone weave, weave, zig zag, zigzag, slalom, cutting, change of direction, COD, 505, 5 10 5, T test, L drill
illinois, arrowhead, hexagon, figure of eight, figure of eight walk, figure eight, figure 8 run, figure of 8
mirror drill, mirror shuffle, mirror game, reactive, reaction ball, reaction game, defensive slide
side step touch, side step to line

game, tag, dodgeball, rounders, relay, stuck in the mud, capture the flag, obstacle course, small sided, SSG
rondo, scrimmage, match, match play, 1v1, 2v1, 2v2, 3v2, 3v3, 4v4, 5v2, 5v5, 6v6, 7v7, ball handling
ball control, ball mastery, ball juggling, keepy uppy, first touch, one touch, free throw, layup, lay up
shooting, passing, crossing, finishing, corner kick, set piece, penalty, heading, heading jump, tackle
tackling, throw in, serve, serving, forehand, backhand, volley, rally, smash, shadow swing, batting
fielding, bullpen, pitching, long toss, bowling, putting, stick handling, slap shot, puck, edge work
goalkeeper, goalkeeping, GK, dive and recover, tactics, tactical, cartwheel, forward roll, backward roll
handspring, breakfall, ukemi, tumbling, sparring, shadow boxing, shadowboxing, pad work, mitt, focus mitt
heavy bag, bag work, bag round, tackle bag, kata, uchikomi, uchi komi, randori, guard pass, guard passing
guard retention, grapple, grappling, wrestling shot, takedown, knee strike, hip escape, shrimping
technical stand up, clinch, kumite, lead climbing, slab climbing, top rope climbing, wall climbing
climb easy wall, bouldering, boulder problem, boulder circuit, boulder on the minute, linked problem
problem, traverse, traversing, route, easy vertical, downclimb, down climb, deadpoint, system board, sloper
flagging, silent feet, route reading

balance, balancing, balance reach, y balance, y balance reach, star excursion, wobble board, wobble cushion
stork, stork stand, stand on one leg, standing on one leg, one leg stand, one leg standing, one leg stance
single leg stand, single leg stance, SL stance, stance on foam, foam mat, tandem, tandem stand
tandem stance, tandem walk, heel to toe, heel to toe walk, weight shift, weight transfer, eyes closed
eyes open, rhythmic stab, rhythmic stabilisation, rhythmic stabilization, perturbation, proprioception
clock step, clock reach, sideways walk, sideways walking, march on the spot, marching on the spot
timed up and go, stepping on and off, slackline, slackline walking, cloud hand, line dance, dance, dancing
zumba
""",
    # Words of lifts and of other work alike: no lift where a word of a sport stands beside them.
    VAGUE: """
drill, test, testing, practice, technique, technical, tech, session, round, pattern, progression, assessment
screen, ladder, work, set, rep, circuit, routine, simulation, effort, skill, conditioning, bump, diagonal
""",
    # Words of sports and of their places.
    SPORT: """
discus, javelin, pole vault, shot put circle, fence vault, approach, takeoff, take off, baton, pitch, court
net, race, team, squad, cone, football, soccer, rugby, hockey, netball, basketball, volleyball, handball
tennis, badminton, squash, cricket, baseball, softball, golf, judo, karate, boxing, jiu jitsu, taekwondo
gymnastics, trampoline, sailing, surfing, skiing, kayak, canoe, archery, racket, racquet, bat, goal
defender, attacker, opponent, dojo, mile, catch up, coordination, rhythm, ice, climbing, infield, scrum
lineout, setting
""",
    # How it is done, where a word of a lift names none; and lifts called by words that stand above.
    NEUTRAL: """
front leg, back leg, rear leg
walk back, jog back, walk recovery, walk rest, fast walk, hold fence, hold chair, holding chair, hold rail
hold sink, hold wall, lower body, upper body, from knee, running man, steep, third step, heaving balance
step balance, box recovery, pin recovery, rack recovery, block recovery, recovery from, in a row, with reach
w reach, with side reach, w side reach, hands on hips, straight ahead, from belly, no jump, no throw
ball toss, m walk, full recovery, hand behind head
""",
}
"""Phrases of each kind. The longest is read; one that stands under two kinds is of the first."""

STAYS = frozenset(["position", "mediated", "bias", "biased", "partial", "partials"])
"""Words behind a stretch that make it the end of a lift's range: "curl in the stretch position"."""


@lru_cache(maxsize=1)
def kinds_of_phrases() -> dict[tuple[str, ...], str]:
    """The kind of each phrase, by its folded words."""
    return {
        tuple(map(fold, WORDS.findall(phrase))): kind
        for kind, phrases in reversed(PHRASES.items())
        for phrase in phrases.replace("\n", ",").split(",")
        if phrase.strip()
    }


def is_word(word: str) -> bool:
    """Whether a folded word stands in one of the phrases: then it is no misspelt word of a lift."""
    return word in _every_word()


@lru_cache(maxsize=1)
def _every_word() -> frozenset[str]:
    return frozenset(word for phrase in kinds_of_phrases() for word in phrase)
