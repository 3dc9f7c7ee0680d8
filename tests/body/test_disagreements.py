"""Every place where a credit stated by hand and the derived one disagree, with the reason why the stated one stands.

The table is a record: a disagreement that is new, or has gone, needs a decision and a change here.
"""

from __future__ import annotations

from spotline.lint.body import catalogue

# derived, stated, muscles, why the stated one stands, exercises
DISAGREEMENTS = (
    (
        "none",
        "indirect",
        ("biceps femoris long head", "semitendinosus", "semimembranosus"),
        "The knee bends almost as far as in a squat, so it shortens little more than 1 cm; the lean of the trunk still loads it.",
        ("trap bar deadlift", "B-stance trap bar deadlift", "deficit trap bar deadlift"),
    ),
    (
        "indirect",
        "none",
        (
            "biceps femoris long head",
            "semitendinosus",
            "semimembranosus",
            "gluteus maximus",
            "adductor magnus",
        ),
        "The bells that can be pressed are light for the hips.",
        ("double kettlebell clean and press",),
    ),
    (
        "indirect",
        "none",
        (
            "biceps femoris long head",
            "semitendinosus",
            "semimembranosus",
            "gluteus maximus",
            "adductor magnus",
        ),
        "The bell that can be pressed is light for the hips.",
        ("kettlebell clean and press",),
    ),
    (
        "direct",
        "indirect",
        ("biceps long head", "biceps short head"),
        "The palm-down forearm takes the biceps out of its line of pull.",
        ("reverse curl", "reverse cable curl", "reverse dumbbell curl"),
    ),
    (
        "indirect",
        "direct",
        ("brachioradialis",),
        "With the thumb up its lever is at its best and the biceps no longer has the palm-up position to itself.",
        (
            "hammer curl",
            "kettlebell curl",
            "rope hammer curl",
            "cross-body hammer curl",
            "seated hammer curl",
            "preacher hammer curl",
        ),
    ),
    (
        "indirect",
        "direct",
        ("brachioradialis",),
        "With the palm down the biceps winds round the radius and loses pull; this muscle takes over.",
        ("reverse curl", "reverse cable curl", "reverse dumbbell curl"),
    ),
    (
        "indirect",
        "direct",
        ("brachioradialis",),
        "The weight is lowered with the palm down, where the biceps has lost pull and this muscle takes over.",
        ("rotating curl",),
    ),
    (
        "indirect",
        "direct",
        ("clavicular chest",),
        "The upper part of the chest worked hardest with the bench raised to between 30 and 56 degrees.",
        (
            "incline bench press",
            "incline dumbbell press",
            "guided-bar incline press",
            "incline machine press",
            "incline dumbbell fly",
            "incline cable fly",
        ),
    ),
    (
        "indirect",
        "direct",
        ("clavicular chest",),
        "The arm sweeps upwards, which is what the upper part of the chest does: it flexes the shoulder and draws the arm across.",
        ("low-to-high cable fly",),
    ),
    (
        "none",
        "indirect",
        ("brachialis",),
        "It bends the elbow in the pull to the bar; the path shows only the dip that follows.",
        ("muscle-up", "ring muscle-up"),
    ),
    (
        "none",
        "indirect",
        ("iliacus", "psoas major"),
        "The path shows the leg that pushes; bringing the other one through flexes the hip.",
        ("sprint", "hill sprint", "stair run", "power skip", "A-skip"),
    ),
    (
        "none",
        "indirect",
        ("iliacus", "psoas major"),
        "The path shows the push-off; drawing the knees up flexes the hip.",
        ("tuck jump", "burpee"),
    ),
    (
        "direct",
        "indirect",
        ("gastrocnemius",),
        "The half-bent knee shortens it, so the soleus takes the larger share.",
        (
            "bent-knee calf raise",
            "single-leg bent-knee calf raise",
            "bent-knee heel drop",
            "bent-knee calf hold",
        ),
    ),
    (
        "direct",
        "indirect",
        ("gluteus maximus", "adductor magnus"),
        "Straightening the hip costs it little here: the bending of the knee ends the set.",
        ("glute-ham raise", "assisted glute-ham raise", "weighted glute-ham raise"),
    ),
    (
        "indirect",
        "none",
        ("gluteus maximus", "adductor magnus"),
        "It only keeps the hip straight; the bending of the knee is the work.",
        ("Nordic hold",),
    ),
    (
        "indirect",
        "none",
        ("gluteus maximus", "adductor magnus"),
        "What the arm can hold overhead is far too light for the hip.",
        ("Turkish get-up", "bottoms-up Turkish get-up", "sandbag get-up"),
    ),
    (
        "indirect",
        "direct",
        ("lower trapezius",),
        "The arm is raised in line with its fibres, with the blade tilted back against gravity.",
        ("Y raise", "cable Y raise", "suspension Y raise", "I-Y-T raise"),
    ),
    (
        "direct",
        "indirect",
        ("rectus femoris",),
        "It shortens little, and would bend the very hip that the press straightens.",
        (
            "leg press jump",
            "leg press",
            "horizontal leg press",
            "single-leg leg press",
            "high-foot leg press",
            "low-foot leg press",
        ),
    ),
    (
        "direct",
        "indirect",
        ("rectus femoris",),
        "It helps to hold the knee, but with the hip at a right angle it is too short to do much.",
        ("wall sit", "single-leg wall sit"),
    ),
    (
        "direct",
        "none",
        ("rectus femoris",),
        "As in a squat: what it shortens at the knee it is stretched by at the hip.",
        ("heel-raised step-up",),
    ),
    (
        "direct",
        "none",
        ("rectus femoris",),
        "Held as in a squat: it would bend the hip that the hold keeps from bending.",
        (
            "isometric mid-thigh pull",
            "Spanish squat hold",
            "isometric squat",
            "isometric towel pull",
            "belt squat hold",
            "squat hold",
            "split squat hold",
        ),
    ),
    (
        "indirect",
        "direct",
        ("rectus femoris", "vastus lateralis", "vastus medialis", "vastus intermedius"),
        "The knee bends to about 140; the table of lengths ends at 120 and so shows half the travel.",
        ("reverse Nordic curl", "band-assisted reverse Nordic curl"),
    ),
    (
        "direct",
        "indirect",
        ("serratus anterior",),
        "Lying face down the blade is drawn back as it turns up; the serratus turns it but does not lead.",
        ("Y raise", "I-Y-T raise"),
    ),
    (
        "direct",
        "indirect",
        ("sternocleidomastoid",),
        "The small nod is chosen so that the deep flexors hold and the big one in front stays quiet.",
        ("chin tuck",),
    ),
    (
        "direct",
        "indirect",
        ("sternocostal chest",),
        "The middle and lower parts of the chest worked hardest on the flat bench.",
        (
            "incline bench press",
            "incline dumbbell press",
            "guided-bar incline press",
            "incline machine press",
            "incline dumbbell fly",
            "incline cable fly",
        ),
    ),
    (
        "direct",
        "indirect",
        ("sternocostal chest",),
        "The lower part of the chest draws the arm across, but has no share in lifting it.",
        ("low-to-high cable fly",),
    ),
    (
        "none",
        "indirect",
        ("sternocostal chest",),
        "From overhead the lower part of the chest helps to pull the raised arm down.",
        ("dumbbell pullover", "barbell pullover"),
    ),
    (
        "direct",
        "indirect",
        ("triceps long head",),
        "The straightening elbow shortens it while the shoulder, moving from extension into flexion, lengthens it by about as much: loaded, but hardly moving, so less than the two short heads.",
        ("board bench press", "floor press", "dumbbell floor press", "kettlebell floor press"),
    ),
    (
        "none",
        "indirect",
        ("triceps long head",),
        "The straightening elbow shortens it while the shoulder, moving from extension into flexion, lengthens it by about as much: loaded, but hardly moving, so less than the two short heads.",
        (
            "close-grip bench press",
            "close-grip incline bench press",
            "underhand-grip bench press",
            "neutral-grip dumbbell bench press",
            "dumbbell squeeze press",
            "close-grip push-up",
            "diamond push-up",
        ),
    ),
    (
        "direct",
        "indirect",
        ("vastus lateralis", "vastus medialis", "vastus intermedius"),
        "A short, quick drive with a bell held in one hand: speed work for the thigh, not a heavy set.",
        ("kettlebell jerk",),
    ),
    (
        "direct",
        "none",
        ("vastus lateralis", "vastus medialis", "vastus intermedius"),
        "What the arm can hold overhead is far too light for the thigh.",
        ("sandbag get-up",),
    ),
    (
        "indirect",
        "none",
        ("vastus lateralis", "vastus medialis", "vastus intermedius"),
        "What the arm can hold overhead is far too light for the thigh.",
        ("Turkish get-up", "bottoms-up Turkish get-up"),
    ),
    (
        "indirect",
        "none",
        ("vastus lateralis", "vastus medialis", "vastus intermedius"),
        "The short dip and drive is far from taxing for the thigh; the arms finish the lift.",
        (
            "push press",
            "dumbbell push press",
            "kettlebell push press",
            "landmine push press",
            "behind-the-neck push press",
        ),
    ),
    (
        "none",
        "indirect",
        ("vastus lateralis", "vastus medialis", "vastus intermedius"),
        "It holds the knee straight against the weight of the leg, which is the point of it.",
        ("supine straight-leg raise",),
    ),
    (
        "indirect",
        "none",
        (
            "gluteus maximus",
            "adductor magnus",
            "biceps femoris long head",
            "semitendinosus",
            "semimembranosus",
        ),
        "A bar that can be pressed is light for the hips.",
        ("barbell clean and press",),
    ),
    (
        "direct",
        "indirect",
        ("semitendinosus", "semimembranosus"),
        "Common practice, no source: feet turned outward leave most of the work to the lateral hamstrings.",
        ("lying leg curl with feet turned out", "seated leg curl with feet turned out"),
    ),
    (
        "direct",
        "indirect",
        ("biceps femoris long head", "biceps femoris short head"),
        "Common practice, no source: feet turned inward leave most of the work to the medial hamstrings.",
        ("lying leg curl with feet turned in", "seated leg curl with feet turned in"),
    ),
)


def test_the_disagreements_are_those_on_record():
    recorded = {
        (exercise, muscle, derived, stated, because)
        for derived, stated, muscles, because, exercises in DISAGREEMENTS
        for muscle in muscles
        for exercise in exercises
    }
    found = {
        (exercise.name, credit.muscle, credit.derived, credit.credit, credit.because)
        for exercise in catalogue.exercises()
        for credit in exercise.profile().credits.values()
        if credit.credit != credit.derived
    }
    assert found == recorded


def test_every_statement_by_hand_changes_something():
    """One that says what derivation gives anyway would be a second source of the same fact."""
    for exercise in catalogue.exercises():
        credits = exercise.profile().credits
        for name in exercise.stated:
            members = catalogue.groups.get(name, (name,))
            assert any(credits[muscle].credit != credits[muscle].derived for muscle in members), (
                exercise.name,
                name,
            )
