"""Written by python -m spotline.lint.body.build from data/*.yaml: change those, not this."""

# ruff: noqa
# fmt: off

from __future__ import annotations

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

ACTIONS: tuple[tuple[Any, ...], ...] = (
    ('hip extension', 'hip', 'hip flexion', ('hip', -1)),
    ('hip flexion', 'hip', 'hip extension', ('hip', 1)),
    ('hip abduction', 'hip', 'hip adduction', None),
    ('hip adduction', 'hip', 'hip abduction', None),
    ('hip external rotation', 'hip', 'hip internal rotation', None),
    ('hip internal rotation', 'hip', 'hip external rotation', None),
    ('knee extension', 'knee', 'knee flexion', ('knee', -1)),
    ('knee flexion', 'knee', 'knee extension', ('knee', 1)),
    ('plantarflexion', 'ankle', 'dorsiflexion', ('ankle', -1)),
    ('dorsiflexion', 'ankle', 'plantarflexion', ('ankle', 1)),
    ('ankle inversion', 'ankle', 'ankle eversion', None),
    ('ankle eversion', 'ankle', 'ankle inversion', None),
    ('shoulder flexion', 'shoulder', 'shoulder extension', ('shoulder', 1)),
    ('shoulder extension', 'shoulder', 'shoulder flexion', ('shoulder', -1)),
    ('shoulder abduction', 'shoulder', 'shoulder adduction', None),
    ('shoulder adduction', 'shoulder', 'shoulder abduction', None),
    ('shoulder horizontal adduction', 'shoulder', 'shoulder horizontal abduction', None),
    ('shoulder horizontal abduction', 'shoulder', 'shoulder horizontal adduction', None),
    ('shoulder external rotation', 'shoulder', 'shoulder internal rotation', None),
    ('shoulder internal rotation', 'shoulder', 'shoulder external rotation', None),
    ('scapular elevation', 'shoulder blade', 'scapular depression', None),
    ('scapular depression', 'shoulder blade', 'scapular elevation', None),
    ('scapular retraction', 'shoulder blade', 'scapular protraction', None),
    ('scapular protraction', 'shoulder blade', 'scapular retraction', None),
    ('scapular upward rotation', 'shoulder blade', 'scapular downward rotation', None),
    ('scapular downward rotation', 'shoulder blade', 'scapular upward rotation', None),
    ('elbow flexion', 'elbow', 'elbow extension', ('elbow', 1)),
    ('elbow extension', 'elbow', 'elbow flexion', ('elbow', -1)),
    ('supination', 'forearm', 'pronation', None),
    ('pronation', 'forearm', 'supination', None),
    ('wrist flexion', 'wrist', 'wrist extension', None),
    ('wrist extension', 'wrist', 'wrist flexion', None),
    ('grip', 'wrist', None, None),
    ('trunk flexion', 'trunk', 'trunk extension', None),
    ('trunk extension', 'trunk', 'trunk flexion', None),
    ('trunk side bend', 'trunk', None, None),
    ('trunk rotation', 'trunk', None, None),
    ('neck flexion', 'neck', 'neck extension', None),
    ('neck extension', 'neck', 'neck flexion', None),
    ('neck side bend', 'neck', None, None),
    ('neck rotation', 'neck', None, None),
)

CURVES: tuple[tuple[Any, ...], ...] = (
    ('hamstrings_biarticular', 'rajagopal-2016', (('hip', (4.58, 1.85, -0.88)), ('knee', (-3.68, -1.88, 0.76))), -10.4, 9.4, ()),
    ('biceps_femoris_short', 'rajagopal-2016', (('knee', (-1.98, -2.86, 0.98)),), -7.6, 0.0, ()),
    ('rectus_femoris', 'rajagopal-2016', (('hip', (-3.33, -2.01, 0.77)), ('knee', (4.25, 0.06, -0.19))), -8.3, 8.4, ()),
    ('vasti', 'rajagopal-2016', (('knee', (4.09, -0.39, -0.02)),), 0.0, 6.7, ()),
    ('gluteus_maximus', 'rajagopal-2016', (('hip', (6.18, -0.53, -0.31)),), -2.1, 7.7, ()),
    ('adductor_magnus', 'rajagopal-2016', (('hip', (0.9, 2.26, -0.59)),), -0.1, 5.9, ()),
    ('adductors_long_brev', 'rajagopal-2016', (('hip', (-4.16, 0.5, 0.55)),), -3.3, 1.4, ()),
    ('gracilis', 'rajagopal-2016', (('hip', (-1.51, 3.43, -0.56)), ('knee', (-2.89, -2.37, 0.75))), -9.8, 5.9, ()),
    ('iliopsoas', 'rajagopal-2016', (('hip', (-2.49, -0.87, 0.21)),), -6.4, 0.8, ()),
    ('sartorius', 'rajagopal-2016', (('hip', (-3.03, -3.16, 0.84)), ('knee', (-1.69, -1.87, 0.4))), -19.5, 0.7, ()),
    ('tensor_fasciae_latae', 'rajagopal-2016', (('hip', (-2.72, -2.61, 0.27)), ('knee', (0.98, -0.32, 0.05))), -12.9, 1.7, ()),
    ('gastrocnemius', 'rajagopal-2016', (('knee', (-1.6, -1.25, 0.49)), ('ankle', (4.32, -0.41, -0.74))), -7.2, 1.8, ()),
    ('soleus', 'rajagopal-2016', (('ankle', (4.15, -0.72, -0.65)),), -3.0, 1.6, ()),
    ('tibialis_anterior', 'rajagopal-2016', (('ankle', (-4.25, -0.43, 0.36)),), -1.9, 2.6, ()),
    ('triceps_long', 'arm26', (('shoulder', (3.66, 0.39, -0.39)), ('elbow', (2.58, -0.27, 0.04))), -2.2, 9.9, (('shoulder', (-60, 90)),)),
    ('triceps_lateral', 'arm26', (('elbow', (2.58, -0.27, 0.04)),), 0.2, 4.7, ()),
    ('triceps_medial', 'arm26', (('elbow', (2.58, -0.27, 0.04)),), 0.2, 4.7, ()),
    ('biceps_long', 'arm26', (('shoulder', (-2.26, 0.05, 0.33)), ('elbow', (-0.6, -2.34, 0.43))), -10.1, 1.6, ()),
    ('biceps_short', 'arm26', (('shoulder', (-0.22, 2.46, -0.56)), ('elbow', (-0.6, -2.34, 0.43))), None, None, (('shoulder', (-60, 30)),)),
    ('brachialis', 'arm26', (('elbow', (-1.11, -0.2, -0.05)),), -3.9, -0.1, ()),
)

MUSCLES: tuple[tuple[Any, ...], ...] = (
    ('biceps femoris long head', 'legs', ('hamstrings',), ('hip', 'knee'), 'hamstrings_biarticular', (('hip extension', (('prime', (('knee', (0, 65)),), ''), ('helper', (('knee', (65, 150)),), 'with the knee bent to about a right angle the two-joint hamstrings are short and the gluteals do the work'))), ('knee flexion', (('prime', (), ''),))), ('anatomy-crossing', 'rajagopal-2016', 'maeo-2021')),
    ('semitendinosus', 'legs', ('hamstrings',), ('hip', 'knee'), 'hamstrings_biarticular', (('hip extension', (('prime', (('knee', (0, 65)),), ''), ('helper', (('knee', (65, 150)),), 'with the knee bent to about a right angle the two-joint hamstrings are short and the gluteals do the work'))), ('knee flexion', (('prime', (), ''),))), ('anatomy-crossing', 'rajagopal-2016', 'maeo-2021')),
    ('semimembranosus', 'legs', ('hamstrings',), ('hip', 'knee'), 'hamstrings_biarticular', (('hip extension', (('prime', (('knee', (0, 65)),), ''), ('helper', (('knee', (65, 150)),), 'with the knee bent to about a right angle the two-joint hamstrings are short and the gluteals do the work'))), ('knee flexion', (('prime', (), ''),))), ('anatomy-crossing', 'rajagopal-2016', 'bourne-2017')),
    ('biceps femoris short head', 'legs', ('hamstrings',), ('knee',), 'biceps_femoris_short', (('knee flexion', (('prime', (), ''),)),), ('anatomy-crossing', 'rajagopal-2016', 'maeo-2021')),
    ('rectus femoris', 'legs', ('quadriceps',), ('hip', 'knee'), 'rectus_femoris', (('knee extension', (('prime', (), ''),)), ('hip flexion', (('helper', (), ''),))), ('anatomy-crossing', 'rajagopal-2016', 'le-vs-squat-2025')),
    ('vastus lateralis', 'legs', ('quadriceps',), ('knee',), 'vasti', (('knee extension', (('prime', (), ''),)),), ('anatomy-crossing', 'rajagopal-2016')),
    ('vastus medialis', 'legs', ('quadriceps',), ('knee',), 'vasti', (('knee extension', (('prime', (), ''),)),), ('anatomy-crossing', 'rajagopal-2016')),
    ('vastus intermedius', 'legs', ('quadriceps',), ('knee',), 'vasti', (('knee extension', (('prime', (), ''),)),), ('anatomy-crossing', 'rajagopal-2016')),
    ('sartorius', 'legs', (), ('hip', 'knee'), 'sartorius', (('hip flexion', (('helper', (), ''),)), ('knee flexion', (('helper', (), ''),)), ('hip abduction', (('minor', (), 'a thin muscle beside the gluteus medius'),)), ('hip external rotation', (('minor', (('hip', (45, 120)),), 'a small lever beside the deep rotators'),))), ('anatomy-crossing', 'rajagopal-2016')),
    ('gracilis', 'legs', (), ('hip', 'knee'), 'gracilis', (('hip adduction', (('prime', (), ''),)), ('knee flexion', (('helper', (), ''),)), ('hip flexion', (('minor', (('hip', (-30, 13)),), 'it turns from flexor to extensor near a straight hip'),)), ('hip extension', (('minor', (('hip', (13, 120)),), 'a thin muscle beside hamstrings and gluteals'),))), ('anatomy-crossing', 'rajagopal-2016')),
    ('gluteus maximus', 'hips', ('gluteals',), ('hip',), 'gluteus_maximus', (('hip extension', (('prime', (), ''),)), ('hip abduction', (('helper', (), 'its upper part draws the thigh outwards'),)), ('hip external rotation', (('prime', (('hip', (-30, 45)),), ''),))), ('anatomy-crossing', 'rajagopal-2016', 'kubo-2019')),
    ('gluteus medius', 'hips', ('gluteals', 'hip abductors'), ('hip',), '', (('hip abduction', (('prime', (), ''),)), ('hip external rotation', (('helper', (('hip', (-30, 10)),), ''),)), ('hip internal rotation', (('prime', (('hip', (45, 120)),), ''),))), ('anatomy-crossing', 'rajagopal-2016')),
    ('gluteus minimus', 'hips', ('gluteals', 'hip abductors'), ('hip',), '', (('hip abduction', (('prime', (), ''),)), ('hip internal rotation', (('prime', (), 'its front part turns the thigh inwards'),))), ('anatomy-crossing', 'rajagopal-2016')),
    ('tensor fasciae latae', 'hips', (), ('hip', 'knee'), 'tensor_fasciae_latae', (('hip abduction', (('helper', (), ''),)), ('hip flexion', (('helper', (), ''),)), ('hip internal rotation', (('helper', (('hip', (45, 120)),), ''),))), ('anatomy-crossing', 'rajagopal-2016')),
    ('deep hip rotators', 'hips', ('hip rotators',), ('hip',), '', (('hip external rotation', (('prime', (('hip', (-30, 50)),), ''), ('prime', (('hip', (50, 120)),), 'the piriformis has turned into an inward rotator, the short muscles below it still turn outwards'))), ('hip abduction', (('minor', (), 'small muscles beside the gluteus medius'),))), ('anatomy-crossing', 'rajagopal-2016')),
    ('adductor magnus', 'hips', ('adductors',), ('hip',), 'adductor_magnus', (('hip adduction', (('prime', (), ''),)), ('hip extension', (('prime', (), ''),))), ('anatomy-crossing', 'rajagopal-2016', 'kubo-2019')),
    ('adductor longus', 'hips', ('adductors',), ('hip',), 'adductors_long_brev', (('hip adduction', (('prime', (), ''),)), ('hip flexion', (('minor', (('hip', (-30, 68)),), 'a passing helper: it turns from flexor to extensor in mid-range'),)), ('hip extension', (('minor', (('hip', (75, 120)),), 'a passing helper: it extends the hip only out of deep flexion'),))), ('anatomy-crossing', 'rajagopal-2016')),
    ('adductor brevis', 'hips', ('adductors',), ('hip',), 'adductors_long_brev', (('hip adduction', (('prime', (), ''),)), ('hip flexion', (('minor', (('hip', (-30, 68)),), 'a passing helper: it turns from flexor to extensor in mid-range'),)), ('hip extension', (('minor', (('hip', (75, 120)),), 'a passing helper: it extends the hip only out of deep flexion'),))), ('anatomy-crossing', 'rajagopal-2016')),
    ('pectineus', 'hips', ('adductors',), ('hip',), '', (('hip adduction', (('prime', (), ''),)), ('hip flexion', (('minor', (), 'a short muscle beside the iliopsoas'),))), ('anatomy-crossing',)),
    ('iliacus', 'hips', ('hip flexors',), ('hip',), 'iliopsoas', (('hip flexion', (('prime', (), ''),)),), ('anatomy-crossing', 'rajagopal-2016')),
    ('psoas major', 'hips', ('hip flexors',), ('hip', 'trunk'), 'iliopsoas', (('hip flexion', (('prime', (), ''),)), ('trunk side bend', (('minor', (), 'it steadies the lumbar spine rather than bending it'),))), ('anatomy-crossing', 'rajagopal-2016')),
    ('gastrocnemius', 'legs', ('calves',), ('knee', 'ankle'), 'gastrocnemius', (('plantarflexion', (('prime', (('knee', (0, 60)),), ''), ('minor', (('knee', (60, 150)),), 'slack with the knee bent to a right angle; seated raises grew it by 1-2 % where standing ones gave 9-12 %'))), ('knee flexion', (('minor', (), 'it shortens in a leg curl, but its lever at the knee is half that of the hamstrings, and curls are not counted as calf work'),))), ('anatomy-crossing', 'rajagopal-2016', 'kinoshita-2023')),
    ('soleus', 'legs', ('calves',), ('ankle',), 'soleus', (('plantarflexion', (('prime', (), ''),)),), ('anatomy-crossing', 'rajagopal-2016', 'kinoshita-2023')),
    ('tibialis anterior', 'legs', ('shins',), ('ankle',), 'tibialis_anterior', (('dorsiflexion', (('prime', (), ''),)), ('ankle inversion', (('helper', (), ''),))), ('anatomy-crossing', 'rajagopal-2016')),
    ('toe extensors', 'legs', ('shins',), ('ankle',), '', (('dorsiflexion', (('helper', (), ''),)),), ('anatomy-crossing', 'rajagopal-2016')),
    ('tibialis posterior', 'legs', ('ankle stabilisers',), ('ankle',), '', (('ankle inversion', (('prime', (), ''),)), ('plantarflexion', (('minor', (), 'a lever of about 1 cm beside the 4 cm of the calves'),))), ('anatomy-crossing', 'rajagopal-2016')),
    ('peroneals', 'legs', ('ankle stabilisers',), ('ankle',), '', (('ankle eversion', (('prime', (), ''),)), ('plantarflexion', (('minor', (), 'a lever of about 1 cm beside the 4 cm of the calves'),))), ('anatomy-crossing', 'rajagopal-2016')),
    ('long toe flexors', 'legs', ('ankle stabilisers',), ('ankle',), '', (('ankle inversion', (('helper', (), ''),)), ('plantarflexion', (('minor', (), 'a lever of about 1 cm beside the 4 cm of the calves'),))), ('anatomy-crossing', 'rajagopal-2016')),
    ('rectus abdominis', 'abdomen', ('abdominals',), ('trunk',), '', (('trunk flexion', (('prime', (), ''),)), ('trunk side bend', (('helper', (), ''),))), ('anatomy-crossing', 'lumbar-model')),
    ('external oblique', 'abdomen', ('abdominals', 'obliques'), ('trunk',), '', (('trunk flexion', (('helper', (), ''),)), ('trunk side bend', (('prime', (), ''),)), ('trunk rotation', (('prime', (), ''),))), ('anatomy-crossing', 'lumbar-model')),
    ('internal oblique', 'abdomen', ('abdominals', 'obliques'), ('trunk',), '', (('trunk flexion', (('helper', (), ''),)), ('trunk side bend', (('prime', (), ''),)), ('trunk rotation', (('prime', (), ''),))), ('anatomy-crossing', 'lumbar-model')),
    ('transversus abdominis', 'abdomen', ('abdominals',), ('trunk',), '', (('trunk rotation', (('helper', (), ''),)),), ('anatomy-crossing',)),
    ('erector spinae', 'back', ('lower back',), ('trunk',), '', (('trunk extension', (('prime', (), ''),)), ('trunk side bend', (('helper', (), ''),))), ('anatomy-crossing', 'lumbar-model')),
    ('multifidus', 'back', ('lower back',), ('trunk',), '', (('trunk extension', (('prime', (), ''),)), ('trunk rotation', (('minor', (), 'it steadies one vertebra on the next; its lever in rotation is small'),))), ('anatomy-crossing', 'lumbar-model')),
    ('quadratus lumborum', 'back', ('lower back',), ('trunk',), '', (('trunk side bend', (('prime', (), ''),)), ('trunk extension', (('minor', (), 'its lever is for side bending, five times that for extension'),))), ('anatomy-crossing', 'lumbar-model')),
    ('latissimus dorsi', 'back', ('lats',), ('shoulder', 'shoulder blade'), '', (('shoulder extension', (('prime', (), ''),)), ('shoulder adduction', (('prime', (), ''),)), ('shoulder internal rotation', (('minor', (), 'rotations with the arm at the side are too light a load for a muscle of this size'),))), ('anatomy-crossing',)),
    ('teres major', 'back', ('lats',), ('shoulder',), '', (('shoulder extension', (('prime', (), ''),)), ('shoulder adduction', (('prime', (), ''),)), ('shoulder internal rotation', (('minor', (), 'rotations with the arm at the side are too light a load for a muscle of this size'),))), ('anatomy-crossing',)),
    ('upper trapezius', 'back', ('traps',), ('shoulder blade', 'neck'), '', (('scapular elevation', (('prime', (), ''),)), ('scapular upward rotation', (('prime', (), ''),)), ('neck extension', (('helper', (), ''),)), ('neck side bend', (('helper', (), ''),))), ('anatomy-crossing',)),
    ('middle trapezius', 'back', ('upper back',), ('shoulder blade',), '', (('scapular retraction', (('prime', (), ''),)), ('scapular upward rotation', (('helper', (), ''),))), ('anatomy-crossing',)),
    ('lower trapezius', 'back', ('upper back',), ('shoulder blade',), '', (('scapular depression', (('prime', (), ''),)), ('scapular upward rotation', (('helper', (), ''),)), ('scapular retraction', (('helper', (), ''),))), ('anatomy-crossing',)),
    ('rhomboids', 'back', ('upper back',), ('shoulder blade',), '', (('scapular retraction', (('prime', (), ''),)), ('scapular downward rotation', (('prime', (), ''),)), ('scapular elevation', (('minor', (), 'the upper trapezius and levator lift the shoulder blade'),))), ('anatomy-crossing',)),
    ('levator scapulae', 'neck', (), ('shoulder blade', 'neck'), '', (('scapular elevation', (('helper', (), ''),)), ('scapular downward rotation', (('helper', (), ''),)), ('neck side bend', (('helper', (), ''),))), ('anatomy-crossing',)),
    ('serratus anterior', 'shoulders', ('serratus',), ('shoulder blade',), '', (('scapular protraction', (('prime', (), ''),)), ('scapular upward rotation', (('prime', (), ''),))), ('anatomy-crossing',)),
    ('pectoralis minor', 'shoulders', (), ('shoulder blade',), '', (('scapular depression', (('helper', (), ''),)), ('scapular protraction', (('helper', (), ''),)), ('scapular downward rotation', (('helper', (), ''),))), ('anatomy-crossing',)),
    ('clavicular chest', 'chest', ('chest', 'upper chest'), ('shoulder',), '', (('shoulder horizontal adduction', (('helper', (), ''),)), ('shoulder flexion', (('helper', (), ''),))), ('anatomy-crossing', 'ridao-2020', 'trebs-2010')),
    ('sternocostal chest', 'chest', ('chest',), ('shoulder',), '', (('shoulder horizontal adduction', (('prime', (), ''),)), ('shoulder extension', (('minor', (), 'it helps the arm down from overhead only, and pulls are not counted as chest work'),)), ('shoulder adduction', (('minor', (), 'it helps the arm down from overhead only, and pulls are not counted as chest work'),)), ('shoulder internal rotation', (('minor', (), 'rotations with the arm at the side are too light a load for a muscle of this size'),))), ('anatomy-crossing', 'ridao-2020')),
    ('anterior deltoid', 'shoulders', ('front shoulder',), ('shoulder',), '', (('shoulder flexion', (('prime', (), ''),)), ('shoulder horizontal adduction', (('helper', (), ''),)), ('shoulder abduction', (('helper', (), ''),))), ('anatomy-crossing', 'campos-2020')),
    ('middle deltoid', 'shoulders', ('side shoulder',), ('shoulder',), '', (('shoulder abduction', (('prime', (), ''),)), ('shoulder horizontal abduction', (('helper', (), ''),))), ('anatomy-crossing', 'campos-2020', 'botton-2013')),
    ('posterior deltoid', 'shoulders', ('rear shoulder',), ('shoulder',), '', (('shoulder horizontal abduction', (('prime', (), ''),)), ('shoulder extension', (('helper', (), ''),)), ('shoulder external rotation', (('helper', (), ''),))), ('anatomy-crossing', 'campos-2020', 'botton-2013')),
    ('supraspinatus', 'shoulders', ('rotator cuff',), ('shoulder',), '', (('shoulder abduction', (('helper', (), ''),)),), ('anatomy-crossing',)),
    ('infraspinatus', 'shoulders', ('rotator cuff',), ('shoulder',), '', (('shoulder external rotation', (('prime', (), ''),)), ('shoulder horizontal abduction', (('helper', (), ''),))), ('anatomy-crossing',)),
    ('teres minor', 'shoulders', ('rotator cuff',), ('shoulder',), '', (('shoulder external rotation', (('prime', (), ''),)), ('shoulder horizontal abduction', (('helper', (), ''),))), ('anatomy-crossing',)),
    ('subscapularis', 'shoulders', ('rotator cuff',), ('shoulder',), '', (('shoulder internal rotation', (('prime', (), ''),)),), ('anatomy-crossing',)),
    ('coracobrachialis', 'arms', (), ('shoulder',), '', (('shoulder flexion', (('helper', (), ''),)), ('shoulder horizontal adduction', (('helper', (), ''),))), ('anatomy-crossing',)),
    ('biceps long head', 'arms', ('biceps', 'elbow flexors'), ('shoulder', 'elbow', 'forearm'), 'biceps_long', (('elbow flexion', (('prime', (), ''),)), ('supination', (('prime', (), ''),)), ('shoulder flexion', (('minor', (), 'a weak flexor of the shoulder beside the deltoid'),))), ('anatomy-crossing', 'arm26')),
    ('biceps short head', 'arms', ('biceps', 'elbow flexors'), ('shoulder', 'elbow', 'forearm'), 'biceps_short', (('elbow flexion', (('prime', (), ''),)), ('supination', (('prime', (), ''),)), ('shoulder flexion', (('minor', (), 'a weak flexor of the shoulder beside the deltoid'),))), ('anatomy-crossing', 'arm26')),
    ('brachialis', 'arms', ('elbow flexors',), ('elbow',), 'brachialis', (('elbow flexion', (('prime', (), ''),)),), ('anatomy-crossing', 'arm26')),
    ('brachioradialis', 'arms', ('elbow flexors', 'forearms'), ('elbow',), '', (('elbow flexion', (('helper', (), ''),)),), ('anatomy-crossing',)),
    ('triceps long head', 'arms', ('triceps',), ('shoulder', 'elbow'), 'triceps_long', (('elbow extension', (('prime', (), ''),)), ('shoulder extension', (('helper', (('elbow', (0, 40)),), ''), ('minor', (('elbow', (40, 150)),), 'a pull that bends the elbow loads the biceps, and lengthens this head at its other end'))), ('shoulder adduction', (('minor', (), 'the latissimus and teres major pull the arm down'),))), ('anatomy-crossing', 'arm26', 'maeo-2023')),
    ('triceps lateral head', 'arms', ('triceps',), ('elbow',), 'triceps_lateral', (('elbow extension', (('prime', (), ''),)),), ('anatomy-crossing', 'arm26', 'maeo-2023')),
    ('triceps medial head', 'arms', ('triceps',), ('elbow',), 'triceps_medial', (('elbow extension', (('prime', (), ''),)),), ('anatomy-crossing', 'arm26', 'maeo-2023')),
    ('supinator', 'arms', ('forearms',), ('forearm',), '', (('supination', (('prime', (), ''),)),), ('anatomy-crossing',)),
    ('pronators', 'arms', ('forearms',), ('forearm',), '', (('pronation', (('prime', (), ''),)),), ('anatomy-crossing',)),
    ('wrist flexors', 'arms', ('forearms',), ('wrist',), '', (('wrist flexion', (('prime', (), ''),)), ('grip', (('helper', (), ''),))), ('anatomy-crossing',)),
    ('wrist extensors', 'arms', ('forearms',), ('wrist',), '', (('wrist extension', (('prime', (), ''),)), ('grip', (('helper', (), ''),))), ('anatomy-crossing',)),
    ('finger flexors', 'arms', ('forearms',), ('wrist',), '', (('grip', (('prime', (), ''),)), ('wrist flexion', (('helper', (), ''),))), ('anatomy-crossing',)),
    ('sternocleidomastoid', 'neck', ('neck muscles',), ('neck',), '', (('neck flexion', (('prime', (), ''),)), ('neck rotation', (('prime', (), ''),)), ('neck side bend', (('prime', (), ''),))), ('anatomy-crossing',)),
    ('deep neck flexors', 'neck', ('neck muscles',), ('neck',), '', (('neck flexion', (('prime', (), ''),)),), ('anatomy-crossing',)),
    ('scalenes', 'neck', ('neck muscles',), ('neck',), '', (('neck side bend', (('helper', (), ''),)), ('neck flexion', (('helper', (), ''),))), ('anatomy-crossing',)),
    ('splenius', 'neck', ('neck muscles',), ('neck',), '', (('neck extension', (('prime', (), ''),)), ('neck rotation', (('prime', (), ''),)), ('neck side bend', (('helper', (), ''),))), ('anatomy-crossing',)),
    ('semispinalis', 'neck', ('neck muscles',), ('neck',), '', (('neck extension', (('prime', (), ''),)),), ('anatomy-crossing',)),
)

GROUPS: dict[str, tuple[str, ...]] = {
    'hamstrings': ('biceps femoris long head', 'semitendinosus', 'semimembranosus', 'biceps femoris short head'),
    'quadriceps': ('rectus femoris', 'vastus lateralis', 'vastus medialis', 'vastus intermedius'),
    'gluteals': ('gluteus maximus', 'gluteus medius', 'gluteus minimus'),
    'hip abductors': ('gluteus medius', 'gluteus minimus'),
    'hip rotators': ('deep hip rotators',),
    'adductors': ('adductor magnus', 'adductor longus', 'adductor brevis', 'pectineus'),
    'hip flexors': ('iliacus', 'psoas major'),
    'calves': ('gastrocnemius', 'soleus'),
    'shins': ('tibialis anterior', 'toe extensors'),
    'ankle stabilisers': ('tibialis posterior', 'peroneals', 'long toe flexors'),
    'abdominals': ('rectus abdominis', 'external oblique', 'internal oblique', 'transversus abdominis'),
    'obliques': ('external oblique', 'internal oblique'),
    'lower back': ('erector spinae', 'multifidus', 'quadratus lumborum'),
    'lats': ('latissimus dorsi', 'teres major'),
    'traps': ('upper trapezius',),
    'upper back': ('middle trapezius', 'lower trapezius', 'rhomboids'),
    'serratus': ('serratus anterior',),
    'chest': ('clavicular chest', 'sternocostal chest'),
    'upper chest': ('clavicular chest',),
    'front shoulder': ('anterior deltoid',),
    'side shoulder': ('middle deltoid',),
    'rear shoulder': ('posterior deltoid',),
    'rotator cuff': ('supraspinatus', 'infraspinatus', 'teres minor', 'subscapularis'),
    'biceps': ('biceps long head', 'biceps short head'),
    'elbow flexors': ('biceps long head', 'biceps short head', 'brachialis', 'brachioradialis'),
    'forearms': ('brachioradialis', 'supinator', 'pronators', 'wrist flexors', 'wrist extensors', 'finger flexors'),
    'triceps': ('triceps long head', 'triceps lateral head', 'triceps medial head'),
    'neck muscles': ('sternocleidomastoid', 'deep neck flexors', 'scalenes', 'splenius', 'semispinalis'),
}

REGIONS: dict[str, tuple[str, ...]] = {
    'legs': ('biceps femoris long head', 'semitendinosus', 'semimembranosus', 'biceps femoris short head', 'rectus femoris', 'vastus lateralis', 'vastus medialis', 'vastus intermedius', 'sartorius', 'gracilis', 'gastrocnemius', 'soleus', 'tibialis anterior', 'toe extensors', 'tibialis posterior', 'peroneals', 'long toe flexors'),
    'hips': ('gluteus maximus', 'gluteus medius', 'gluteus minimus', 'tensor fasciae latae', 'deep hip rotators', 'adductor magnus', 'adductor longus', 'adductor brevis', 'pectineus', 'iliacus', 'psoas major'),
    'abdomen': ('rectus abdominis', 'external oblique', 'internal oblique', 'transversus abdominis'),
    'back': ('erector spinae', 'multifidus', 'quadratus lumborum', 'latissimus dorsi', 'teres major', 'upper trapezius', 'middle trapezius', 'lower trapezius', 'rhomboids'),
    'neck': ('levator scapulae', 'sternocleidomastoid', 'deep neck flexors', 'scalenes', 'splenius', 'semispinalis'),
    'shoulders': ('serratus anterior', 'pectoralis minor', 'anterior deltoid', 'middle deltoid', 'posterior deltoid', 'supraspinatus', 'infraspinatus', 'teres minor', 'subscapularis'),
    'chest': ('clavicular chest', 'sternocostal chest'),
    'arms': ('coracobrachialis', 'biceps long head', 'biceps short head', 'brachialis', 'brachioradialis', 'triceps long head', 'triceps lateral head', 'triceps medial head', 'supinator', 'pronators', 'wrist flexors', 'wrist extensors', 'finger flexors'),
}

AREAS: dict[str, tuple[str, ...]] = {
    'hamstring': ('biceps femoris long head', 'semitendinosus', 'semimembranosus', 'biceps femoris short head'),
    'ham': ('biceps femoris long head', 'semitendinosus', 'semimembranosus', 'biceps femoris short head'),
    'backofthethigh': ('biceps femoris long head', 'semitendinosus', 'semimembranosus', 'biceps femoris short head'),
    'posteriorthigh': ('biceps femoris long head', 'semitendinosus', 'semimembranosus', 'biceps femoris short head'),
    'quadricep': ('rectus femoris', 'vastus lateralis', 'vastus medialis', 'vastus intermedius'),
    'quad': ('rectus femoris', 'vastus lateralis', 'vastus medialis', 'vastus intermedius'),
    'frontofthethigh': ('rectus femoris', 'vastus lateralis', 'vastus medialis', 'vastus intermedius'),
    'anteriorthigh': ('rectus femoris', 'vastus lateralis', 'vastus medialis', 'vastus intermedius'),
    'kneeextensor': ('rectus femoris', 'vastus lateralis', 'vastus medialis', 'vastus intermedius'),
    'gluteal': ('gluteus maximus', 'gluteus medius', 'gluteus minimus'),
    'glute': ('gluteus maximus', 'gluteus medius', 'gluteus minimus'),
    'buttock': ('gluteus maximus', 'gluteus medius', 'gluteus minimus'),
    'hipextensor': ('gluteus maximus', 'gluteus medius', 'gluteus minimus'),
    'adductor': ('adductor magnus', 'adductor longus', 'adductor brevis', 'pectineus'),
    'groin': ('adductor magnus', 'adductor longus', 'adductor brevis', 'pectineus'),
    'innerthigh': ('adductor magnus', 'adductor longus', 'adductor brevis', 'pectineus'),
    'hipadductor': ('adductor magnus', 'adductor longus', 'adductor brevis', 'pectineus'),
    'hipabductor': ('gluteus medius', 'gluteus minimus'),
    'abductor': ('gluteus medius', 'gluteus minimus'),
    'outerhip': ('gluteus medius', 'gluteus minimus'),
    'sideglute': ('gluteus medius', 'gluteus minimus'),
    'hipflexor': ('iliacus', 'psoas major'),
    'iliopsoa': ('iliacus', 'psoas major'),
    'frontofthehip': ('iliacus', 'psoas major'),
    'calve': ('gastrocnemius', 'soleus'),
    'calf': ('gastrocnemius', 'soleus'),
    'tricepsurae': ('gastrocnemius', 'soleus'),
    'plantarflexor': ('gastrocnemius', 'soleus'),
    'shin': ('tibialis anterior', 'toe extensors'),
    'dorsiflexor': ('tibialis anterior', 'toe extensors'),
    'anklestabiliser': ('tibialis posterior', 'peroneals', 'long toe flexors'),
    'ankle': ('tibialis posterior', 'peroneals', 'long toe flexors'),
    'chest': ('clavicular chest', 'sternocostal chest'),
    'pec': ('clavicular chest', 'sternocostal chest'),
    'pectoral': ('clavicular chest', 'sternocostal chest'),
    'pectorali': ('clavicular chest', 'sternocostal chest'),
    'pectoralimajor': ('clavicular chest', 'sternocostal chest'),
    'upperchest': ('clavicular chest',),
    'upperpec': ('clavicular chest',),
    'clavicularpectoralimajor': ('clavicular chest',),
    'sternocostalchest': ('sternocostal chest',),
    'lowerchest': ('sternocostal chest',),
    'middlelowerchest': ('sternocostal chest',),
    'midchest': ('sternocostal chest',),
    'middlechest': ('sternocostal chest',),
    'lowerpec': ('sternocostal chest',),
    'sternocostalpectoralimajor': ('sternocostal chest',),
    'lat': ('latissimus dorsi', 'teres major'),
    'latissimu': ('latissimus dorsi', 'teres major'),
    'upperback': ('middle trapezius', 'lower trapezius', 'rhomboids'),
    'midback': ('middle trapezius', 'lower trapezius', 'rhomboids'),
    'middleback': ('middle trapezius', 'lower trapezius', 'rhomboids'),
    'scapularretractor': ('middle trapezius', 'lower trapezius', 'rhomboids'),
    'lowerback': ('erector spinae', 'multifidus', 'quadratus lumborum'),
    'lowback': ('erector spinae', 'multifidus', 'quadratus lumborum'),
    'spinalerector': ('erector spinae', 'multifidus', 'quadratus lumborum'),
    'erector': ('erector spinae', 'multifidus', 'quadratus lumborum'),
    'backextensor': ('erector spinae', 'multifidus', 'quadratus lumborum'),
    'trap': ('upper trapezius',),
    'uppertrap': ('upper trapezius',),
    'trapeziu': ('upper trapezius', 'middle trapezius', 'lower trapezius'),
    'frontshoulder': ('anterior deltoid',),
    'frontdelt': ('anterior deltoid',),
    'frontdeltoid': ('anterior deltoid',),
    'anteriordelt': ('anterior deltoid',),
    'sideshoulder': ('middle deltoid',),
    'sidedelt': ('middle deltoid',),
    'sidedeltoid': ('middle deltoid',),
    'medialdelt': ('middle deltoid',),
    'lateraldelt': ('middle deltoid',),
    'lateraldeltoid': ('middle deltoid',),
    'rearshoulder': ('posterior deltoid',),
    'reardelt': ('posterior deltoid',),
    'reardeltoid': ('posterior deltoid',),
    'posteriordelt': ('posterior deltoid',),
    'rotatorcuff': ('supraspinatus', 'infraspinatus', 'teres minor', 'subscapularis'),
    'cuff': ('supraspinatus', 'infraspinatus', 'teres minor', 'subscapularis'),
    'shoulder': ('serratus anterior', 'pectoralis minor', 'anterior deltoid', 'middle deltoid', 'posterior deltoid', 'supraspinatus', 'infraspinatus', 'teres minor', 'subscapularis'),
    'deltoid': ('anterior deltoid', 'middle deltoid', 'posterior deltoid'),
    'delt': ('anterior deltoid', 'middle deltoid', 'posterior deltoid'),
    'bicep': ('biceps long head', 'biceps short head'),
    'bicepbrachii': ('biceps long head', 'biceps short head'),
    'bi': ('biceps long head', 'biceps short head'),
    'tricep': ('triceps long head', 'triceps lateral head', 'triceps medial head'),
    'tricepbrachii': ('triceps long head', 'triceps lateral head', 'triceps medial head'),
    'tri': ('triceps long head', 'triceps lateral head', 'triceps medial head'),
    'elbowflexor': ('biceps long head', 'biceps short head', 'brachialis', 'brachioradialis'),
    'frontofthearm': ('biceps long head', 'biceps short head', 'brachialis', 'brachioradialis'),
    'forearm': ('brachioradialis', 'supinator', 'pronators', 'wrist flexors', 'wrist extensors', 'finger flexors'),
    'grip': ('brachioradialis', 'supinator', 'pronators', 'wrist flexors', 'wrist extensors', 'finger flexors'),
    'wrist': ('brachioradialis', 'supinator', 'pronators', 'wrist flexors', 'wrist extensors', 'finger flexors'),
    'abdominal': ('rectus abdominis', 'external oblique', 'internal oblique', 'transversus abdominis'),
    'ab': ('rectus abdominis', 'external oblique', 'internal oblique', 'transversus abdominis'),
    'stomach': ('rectus abdominis', 'external oblique', 'internal oblique', 'transversus abdominis'),
    'sixpack': ('rectus abdominis', 'external oblique', 'internal oblique', 'transversus abdominis'),
    'oblique': ('external oblique', 'internal oblique'),
    'waist': ('external oblique', 'internal oblique'),
    'sideab': ('external oblique', 'internal oblique'),
    'arm': ('coracobrachialis', 'biceps long head', 'biceps short head', 'brachialis', 'brachioradialis', 'triceps long head', 'triceps lateral head', 'triceps medial head', 'supinator', 'pronators', 'wrist flexors', 'wrist extensors', 'finger flexors'),
    'upperarm': ('biceps long head', 'biceps short head', 'brachialis', 'brachioradialis', 'triceps long head', 'triceps lateral head', 'triceps medial head'),
    'leg': ('biceps femoris long head', 'semitendinosus', 'semimembranosus', 'biceps femoris short head', 'rectus femoris', 'vastus lateralis', 'vastus medialis', 'vastus intermedius', 'sartorius', 'gracilis', 'gastrocnemius', 'soleus', 'tibialis anterior', 'toe extensors', 'tibialis posterior', 'peroneals', 'long toe flexors'),
    'thighandcalve': ('biceps femoris long head', 'semitendinosus', 'semimembranosus', 'biceps femoris short head', 'rectus femoris', 'vastus lateralis', 'vastus medialis', 'vastus intermedius', 'sartorius', 'gracilis', 'gastrocnemius', 'soleus', 'tibialis anterior', 'toe extensors', 'tibialis posterior', 'peroneals', 'long toe flexors'),
    'hip': ('gluteus maximus', 'gluteus medius', 'gluteus minimus', 'tensor fasciae latae', 'deep hip rotators', 'adductor magnus', 'adductor longus', 'adductor brevis', 'pectineus', 'iliacus', 'psoas major'),
    'thigh': ('biceps femoris long head', 'semitendinosus', 'semimembranosus', 'biceps femoris short head', 'rectus femoris', 'vastus lateralis', 'vastus medialis', 'vastus intermedius', 'adductor magnus', 'adductor longus', 'adductor brevis', 'pectineus'),
    'upperleg': ('biceps femoris long head', 'semitendinosus', 'semimembranosus', 'biceps femoris short head', 'rectus femoris', 'vastus lateralis', 'vastus medialis', 'vastus intermedius', 'adductor magnus', 'adductor longus', 'adductor brevis', 'pectineus'),
    'lowerleg': ('gastrocnemius', 'soleus', 'tibialis anterior', 'toe extensors', 'tibialis posterior', 'peroneals', 'long toe flexors'),
    'posteriorchain': ('biceps femoris long head', 'semitendinosus', 'semimembranosus', 'biceps femoris short head', 'gluteus maximus', 'gluteus medius', 'gluteus minimus', 'erector spinae', 'multifidus', 'quadratus lumborum'),
    'trunk': ('rectus abdominis', 'external oblique', 'internal oblique', 'transversus abdominis', 'erector spinae', 'multifidus', 'quadratus lumborum'),
    'core': ('rectus abdominis', 'external oblique', 'internal oblique', 'transversus abdominis', 'erector spinae', 'multifidus', 'quadratus lumborum'),
    'midsection': ('rectus abdominis', 'external oblique', 'internal oblique', 'transversus abdominis', 'erector spinae', 'multifidus', 'quadratus lumborum'),
    'torso': ('rectus abdominis', 'external oblique', 'internal oblique', 'transversus abdominis', 'erector spinae', 'multifidus', 'quadratus lumborum'),
    'lowerbody': ('biceps femoris long head', 'semitendinosus', 'semimembranosus', 'biceps femoris short head', 'rectus femoris', 'vastus lateralis', 'vastus medialis', 'vastus intermedius', 'sartorius', 'gracilis', 'gluteus maximus', 'gluteus medius', 'gluteus minimus', 'tensor fasciae latae', 'deep hip rotators', 'adductor magnus', 'adductor longus', 'adductor brevis', 'pectineus', 'iliacus', 'psoas major', 'gastrocnemius', 'soleus', 'tibialis anterior', 'toe extensors', 'tibialis posterior', 'peroneals', 'long toe flexors'),
    'lower': ('biceps femoris long head', 'semitendinosus', 'semimembranosus', 'biceps femoris short head', 'rectus femoris', 'vastus lateralis', 'vastus medialis', 'vastus intermedius', 'sartorius', 'gracilis', 'gluteus maximus', 'gluteus medius', 'gluteus minimus', 'tensor fasciae latae', 'deep hip rotators', 'adductor magnus', 'adductor longus', 'adductor brevis', 'pectineus', 'iliacus', 'psoas major', 'gastrocnemius', 'soleus', 'tibialis anterior', 'toe extensors', 'tibialis posterior', 'peroneals', 'long toe flexors'),
    'upperbody': ('erector spinae', 'multifidus', 'quadratus lumborum', 'latissimus dorsi', 'teres major', 'upper trapezius', 'middle trapezius', 'lower trapezius', 'rhomboids', 'levator scapulae', 'serratus anterior', 'pectoralis minor', 'clavicular chest', 'sternocostal chest', 'anterior deltoid', 'middle deltoid', 'posterior deltoid', 'supraspinatus', 'infraspinatus', 'teres minor', 'subscapularis', 'coracobrachialis', 'biceps long head', 'biceps short head', 'brachialis', 'brachioradialis', 'triceps long head', 'triceps lateral head', 'triceps medial head', 'supinator', 'pronators', 'wrist flexors', 'wrist extensors', 'finger flexors', 'sternocleidomastoid', 'deep neck flexors', 'scalenes', 'splenius', 'semispinalis'),
    'upper': ('erector spinae', 'multifidus', 'quadratus lumborum', 'latissimus dorsi', 'teres major', 'upper trapezius', 'middle trapezius', 'lower trapezius', 'rhomboids', 'levator scapulae', 'serratus anterior', 'pectoralis minor', 'clavicular chest', 'sternocostal chest', 'anterior deltoid', 'middle deltoid', 'posterior deltoid', 'supraspinatus', 'infraspinatus', 'teres minor', 'subscapularis', 'coracobrachialis', 'biceps long head', 'biceps short head', 'brachialis', 'brachioradialis', 'triceps long head', 'triceps lateral head', 'triceps medial head', 'supinator', 'pronators', 'wrist flexors', 'wrist extensors', 'finger flexors', 'sternocleidomastoid', 'deep neck flexors', 'scalenes', 'splenius', 'semispinalis'),
    'wholebody': ('biceps femoris long head', 'semitendinosus', 'semimembranosus', 'biceps femoris short head', 'rectus femoris', 'vastus lateralis', 'vastus medialis', 'vastus intermedius', 'sartorius', 'gracilis', 'gluteus maximus', 'gluteus medius', 'gluteus minimus', 'tensor fasciae latae', 'deep hip rotators', 'adductor magnus', 'adductor longus', 'adductor brevis', 'pectineus', 'iliacus', 'psoas major', 'gastrocnemius', 'soleus', 'tibialis anterior', 'toe extensors', 'tibialis posterior', 'peroneals', 'long toe flexors', 'rectus abdominis', 'external oblique', 'internal oblique', 'transversus abdominis', 'erector spinae', 'multifidus', 'quadratus lumborum', 'latissimus dorsi', 'teres major', 'upper trapezius', 'middle trapezius', 'lower trapezius', 'rhomboids', 'levator scapulae', 'serratus anterior', 'pectoralis minor', 'clavicular chest', 'sternocostal chest', 'anterior deltoid', 'middle deltoid', 'posterior deltoid', 'supraspinatus', 'infraspinatus', 'teres minor', 'subscapularis', 'coracobrachialis', 'biceps long head', 'biceps short head', 'brachialis', 'brachioradialis', 'triceps long head', 'triceps lateral head', 'triceps medial head', 'supinator', 'pronators', 'wrist flexors', 'wrist extensors', 'finger flexors', 'sternocleidomastoid', 'deep neck flexors', 'scalenes', 'splenius', 'semispinalis'),
    'fullbody': ('biceps femoris long head', 'semitendinosus', 'semimembranosus', 'biceps femoris short head', 'rectus femoris', 'vastus lateralis', 'vastus medialis', 'vastus intermedius', 'sartorius', 'gracilis', 'gluteus maximus', 'gluteus medius', 'gluteus minimus', 'tensor fasciae latae', 'deep hip rotators', 'adductor magnus', 'adductor longus', 'adductor brevis', 'pectineus', 'iliacus', 'psoas major', 'gastrocnemius', 'soleus', 'tibialis anterior', 'toe extensors', 'tibialis posterior', 'peroneals', 'long toe flexors', 'rectus abdominis', 'external oblique', 'internal oblique', 'transversus abdominis', 'erector spinae', 'multifidus', 'quadratus lumborum', 'latissimus dorsi', 'teres major', 'upper trapezius', 'middle trapezius', 'lower trapezius', 'rhomboids', 'levator scapulae', 'serratus anterior', 'pectoralis minor', 'clavicular chest', 'sternocostal chest', 'anterior deltoid', 'middle deltoid', 'posterior deltoid', 'supraspinatus', 'infraspinatus', 'teres minor', 'subscapularis', 'coracobrachialis', 'biceps long head', 'biceps short head', 'brachialis', 'brachioradialis', 'triceps long head', 'triceps lateral head', 'triceps medial head', 'supinator', 'pronators', 'wrist flexors', 'wrist extensors', 'finger flexors', 'sternocleidomastoid', 'deep neck flexors', 'scalenes', 'splenius', 'semispinalis'),
    'totalbody': ('biceps femoris long head', 'semitendinosus', 'semimembranosus', 'biceps femoris short head', 'rectus femoris', 'vastus lateralis', 'vastus medialis', 'vastus intermedius', 'sartorius', 'gracilis', 'gluteus maximus', 'gluteus medius', 'gluteus minimus', 'tensor fasciae latae', 'deep hip rotators', 'adductor magnus', 'adductor longus', 'adductor brevis', 'pectineus', 'iliacus', 'psoas major', 'gastrocnemius', 'soleus', 'tibialis anterior', 'toe extensors', 'tibialis posterior', 'peroneals', 'long toe flexors', 'rectus abdominis', 'external oblique', 'internal oblique', 'transversus abdominis', 'erector spinae', 'multifidus', 'quadratus lumborum', 'latissimus dorsi', 'teres major', 'upper trapezius', 'middle trapezius', 'lower trapezius', 'rhomboids', 'levator scapulae', 'serratus anterior', 'pectoralis minor', 'clavicular chest', 'sternocostal chest', 'anterior deltoid', 'middle deltoid', 'posterior deltoid', 'supraspinatus', 'infraspinatus', 'teres minor', 'subscapularis', 'coracobrachialis', 'biceps long head', 'biceps short head', 'brachialis', 'brachioradialis', 'triceps long head', 'triceps lateral head', 'triceps medial head', 'supinator', 'pronators', 'wrist flexors', 'wrist extensors', 'finger flexors', 'sternocleidomastoid', 'deep neck flexors', 'scalenes', 'splenius', 'semispinalis'),
    'pushmuscle': ('clavicular chest', 'sternocostal chest', 'anterior deltoid', 'middle deltoid', 'triceps long head', 'triceps lateral head', 'triceps medial head'),
    'push': ('clavicular chest', 'sternocostal chest', 'anterior deltoid', 'middle deltoid', 'triceps long head', 'triceps lateral head', 'triceps medial head'),
    'pullmuscle': ('latissimus dorsi', 'teres major', 'upper trapezius', 'middle trapezius', 'lower trapezius', 'rhomboids', 'posterior deltoid', 'biceps long head', 'biceps short head', 'brachialis', 'brachioradialis'),
    'pull': ('latissimus dorsi', 'teres major', 'upper trapezius', 'middle trapezius', 'lower trapezius', 'rhomboids', 'posterior deltoid', 'biceps long head', 'biceps short head', 'brachialis', 'brachioradialis'),
    'hiprotator': ('deep hip rotators',),
    'serratu': ('serratus anterior',),
    'neckmuscle': ('sternocleidomastoid', 'deep neck flexors', 'scalenes', 'splenius', 'semispinalis'),
    'abdomen': ('rectus abdominis', 'external oblique', 'internal oblique', 'transversus abdominis'),
    'back': ('erector spinae', 'multifidus', 'quadratus lumborum', 'latissimus dorsi', 'teres major', 'upper trapezius', 'middle trapezius', 'lower trapezius', 'rhomboids'),
    'neck': ('levator scapulae', 'sternocleidomastoid', 'deep neck flexors', 'scalenes', 'splenius', 'semispinalis'),
    'bicepfemorilonghead': ('biceps femoris long head',),
    'semitendinosu': ('semitendinosus',),
    'semimembranosu': ('semimembranosus',),
    'bicepfemorishorthead': ('biceps femoris short head',),
    'rectufemori': ('rectus femoris',),
    'vastulaterali': ('vastus lateralis',),
    'vastumediali': ('vastus medialis',),
    'vastuintermediu': ('vastus intermedius',),
    'sartoriu': ('sartorius',),
    'gracili': ('gracilis',),
    'gluteumaximu': ('gluteus maximus',),
    'gluteumediu': ('gluteus medius',),
    'gluteuminimu': ('gluteus minimus',),
    'tensorfasciaelatae': ('tensor fasciae latae',),
    'deephiprotator': ('deep hip rotators',),
    'adductormagnu': ('adductor magnus',),
    'adductorlongu': ('adductor longus',),
    'adductorbrevi': ('adductor brevis',),
    'pectineu': ('pectineus',),
    'iliacu': ('iliacus',),
    'psoamajor': ('psoas major',),
    'gastrocnemiu': ('gastrocnemius',),
    'soleu': ('soleus',),
    'tibialianterior': ('tibialis anterior',),
    'toeextensor': ('toe extensors',),
    'tibialiposterior': ('tibialis posterior',),
    'peroneal': ('peroneals',),
    'longtoeflexor': ('long toe flexors',),
    'rectuabdomini': ('rectus abdominis',),
    'externaloblique': ('external oblique',),
    'internaloblique': ('internal oblique',),
    'transversuabdomini': ('transversus abdominis',),
    'erectorspinae': ('erector spinae',),
    'multifidu': ('multifidus',),
    'quadratulumborum': ('quadratus lumborum',),
    'latissimudorsi': ('latissimus dorsi',),
    'teremajor': ('teres major',),
    'uppertrapeziu': ('upper trapezius',),
    'middletrapeziu': ('middle trapezius',),
    'lowertrapeziu': ('lower trapezius',),
    'rhomboid': ('rhomboids',),
    'levatorscapulae': ('levator scapulae',),
    'serratuanterior': ('serratus anterior',),
    'pectoraliminor': ('pectoralis minor',),
    'clavicularchest': ('clavicular chest',),
    'anteriordeltoid': ('anterior deltoid',),
    'middledeltoid': ('middle deltoid',),
    'posteriordeltoid': ('posterior deltoid',),
    'supraspinatu': ('supraspinatus',),
    'infraspinatu': ('infraspinatus',),
    'tereminor': ('teres minor',),
    'subscapulari': ('subscapularis',),
    'coracobrachiali': ('coracobrachialis',),
    'biceplonghead': ('biceps long head',),
    'bicepshorthead': ('biceps short head',),
    'brachiali': ('brachialis',),
    'brachioradiali': ('brachioradialis',),
    'triceplonghead': ('triceps long head',),
    'triceplateralhead': ('triceps lateral head',),
    'tricepmedialhead': ('triceps medial head',),
    'supinator': ('supinator',),
    'pronator': ('pronators',),
    'wristflexor': ('wrist flexors',),
    'wristextensor': ('wrist extensors',),
    'fingerflexor': ('finger flexors',),
    'sternocleidomastoid': ('sternocleidomastoid',),
    'deepneckflexor': ('deep neck flexors',),
    'scalene': ('scalenes',),
    'spleniu': ('splenius',),
    'semispinali': ('semispinalis',),
}

AREA_NAMES: tuple[str, ...] = ('hamstrings', 'quadriceps', 'gluteals', 'adductors', 'hip abductors', 'hip flexors', 'calves', 'shins', 'ankle stabilisers', 'chest', 'upper chest', 'sternocostal chest', 'lats', 'upper back', 'lower back', 'traps', 'trapezius', 'front shoulder', 'side shoulder', 'rear shoulder', 'rotator cuff', 'shoulders', 'deltoids', 'biceps', 'triceps', 'elbow flexors', 'forearms', 'abdominals', 'obliques', 'arms', 'upper arms', 'legs', 'hips', 'thighs', 'lower leg', 'posterior chain', 'trunk', 'lower body', 'upper body', 'whole body', 'push muscles', 'pull muscles', 'hip rotators', 'serratus', 'neck muscles', 'abdomen', 'back', 'neck', 'biceps femoris long head', 'semitendinosus', 'semimembranosus', 'biceps femoris short head', 'rectus femoris', 'vastus lateralis', 'vastus medialis', 'vastus intermedius', 'sartorius', 'gracilis', 'gluteus maximus', 'gluteus medius', 'gluteus minimus', 'tensor fasciae latae', 'deep hip rotators', 'adductor magnus', 'adductor longus', 'adductor brevis', 'pectineus', 'iliacus', 'psoas major', 'gastrocnemius', 'soleus', 'tibialis anterior', 'toe extensors', 'tibialis posterior', 'peroneals', 'long toe flexors', 'rectus abdominis', 'external oblique', 'internal oblique', 'transversus abdominis', 'erector spinae', 'multifidus', 'quadratus lumborum', 'latissimus dorsi', 'teres major', 'upper trapezius', 'middle trapezius', 'lower trapezius', 'rhomboids', 'levator scapulae', 'serratus anterior', 'pectoralis minor', 'clavicular chest', 'anterior deltoid', 'middle deltoid', 'posterior deltoid', 'supraspinatus', 'infraspinatus', 'teres minor', 'subscapularis', 'coracobrachialis', 'biceps long head', 'biceps short head', 'brachialis', 'brachioradialis', 'triceps long head', 'triceps lateral head', 'triceps medial head', 'supinator', 'pronators', 'wrist flexors', 'wrist extensors', 'finger flexors', 'sternocleidomastoid', 'deep neck flexors', 'scalenes', 'splenius', 'semispinalis')

PAIRS: tuple[tuple[Any, ...], ...] = (
    ('front and back of the thigh', (('the front of the thigh (knee extension)', 'quadriceps', ('knee extension',), ()), ('the back of the thigh (leg curls and hip hinges)', 'hamstrings', ('knee flexion',), ('hip hinge',))), True, ('cp-balance',)),
    ('pressing and pulling', (('pressing', 'push muscles', (), ('horizontal push', 'vertical push')), ('pulling', 'pull muscles', (), ('horizontal pull', 'vertical pull'))), False, ('row-press-balance',)),
    ('bending and straightening the elbow', (('elbow flexion', 'elbow flexors', ('elbow flexion',), ()), ('elbow extension', 'triceps', ('elbow extension',), ())), False, ('row-press-balance',)),
    ('outer and inner hip', (('hip abduction', 'hip abductors', ('hip abduction',), ()), ('hip adduction', 'adductors', ('hip adduction',), ())), False, ('row-press-balance',)),
)

SOURCES: dict[str, tuple[str, str, str, str, str]] = {
    'cp-cap': ('common practice, no source', 'Common practice, no source: a weekly limit of 20 hard sets a muscle group by default.', 'common practice', 'M', 'rule of thumb of the trade, from memory'),
    'cp-balance': ('common practice, no source', 'Common practice, no source: weekly work of the back of the thigh is kept near that of the front, 1 : 1 with room on both sides.', 'common practice', 'M', 'rule of thumb of the trade, from memory'),
    'cp-both': ('common practice, no source', 'Common practice, no source: the back of the thigh is given both of its jobs, extending the hip and bending the knee, since one head has no part in the first.', 'common practice', 'M', 'rule of thumb of the trade, from memory'),
    'cp-twice': ('common practice, no source', 'Common practice, no source: two exposures a week for a muscle, 48 to 72 hours apart, placed on lower-body days.', 'common practice', 'M', 'rule of thumb of the trade, from memory'),
    'cp-spread': ('common practice, no source', 'Common practice, no source: a heavy slot (4-8 repetitions) and a light slot (8-20) in the week.', 'common practice', 'M', 'rule of thumb of the trade, from memory'),
    'cp-cross': ('common practice, no source', 'Common practice, no source: the two slots change places over the week: one day the hinge is heavy and the curl light, the other day the reverse; a third exercise where a muscle lags.', 'common practice', 'M', 'rule of thumb of the trade, from memory'),
    'cp-heavy-hinge': ('common practice, no source', 'Common practice, no source: stiff-knee hinges are loaded no heavier than the hamstrings can own; past that the trunk extensors and gluteals do the lift.', 'common practice', 'M', 'rule of thumb of the trade, from memory'),
    'cp-implement': ('common practice, no source', 'Common practice, no source: dumbbells serve the high-repetition hinge.', 'common practice', 'M', 'rule of thumb of the trade, from memory'),
    'cp-squat': ('common practice, no source', 'Common practice, no source: squats are not counted as hamstring work, since the two ends of the muscle move against each other.', 'common practice', 'M', 'rule of thumb of the trade, from memory'),
    'cp-deadlift': ('common practice, no source', 'Common practice, no source: conventional, wide-stance and stiff-leg deadlifts are all counted as hamstring work, as are back extensions and reverse hyperextensions.', 'common practice', 'M', 'rule of thumb of the trade, from memory'),
    'cp-curl': ('common practice, no source', 'Common practice, no source: every loaded knee-flexion exercise is counted as hamstring work; sliding curls and glute-ham raises serve both jobs.', 'common practice', 'M', 'rule of thumb of the trade, from memory'),
    'cp-toes': ('common practice, no source', 'Common practice, no source: foot rotation in curls is said to shift work between inner and outer hamstrings; the published data conflict.', 'common practice', 'M', 'rule of thumb of the trade, from memory'),
    'row-press-balance': ('convention, no trial found', 'Convention: pulling is kept near pressing, and other opposing actions near each other. No trial was found that fixes a ratio of sets.', 'convention', 'M', 'looked for and not found'),
    'acsm-2026-vol': ('ACSM 2026, Med Sci Sports Exerc 58(4):851-872', 'American College of Sports Medicine position stand (Currier BS and others, Phillips SM). Resistance Training Prescription for Muscle Function, Hypertrophy, and Physical Performance in Healthy Adults: An Overview of Reviews. Med Sci Sports Exerc 2026;58(4):851-872, doi 10.1249/MSS.0000000000003897', 'guideline', 'V2', 'read second-hand: about 10 sets a muscle group a week for size, 2-3 sets an exercise for strength'),
    'acsm-2026-freq': ('ACSM 2026, Med Sci Sports Exerc 58(4):851-872', 'American College of Sports Medicine position stand (Currier BS and others, Phillips SM). Resistance Training Prescription for Muscle Function, Hypertrophy, and Physical Performance in Healthy Adults: An Overview of Reviews. Med Sci Sports Exerc 2026;58(4):851-872, doi 10.1249/MSS.0000000000003897', 'guideline', 'V2', 'read second-hand: all major groups on 2 or more days a week; frequency matters little for size at equal volume'),
    'acsm-2026-load': ('ACSM 2026, Med Sci Sports Exerc 58(4):851-872', 'American College of Sports Medicine position stand (Currier BS and others, Phillips SM). Resistance Training Prescription for Muscle Function, Hypertrophy, and Physical Performance in Healthy Adults: An Overview of Reviews. Med Sci Sports Exerc 2026;58(4):851-872, doi 10.1249/MSS.0000000000003897', 'guideline', 'V2', 'read second-hand: strength at 80 % and more; power 30-70 %; load not decisive for size'),
    'acsm-2026-order': ('ACSM 2026, Med Sci Sports Exerc 58(4):851-872', 'American College of Sports Medicine position stand (Currier BS and others, Phillips SM). Resistance Training Prescription for Muscle Function, Hypertrophy, and Physical Performance in Healthy Adults: An Overview of Reviews. Med Sci Sports Exerc 2026;58(4):851-872, doi 10.1249/MSS.0000000000003897', 'guideline', 'V2', 'read second-hand: priority exercises early'),
    'pelland-2026-frac': ('Pelland and others 2026, Sports Med 56(2):481-505', 'Pelland JC, Remmert JF, Robinson ZP, Hinson SR, Zourdos MC. The Resistance Training Dose Response: Meta-Regressions. Sports Med 2026;56(2):481-505, doi 10.1007/s40279-025-02344-w', 'trial', 'V', 'abstract: an indirect set counts 0.5; Bayes factors second-hand'),
    'pelland-2026-hyp': ('Pelland and others 2026, Sports Med 56(2):481-505', 'Pelland JC, Remmert JF, Robinson ZP, Hinson SR, Zourdos MC. The Resistance Training Dose Response: Meta-Regressions. Sports Med 2026;56(2):481-505, doi 10.1007/s40279-025-02344-w', 'trial', 'V2', 'slope from the abstract; its size second-hand: +0.24 % a set, few data above 25 sets'),
    'pelland-2026-min': ('Pelland and others 2026, Sports Med 56(2):481-505', 'Pelland JC, Remmert JF, Robinson ZP, Hinson SR, Zourdos MC. The Resistance Training Dose Response: Meta-Regressions. Sports Med 2026;56(2):481-505, doi 10.1007/s40279-025-02344-w', 'trial', 'V2', 'table 2 second-hand: about 4 fractional sets a week for a measurable gain in size, 1 for strength'),
    'pelland-2026-freq': ('Pelland and others 2026, Sports Med 56(2):481-505', 'Pelland JC, Remmert JF, Robinson ZP, Hinson SR, Zourdos MC. The Resistance Training Dose Response: Meta-Regressions. Sports Med 2026;56(2):481-505, doi 10.1007/s40279-025-02344-w', 'trial', 'V2', 'direction from the abstract, numbers second-hand'),
    'bazvalle-2022': ('Baz-Valle and others 2022, J Hum Kinet 81:199-210', 'Baz-Valle E, Balsalobre-Fernandez C, Alix-Fages C, Santos-Concejero J. J Hum Kinet 2022;81:199-210, PMC8884877', 'trial', 'V', 'read; pages from memory: 12-20 sets a muscle a week'),
    'currier-2023': ('Currier and others 2023, Br J Sports Med 57:1211-1220', 'Currier BS and others. Br J Sports Med 2023;57:1211-1220', 'trial', 'V2', 'second-hand; volume and pages from memory'),
    'mcleod-2023': ('McLeod and others 2024, J Sport Health Sci 13(1):47-60', 'Mcleod JC, Currier BS, Lowisz CV, Phillips SM. J Sport Health Sci 2024;13(1):47-60, PMC10818109', 'trial', 'V', 'read: volume drives size; load, volume, frequency and order drive strength; rest and periodisation no consistent effect'),
    'androulakis-2020': ('Androulakis-Korakakis and others 2020, Sports Med 50:751-765', 'Androulakis-Korakakis P, Fisher JP, Steele J. Sports Med 2020;50:751-765, doi 10.1007/s40279-019-01236-0', 'trial', 'V', 'read: one set, 1-3 times a week, is enough for gains in 1RM; kg second-hand'),
    'peterson-2005': ('Peterson and others 2005, J Strength Cond Res 19(4):950-958', 'Peterson MD, Rhea MR, Alvar BA. J Strength Cond Res 2005;19(4):950-958', 'trial', 'M', 'counts read, doses from memory'),
    'krieger-2010': ('Krieger 2010, J Strength Cond Res 24:1150-1159', 'Krieger JW. J Strength Cond Res 2009;23:1890-1901 and 2010;24:1150-1159', 'trial', 'V2', 'second-hand, in the introduction of hackett-2018'),
    'hackett-2018': ('Hackett and others 2018, Sports 6(1):7', 'Hackett DA, Amirthalingam T, Mitchell L, Mavros Y, Wilson GC, Halaki M. Sports 2018;6(1):7', 'trial', 'V', 'read: 12 men, 5 against 10 sets of 10'),
    'amirthalingam-2017': ('Amirthalingam and others 2017, J Strength Cond Res 31(11):3109-3119', 'Amirthalingam T and others. J Strength Cond Res 2017;31(11):3109-3119', 'trial', 'M', 'title read, results from memory'),
    'enes-2024': ('Enes and others 2024, Med Sci Sports Exerc 56(3):553-563', 'Enes A, De Souza EO, Souza-Junior TP. Med Sci Sports Exerc 2024;56(3):553-563', 'trial', 'V', 'read: +4 or +6 sets every two weeks; the 22 sets second-hand'),
    'aube-2022': ('Aube and others 2022, J Strength Cond Res 36(3):600-607', 'Aube D and others. J Strength Cond Res 2022;36(3):600-607', 'trial', 'M', 'title read, numbers from memory'),
    'brigatto-2022': ('Brigatto and others 2022, J Strength Cond Res 36(1):22-30', 'Brigatto FA and others. J Strength Cond Res 2022;36(1):22-30', 'trial', 'M', 'title read, numbers from memory'),
    'heaselgrave-2019': ('Heaselgrave and others 2019, Int J Sports Physiol Perform 14:360-368', 'Heaselgrave SR and others. Int J Sports Physiol Perform 2019;14:360-368', 'trial', 'M', 'from memory'),
    'steele-2026pp': ('Steele and others 2026, SportRxiv preprint 810', 'Steele J, Gschneidner, Carlson, Fisher. SportRxiv 2026, preprint 810', 'trial', 'V2', 'second-hand; a preprint'),
    'who-2020': ('WHO 2020, Br J Sports Med 54:1451-1462', 'World Health Organization Guidelines on Physical Activity and Sedentary Behaviour 2020 (Bull FC and others. Br J Sports Med 2020;54:1451-1462)', 'guideline', 'V2', 'second-hand: strengthening on 2 or more days a week; 65 and over varied work on 3 or more'),
    'us-pag-2018': ('US Physical Activity Guidelines 2018', 'Physical Activity Guidelines for Americans, 2nd edition. US Department of Health and Human Services, 2018', 'guideline', 'V2', 'second-hand: 2 or more days a week; seven regions; one set of 8-12 is effective'),
    'us-pag-rest': ('US Physical Activity Guidelines 2018', 'Physical Activity Guidelines for Americans, 2nd edition. US Department of Health and Human Services, 2018', 'guideline', 'V2', 'second-hand: rest 30-90 s for endurance, 2-5 min for strength'),
    'uk-cmo-2019': ('UK Chief Medical Officers 2019', "UK Chief Medical Officers' Physical Activity Guidelines, 7 September 2019", 'guideline', 'V2', 'second-hand: strengthening on 2 or more days a week'),
    'acsm-2009': ('ACSM 2009, Med Sci Sports Exerc 41(3):687-708', 'American College of Sports Medicine position stand (Ratamess NA and others). Med Sci Sports Exerc 2009;41(3):687-708, doi 10.1249/MSS.0b013e3181915670', 'guideline', 'V', 'summary read: load zones, levels, +2-10 % load when 1-2 more repetitions are possible; items outside the summary from memory'),
    'acsm-2009-freq': ('ACSM 2009, Med Sci Sports Exerc 41(3):687-708', 'American College of Sports Medicine position stand (Ratamess NA and others). Med Sci Sports Exerc 2009;41(3):687-708, doi 10.1249/MSS.0b013e3181915670', 'guideline', 'V', 'summary read: novice 2-3, intermediate 3-4, advanced 4-5 days a week'),
    'acsm-2009-order': ('ACSM 2009, Med Sci Sports Exerc 41(3):687-708', 'American College of Sports Medicine position stand (Ratamess NA and others). Med Sci Sports Exerc 2009;41(3):687-708, doi 10.1249/MSS.0b013e3181915670', 'guideline', 'V', 'summary read: large before small, multi-joint before single-joint, heavy before light'),
    'rep-time': ('ACSM 2009, Med Sci Sports Exerc 41(3):687-708', 'American College of Sports Medicine position stand (Ratamess NA and others). Med Sci Sports Exerc 2009;41(3):687-708, doi 10.1249/MSS.0b013e3181915670', 'guideline', 'V', 'summary read: 1-2 s up, 1-2 s down'),
    'fm21-20-48': ('US Army FM 21-20', 'US Army Field Manual 21-20, Physical Fitness Training, 1992 with changes of 1998', 'guideline', 'V2', 'manual text second-hand: at least 48 h and not more than 96 h between work of the same muscle group'),
    'fm21-20-prep': ('US Army FM 21-20', 'US Army Field Manual 21-20, Physical Fitness Training, 1992 with changes of 1998', 'guideline', 'V2', 'manual text second-hand: very light loads in the first two or three workouts'),
    'fm21-20-order': ('US Army FM 21-20', 'US Army Field Manual 21-20, Physical Fitness Training, 1992 with changes of 1998', 'guideline', 'V2', 'manual text second-hand: hips and legs first, trunk last'),
    'acsm-old-48': ('ACSM guideline leaflet', 'American College of Sports Medicine, guideline leaflet on resistance training', 'guideline', 'V2', 'second-hand: non-consecutive days, 48 h for the same groups'),
    'moran-2017': ('Moran-Navarro and others 2017, Eur J Appl Physiol 117:2387-2399', 'Moran-Navarro R and others. Eur J Appl Physiol 2017;117:2387-2399, doi 10.1007/s00421-017-3725-7', 'trial', 'V', 'read: work to failure slows recovery by 24-48 h; 10 trained men'),
    'gonzalez-badillo-2016': ('Gonzalez-Badillo and others 2016, Int J Sports Med 37:295-304', 'Gonzalez-Badillo JJ and others. Int J Sports Med 2016;37:295-304', 'trial', 'V', 'read: recovery depends on repetitions left in reserve; 9 men'),
    'house-4day': ('House and others, four consecutive days', "House BT, L'Ecuyer R, Nelson MT, Wood TR. Repeat acute recoverability", 'trial', 'V', 'full text copy read; journal not verified'),
    'ralston-2018': ('Ralston and others 2018, Sports Med Open 4:36', 'Ralston GW, Kilgore L, Wyatt FB, Buchan D, Baker JS. Sports Med Open 2018;4:36, doi 10.1186/s40798-018-0149-9, PMC6081873', 'trial', 'V', 'read: no difference between frequencies at equal volume'),
    'cuthbert-2021': ('Cuthbert and others 2021, Sports Med 51:1967-1982', 'Cuthbert M and others. Sports Med 2021;51:1967-1982, doi 10.1007/s40279-021-01460-7', 'trial', 'V', 'read; pages from memory'),
    'simao-2010-72': ('Simao and others 2010, J Sports Sci Med 9:1-7', 'Simao R and others. J Sports Sci Med 2010;9:1-7', 'trial', 'V', 'read: 72 h or more between two weekly sessions'),
    'epley-1985': ('Epley 1985', 'Epley B. Poundage chart. 1985', 'model', 'V2', 'equation read in a secondary copy'),
    'brzycki-1993': ('Brzycki 1993, JOPERD 64(1):88-90', 'Brzycki M. JOPERD 1993;64(1):88-90', 'model', 'V2', 'equation read in a secondary copy'),
    'lombardi-1989': ('Lombardi 1989', 'Lombardi VP. Beginning Weight Training. 1989', 'model', 'V2', 'equation read in a secondary copy'),
    'mayhew-1992': ('Mayhew and others 1992, J Appl Sport Sci Res 6:200-206', 'Mayhew JL and others. J Appl Sport Sci Res 1992;6:200-206', 'model', 'V2', 'equation read in a secondary copy'),
    'oconnor-1989': ("O'Connor and others 1989", "O'Connor B, Simmons J, O'Shea P. Weight Training Today. 1989", 'model', 'V2', 'equation read in a secondary copy'),
    'wathan-1994': ('Wathan 1994', 'Wathan D. In: Essentials of Strength Training and Conditioning. 1994', 'model', 'V2', 'equation read in a secondary copy'),
    'lander-1985': ('Lander 1985, NSCA Journal 6:60-61', 'Lander J. NSCA Journal 1985;6:60-61', 'model', 'V2', 'equation read in a secondary copy'),
    'reynolds-2006': ('Reynolds and others 2006, J Strength Cond Res 20(3):584-592', 'Reynolds JM, Gordon TJ, Robergs RA. J Strength Cond Res 2006;20(3):584-592', 'trial', 'V', 'read: equations from the 5RM, valid to 10 repetitions'),
    'currier-rule': ('Currier and others 2023, Br J Sports Med 57:1211-1220', 'Currier BS and others. Br J Sports Med 2023;57:1211-1220', 'model', 'V2', 'second-hand: %1RM = 100 - 2.5 r as a coding rule'),
    'lesuer-1997': ('LeSuer and others 1997, J Strength Cond Res 11(4):211-213', 'LeSuer DA, McCormick JH, Mayhew JL, Wasserstein RL, Arnold MD. J Strength Cond Res 1997;11(4):211-213', 'trial', 'V2', 'bench means second-hand; deadlift from memory'),
    'nsca-table': ('Essentials of Strength Training and Conditioning, 4th ed., ch. 17', 'Haff GG, Triplett NT, editors. Essentials of Strength Training and Conditioning, 4th edition, chapter 17', 'guideline', 'V2', 'second-hand; 67 % = 12 from memory'),
    'acsm-continuum': ('ACSM leaflet, repetition continuum', 'American College of Sports Medicine, leaflet on resistance training: repetition maximum continuum', 'guideline', 'V2', 'second-hand'),
    'nuzzo-2024': ('Nuzzo and others 2024, Sports Med 54:303-321', 'Nuzzo JL, Pinto MD, Nosaka K, Steele J. Sports Med 2024;54:303-321, doi 10.1007/s40279-023-01937-7', 'trial', 'V2', 'abstract read; the tables second-hand: 952 tests, 7 289 people'),
    'rep-time-lit': ('Nuzzo and others 2024, Sports Med 54:303-321', 'Nuzzo JL, Pinto MD, Nosaka K, Steele J. Sports Med 2024;54:303-321, doi 10.1007/s40279-023-01937-7', 'trial', 'V2', 'second-hand: repetitions of 1.4 to 6.0 s in tests'),
    'zourdos-2021': ('Zourdos and others 2021, J Strength Cond Res 35(2S):S158-S165', 'Zourdos MC and others. J Strength Cond Res 2021;35(2S):S158-S165', 'trial', 'V', 'read: trained squatters do 6-26 repetitions at 70 %'),
    'zourdos-2016': ('Zourdos and others 2016, J Strength Cond Res 30(1):267-275', 'Zourdos MC and others. J Strength Cond Res 2016;30(1):267-275', 'trial', 'V', 'read: RPE 10 is 0 in reserve, 9 is 1; half points from memory'),
    'helms-2016': ('Helms and others 2016, Strength Cond J 38(4):42-49', 'Helms ER, Cronin J, Storey A, Zourdos MC. Strength Cond J 2016;38(4):42-49, PMC4961270', 'trial', 'V', 'title and abstract read'),
    'hackett-2017': ('Hackett and others 2017, J Strength Cond Res 31(8):2162-2168', 'Hackett DA and others. J Strength Cond Res 2017;31(8):2162-2168', 'trial', 'V', 'read: guesses are about 1 repetition out near failure, more than 2 far from it'),
    'helms-2023-adj': ('Helms and others 2023, Sports Med Open 9:102', 'Helms ER and others. Sports Med Open 2023;9:102, doi 10.1186/s40798-023-00651-y', 'trial', 'V', 'table 4 read; article number from memory'),
    'helms-taper': ('Helms and others 2023, Sports Med Open 9:102', 'Helms ER and others. Sports Med Open 2023;9:102, doi 10.1186/s40798-023-00651-y', 'trial', 'V', 'read: sets from 9 to 4 a lift in the last week, load kept'),
    'acsm-2002': ('ACSM 2002, Med Sci Sports Exerc 34(2):364-380', 'American College of Sports Medicine position stand. Med Sci Sports Exerc 2002;34(2):364-380', 'guideline', 'V', 'read: rest of 3 min or more in heavy lifts'),
    'nsca-zones': ('Essentials of Strength Training and Conditioning, 4th ed.', 'Haff GG, Triplett NT, editors. Essentials of Strength Training and Conditioning, 4th edition', 'guideline', 'V2', 'second-hand: loads, repetitions and rest by goal'),
    'nsca-2for2': ('Essentials of Strength Training and Conditioning', 'Baechle TR, Earle RW, editors. Essentials of Strength Training and Conditioning', 'guideline', 'V2', 'second-hand: two repetitions over in the last set of two sessions, then more load'),
    'nsca-increments': ('Essentials of Strength Training and Conditioning', 'Baechle TR, Earle RW, editors. Essentials of Strength Training and Conditioning', 'guideline', 'V2', 'first row second-hand; second row from memory'),
    'willardson-2008': ('Willardson and Burkett 2008, J Strength Cond Res 22:146-152', 'Willardson JM, Burkett LN. J Strength Cond Res 2008;22:146-152', 'trial', 'M', 'design read, result from memory'),
    'silva-2018': ('Silva and others 2018, Sports 6(4):134', 'Silva and others. Sports 2018;6(4):134', 'trial', 'V', 'read: most lifters who time their rest take 60 s or less'),
    'maeo-step': ('Maeo and others 2023, Eur J Sport Sci 23(7):1240-1250', 'Maeo S and others. Eur J Sport Sci 2023;23(7):1240-1250', 'trial', 'V', 'read: +5 % of 1RM a session when no repetition was missed'),
    'alfredson-step': ('Nutrients 2019;11:76, table A2', 'Nutrients 2019;11:76, table A2, PMC6356409: a published heel-drop and running programme', 'trial', 'V', 'read: +5 kg a week up to 60 kg; distance up to 20 % a week more'),
    'scarpelli-2022': ('Scarpelli and others 2022, J Strength Cond Res 36:1153-1158', 'Scarpelli MC and others. J Strength Cond Res 2022;36:1153-1158', 'trial', 'M', 'from memory'),
    'youth-step': ('Faigenbaum and others 2009, J Strength Cond Res 23(5S):S60-S79', 'National Strength and Conditioning Association position statement (Faigenbaum AD and others). J Strength Cond Res 2009;23(5S):S60-S79', 'guideline', 'M', 'from memory: +5-10 % load'),
    'bell-2023': ('Bell and others 2023, Sports Med Open 9:87', 'Bell L, Strafford BW, Coleman M, Androulakis Korakakis P, Nolan D. Sports Med Open 2023;9:87, doi 10.1186/s40798-023-00633-0', 'trial', 'V', 'read: a deload defined by agreement of coaches'),
    'bell-2022': ('Bell and others 2022, Front Sports Act Living 4:1073223', 'Bell L and others. Front Sports Act Living 2022;4:1073223', 'trial', 'V', 'read: coaches mainly cut volume; 18 coaches'),
    'rogerson-2024': ('Rogerson and others 2024, Sports Med Open 10:26', 'Rogerson D and others. Sports Med Open 2024;10:26', 'trial', 'M', 'from memory: a deload about every 5.6 weeks, for about 6.4 days'),
    'taper-strength': ('Bell and others 2023, Sports Med Open 9:87', 'As cited in Bell L and others. Sports Med Open 2023;9:87', 'trial', 'V', 'read there: 87-99 % of strength athletes taper, for about 7 days'),
    'taper-endurance': ('Bosquet and others 2007, Med Sci Sports Exerc 39:1358-1365', 'Bosquet L and others. Med Sci Sports Exerc 2007;39:1358-1365', 'trial', 'M', 'from memory'),
    'anatomy-crossing': ('OpenStax Anatomy and Physiology 2e, ch. 11; checked against two leg models', 'OpenStax. Anatomy and Physiology, 2nd edition, chapter 11 (CC BY); Gray H. Anatomy of the Human Body, 1918 (public domain)', 'anatomy', 'C', 'textbook consensus, pages from memory; joints crossed and levers computed from two published leg models'),
    'maeo-2021': ('Maeo and others 2021, Med Sci Sports Exerc 53(4):825-837', 'Maeo S and others. Med Sci Sports Exerc 2021;53(4):825-837, PMC7969179', 'trial', 'V', 'read: seated against lying leg curl'),
    'maeo-2024': ('Maeo and others 2024, Med Sci Sports Exerc 56(10):1893-1905', 'Maeo S and others. Med Sci Sports Exerc 2024;56(10):1893-1905', 'trial', 'V', 'read: lengthened seated work against the Nordic curl'),
    'bourne-2017': ('Bourne and others 2017, Br J Sports Med 51(5):469-477', 'Bourne MN and others. Br J Sports Med 2017;51(5):469-477', 'trial', 'V', 'read: hip extension against the Nordic curl, 30 men'),
    'kubo-2019': ('Kubo and others 2019, Eur J Appl Physiol 119(9):1933-1942', 'Kubo K, Ikebukuro T, Yata H. Eur J Appl Physiol 2019;119(9):1933-1942', 'trial', 'V', 'read: squats grew vasti, gluteus maximus and adductors; hamstrings and rectus femoris not'),
    'slow-squat': ('slow squat trial, PMC7396687', 'Eight weeks of slow squats at 40 % 1RM, PMC7396687', 'trial', 'V', 'read: gains in knee extension, hardly in flexion'),
    'kellis-2022': ('Kellis and Blazevich 2022, BMC Sports Sci Med Rehabil 14:166', 'Kellis E, Blazevich AJ. BMC Sports Sci Med Rehabil 2022;14:166, doi 10.1186/s13102-022-00555-6', 'trial', 'V', 'read: the lever of the hamstrings is larger at the hip than at the knee'),
    'kellis-2012': ('Kellis and others 2012, J Electromyogr Kinesiol 22:520-526', 'Kellis E and others. J Electromyogr Kinesiol 2012;22:520-526', 'anatomy', 'V', 'read: fascicle to muscle length of the four hamstrings'),
    'mendez-2016': ('Mendez-Villanueva and others 2016, PLoS ONE 11:e0161356', 'Mendez-Villanueva A and others. PLoS ONE 2016;11:e0161356', 'trial', 'M', 'from memory'),
    'mohamed-2003': ('Mohamed and others 2003, Knee 10:277-281', 'Mohamed O, Perry J, Hislop H. Knee 2003;10:277-281', 'trial', 'V', 'read: foot rotation, differences of 2-13 %'),
    'fiebert-1992': ('Fiebert and others 1992, Isokinet Exerc Sci 2(2):47-55', 'Fiebert I and others. Isokinet Exerc Sci 1992;2(2):47-55', 'trial', 'V', 'read; conflicts with mohamed-2003'),
    'lim-2018': ('Lim 2018, Phys Ther Korea 25(4):46-52', 'Lim W. Phys Ther Korea 2018;25(4):46-52', 'trial', 'V', 'read; conflicts with mohamed-2003'),
    'kellis-2017': ('Kellis and others 2017, Muscles Ligaments Tendons J 7(2):286-292', 'Kellis E and others. Muscles Ligaments Tendons J 2017;7(2):286-292, PMC5725178', 'trial', 'V', 'read: no difference of the heads over hip angles'),
    'vandyk-2019': ('van Dyk and others 2019, Br J Sports Med 53(21):1362-1370', 'van Dyk N and others. Br J Sports Med 2019;53(21):1362-1370', 'trial', 'V', 'read: programmes with Nordic curls, hamstring injuries halved; see impellizzeri-2021'),
    'impellizzeri-2021': ('Impellizzeri and others 2021, J Clin Epidemiol 140:111-124', 'Impellizzeri FM and others. J Clin Epidemiol 2021;140:111-124, doi 10.1016/j.jclinepi.2021.09.007', 'trial', 'V', 'title read: re-analysis inconclusive'),
    'petersen-2011': ('Petersen and others 2011, Am J Sports Med 39(11):2296-2303', 'Petersen J and others. Am J Sports Med 2011;39(11):2296-2303', 'trial', 'V', 'read: 942 men'),
    'ripley-2021': ('Ripley and others 2021, Int J Environ Res Public Health 18:11260', 'Ripley NJ and others. Int J Environ Res Public Health 2021;18:11260, PMC8583500', 'trial', 'V', 'read: benefit with compliance above half and less than 3 weeks between sessions'),
    'baroni-2020': ('Baroni and others 2020, J Strength Cond Res 34(1):281-293', 'Baroni BM, Ruas CV, Ribeiro-Alvares JB, Pinto RS. J Strength Cond Res 2020;34(1):281-293', 'trial', 'V', 'read: norms of measured strength'),
    'coombs-2002': ('Coombs and Garbutt 2002, J Sports Sci Med 1:56-62', 'Coombs R, Garbutt G. J Sports Sci Med 2002;1:56-62', 'trial', 'V', 'read: conventional norm 0.6'),
    'croisier-2008': ('Croisier and others 2008, Am J Sports Med 36:1469-1475', 'Croisier JL and others. Am J Sports Med 2008;36:1469-1475', 'trial', 'M', 'from memory'),
    'kellis-2023': ('Kellis and others 2023, J Sport Health Sci 12(3):343-358', 'Kellis E and others. J Sport Health Sci 2023;12(3):343-358, PMC10199143', 'trial', 'V', 'read: the ratio of hamstring to quadriceps strength does not predict injury by itself'),
    'fibre': ('Edgerton and others 1975, Histochem J 7:259-266', 'Edgerton VR, Smith JL, Simpson DR. Histochem J 1975;7:259-266', 'anatomy', 'V', 'read: fibre mix of leg muscles'),
    'fibre-36': ('Johnson and others 1973, J Neurol Sci 18:111-129', 'Johnson MA and others. J Neurol Sci 1973;18:111-129', 'anatomy', 'M', 'paper read, numbers from memory'),
    'fibre-ham': ('Garrett and others 1984, Am J Sports Med 12:98-103', 'Garrett WE, Califf JC, Bassett FH. Am J Sports Med 1984;12:98-103', 'anatomy', 'M', 'from memory'),
    'fibre-shoulder': ('Srinivasan and others 2007, Clin Anat 20:144-149', 'Srinivasan RC and others. Clin Anat 2007;20:144-149', 'anatomy', 'V', 'read'),
    'le-vs-squat-2025': ('back squat against leg extension trial, 2025', 'Comparison of Muscle Hypertrophy and Strength Adaptations Induced by Back Squat and Leg Extension, 2025; authors not verified', 'trial', 'V2', 'second-hand: rectus femoris grew with leg extensions, little with squats'),
    'zabaleta-2021': ('Zabaleta-Korta and others 2021, J Sports Sci', 'Zabaleta-Korta A and others. J Sports Sci 2021, doi 10.1080/02640414.2021.1929736', 'trial', 'V2', 'second-hand: as le-vs-squat-2025'),
    'kojic-2022': ('Kojic and others 2022, Int J Environ Res Public Health 19(23):16226', 'Kojic F and others. Int J Environ Res Public Health 2022;19(23):16226', 'trial', 'V', 'record read; contrary: squats grew all four heads'),
    'maeo-2023': ('Maeo and others 2023, Eur J Sport Sci 23(7):1240-1250', 'Maeo S and others. Eur J Sport Sci 2023;23(7):1240-1250', 'trial', 'V', 'read: overhead against neutral elbow extension'),
    'kinoshita-2023': ('Kinoshita and others 2023, Front Physiol 14:1272106', 'Kinoshita M and others. Front Physiol 2023;14:1272106, PMC10753835', 'trial', 'V', 'read: standing against seated calf raise'),
    'campos-2020': ('Campos and others 2020, J Hum Kinet 75:5-14', 'Campos YAC and others. J Hum Kinet 2020;75:5-14, PMC7706677', 'trial', 'V', 'read: activity of the deltoid heads in four lifts'),
    'botton-2013': ('Botton and others 2013, Med Sport 17(2):67-71', 'Botton CE and others. Med Sport 2013;17(2):67-71', 'trial', 'V', 'read: activity of the deltoid heads; 8 men'),
    'coratella-2020': ('Coratella and others 2020, Int J Environ Res Public Health 17:6015', 'Coratella G and others. Int J Environ Res Public Health 2020;17:6015', 'trial', 'V', 'abstract read; number from memory'),
    'ridao-2020': ('Rodriguez-Ridao and others 2020, Int J Environ Res Public Health 17(19):7339', 'Rodriguez-Ridao D and others. Int J Environ Res Public Health 2020;17(19):7339', 'trial', 'V', 'read: bench angle, 30 adults'),
    'trebs-2010': ('Trebs and others 2010, J Strength Cond Res 24:1925-1930', 'Trebs AA and others. J Strength Cond Res 2010;24:1925-1930', 'trial', 'V', "author's page read: bench angle, 15 men"),
    'chaves-2020': ('Chaves and others 2020, Int J Exerc Sci 13:859-872', 'Chaves SFN and others. Int J Exerc Sci 2020;13:859-872', 'trial', 'M', 'from memory'),
    'haroy-2019': ('Haroy and others 2019, Br J Sports Med 53(3):150-157', 'Haroy J and others. Br J Sports Med 2019;53(3):150-157', 'trial', 'V', 'read: one adductor exercise, groin problems 41 % fewer'),
    'copenhagen': ('Haroy and others 2019, Br J Sports Med 53(3):150-157', 'Haroy J and others. Br J Sports Med 2019;53(3):150-157', 'trial', 'V', 'read: one adductor exercise, groin problems 41 % fewer'),
    'tyler-2001': ('Tyler and others 2001, Am J Sports Med 29:124-128', 'Tyler TF and others. Am J Sports Med 2001;29:124-128', 'trial', 'M', 'from memory'),
    'ellenbecker-2000': ('Ellenbecker and Davies 2000, J Athl Train 35:338-350', 'Ellenbecker TS, Davies GJ. J Athl Train 2000;35:338-350', 'trial', 'M', 'from memory'),
    'simao-2010': ('Simao and others 2010, J Sports Sci Med 9:1-7', 'Simao R and others. J Sports Sci Med 2010;9:1-7', 'trial', 'V', 'read: what comes first gains most'),
    'iversen-2024': ('Iversen and others 2024, J Strength Cond Res 38(8):1372-1378', 'Iversen VM, Eide VB, Unhjem BJ, Fimland MS. J Strength Cond Res 2024;38(8):1372-1378', 'trial', 'V', 'read: supersets nearly halve the time'),
    'zhang-2025': ('Zhang and others 2025, Sports Med 55', 'Zhang X, Weakley J, Li H, Li Z, Garcia-Ramos A. Sports Med 2025;55', 'trial', 'V2', 'second-hand: opposing pairs keep repetitions, pairs of the same muscle lose them'),
    'loadit': ('LOADIT protocol 2020, Pilot Feasibility Stud 6:99', 'LOADIT protocol. Pilot Feasibility Stud 2020;6:99, doi 10.1186/s40814-020-00639-5, table 1', 'trial', 'V', 'read; article number from memory: session times, one of four inconsistent with its own inputs'),
    'jphysiol-2015': ('J Physiol 2015;593(18):4285-4301', 'J Physiol 2015;593(18):4285-4301, PMC4594298, table 2', 'trial', 'V', 'read: about 45 min for 18 sets'),
    't2d-16wk': ('a 16-week trial with five machines', 'A 16-week trial: 5 machines, 3 x 8-12, 2 min rest, 45 min in all; secondary page', 'trial', 'V2', 'second-hand'),
    'hsr-tempo': ('Beyer and others 2015, Am J Sports Med 43:1704', 'Beyer R and others. Am J Sports Med 2015;43:1704', 'trial', 'V2', 'second-hand: 6 s a repetition in heavy slow work'),
    'beyer-2015': ('Beyer and others 2015, Am J Sports Med 43:1704', 'Beyer R and others. Am J Sports Med 2015;43:1704', 'trial', 'V2', 'second-hand'),
    '60min': ('older ACSM text', 'American College of Sports Medicine, older guideline text', 'guideline', 'V2', 'second-hand: more drop-out from sessions beyond 60 min'),
    'warm-up': ('handbook convention', 'Handbook convention: 5-10 min general, then sets of rising load', 'convention', 'M', 'from memory'),
    'campos-2002': ('Campos and others 2002, Eur J Appl Physiol 88:50-60', 'Campos GER and others. Eur J Appl Physiol 2002;88:50-60', 'trial', 'V', 'read: three arms, sets a week +50 % at week 5'),
    'riebe-2015': ('Riebe and others 2015, Med Sci Sports Exerc 47(11):2473-2479', 'Riebe D and others. Med Sci Sports Exerc 2015;47(11):2473-2479', 'guideline', 'V', 'read; pages from memory: what screening before exercise asks'),
    'whitfield-2017': ('Whitfield and others 2017, Med Sci Sports Exerc', 'Whitfield GP and others. Med Sci Sports Exerc 2017, doi 10.1249/MSS.0000000000001331', 'trial', 'V', 'read: how many would be referred'),
    'growing-stronger': ('Growing Stronger, 2002', 'Growing Stronger: Strength Training for Older Adults. US Centers for Disease Control and Prevention and Tufts University, 2002', 'guideline', 'V2', 'second-hand'),
    'otago-stop': ('Otago exercise leaflet, NHS', 'Otago exercise programme leaflet, National Health Service', 'guideline', 'V', 'read: when to stop and contact a doctor'),
    'stop-list': ('general medical guidance', 'General medical guidance on signs that need medical care', 'guideline', 'M', 'from memory'),
    'faigenbaum-2009': ('Faigenbaum and others 2009, J Strength Cond Res 23(5S):S60-S79', 'National Strength and Conditioning Association position statement (Faigenbaum AD and others). J Strength Cond Res 2009;23(5S):S60-S79', 'guideline', 'V', 'statement read: qualified supervision; doses from memory'),
    'aap-2020': ('American Academy of Pediatrics 2020, Pediatrics 145:e20201011', 'American Academy of Pediatrics (Stricker PR and others). Pediatrics 2020;145:e20201011', 'guideline', 'M', 'from memory'),
    'fragala-2019': ('Fragala and others 2019, J Strength Cond Res 33(8):2019-2052', 'National Strength and Conditioning Association position statement (Fragala MS and others). J Strength Cond Res 2019;33(8):2019-2052', 'guideline', 'V2', 'statement text second-hand: older adults, 2-3 sets, 70-85 %, 2-3 days a week'),
    'borde-2015': ('Borde and others 2015, Sports Med 45:1693-1720', 'Borde R and others. Sports Med 2015;45:1693-1720, PMC4656698', 'trial', 'M', 'paper read, doses from memory'),
    'liftmor-2018': ('Watson and others 2018, J Bone Miner Res 33(2):211-220', 'Watson SL and others. J Bone Miner Res 2018;33(2):211-220', 'trial', 'V', 'read: heavy lifting with low bone mass, supervised'),
    'mottola-2019': ('Mottola and others 2018, Br J Sports Med 52:1339-1346', 'Mottola MF and others. Br J Sports Med 2018;52:1339-1346', 'guideline', 'V', 'read; summary second-hand: pregnancy'),
    'acog-2020': ('ACOG 2020, Obstet Gynecol 135:e178-e188', 'American College of Obstetricians and Gynecologists. Obstet Gynecol 2020;135:e178-e188', 'guideline', 'M', 'from memory'),
    'keogh-2006': ('Keogh and others 2006, J Strength Cond Res 20(3):672-681', 'Keogh J and others. J Strength Cond Res 2006;20(3):672-681', 'trial', 'V', 'read: injuries in powerlifters'),
    'keogh-2017': ('Keogh and Winwood 2017, Sports Med 47:479-501', 'Keogh JWL, Winwood PW. Sports Med 2017;47:479-501', 'trial', 'M', 'paper read, numbers from memory'),
    'siewe-2011': ('Siewe and others 2011, Int J Sports Med 32:703-711', 'Siewe J and others. Int J Sports Med 2011;32:703-711', 'trial', 'V', 'read: 43.3 % of 245 powerlifters train with complaints'),
    'schellenberg-2013': ('Schellenberg and others 2013, BMC Sports Sci Med Rehabil 5:27', 'Schellenberg F and others. BMC Sports Sci Med Rehabil 2013;5:27, PMC3878967', 'trial', 'V', 'read; citation from memory: hinges load the low back alike'),
    'haroy-pain': ('groin programme, PMC9872240, table T1', 'Groin programme, PMC9872240, table T1', 'trial', 'V', 'read: an easier form when pain exceeds 3 of 10'),
    'back-to-back-axial': ('convention, no trial found', 'Convention: spinal loading is not put on consecutive days. No trial was found on it; the ground is the 48 h between like work and the share of the low back in injuries (keogh-2006).', 'convention', 'M', 'looked for and not found'),
    'hawkins-1990': ('Hawkins and Hull 1990, J Biomech 23:487-494', 'Hawkins D, Hull ML. J Biomech 1990;23:487-494', 'model', 'V2', 'calf regressions second-hand; thigh regressions from memory'),
    'grieve-1978': ('Grieve and others 1978', 'Grieve DW and others. Prediction of gastrocnemius length from knee and ankle joint posture, 1978', 'model', 'V2', 'ankle part second-hand, knee part from memory'),
    'visser-1990': ('Visser and others 1990, Eur J Appl Physiol 61:453-460', 'Visser JJ and others. Eur J Appl Physiol 1990;61:453-460', 'trial', 'V', 'read: six cadaver limbs; hip angle changes the length of biceps femoris more than knee angle, the reverse for rectus femoris'),
    'spoor-ranges': ('Spoor and others 1990; Spoor and van Leeuwen 1992, J Biomech 25:201-206', 'Spoor CW and others 1990; Spoor CW, van Leeuwen JL. J Biomech 1992;25:201-206', 'model', 'V2', 'textbook summary second-hand'),
    'menegaldo-2004': ('Menegaldo and others 2004, J Biomech 37:1447-1453', 'Menegaldo LL and others. J Biomech 2004;37:1447-1453', 'model', 'V', 'abstract read'),
    'nemeth-1985': ('Nemeth and Ohlsen 1985, J Biomech 18:129-140', 'Nemeth G, Ohlsen H. J Biomech 1985;18:129-140', 'trial', 'M', 'from memory'),
    'arnold-2010': ('Arnold and others 2010, Ann Biomed Eng 38:269-279', 'Arnold EM and others. Ann Biomed Eng 2010;38:269-279', 'model', 'M', 'from memory'),
    'buford-1997': ('Buford and others 1997, IEEE Trans Rehabil Eng 5:367-379', 'Buford WL and others. IEEE Trans Rehabil Eng 1997;5:367-379', 'model', 'M', 'from memory'),
    'rajagopal-2016': ('Rajagopal and others 2016, IEEE Trans Biomed Eng 63:2068-2079', 'Rajagopal A and others. IEEE Trans Biomed Eng 2016;63:2068-2079; leg model under the MIT licence', 'model', 'C', 'computed from the model: cubics fitted per joint, within 1.5 mm (gracilis 2.4 mm)'),
    'delp-1990': ('Delp and others 1990, IEEE Trans Biomed Eng 37:757-767', 'Delp SL and others. IEEE Trans Biomed Eng 1990;37:757-767; leg model under CC BY 3.0', 'model', 'C', 'computed from the model: signs and orderings'),
    'arm26': ('open arm model arm26, after Holzbaur and others 2005, CC BY 3.0', 'Arm model arm26, after Holzbaur KRS, Murray WM, Delp SL. 2005; used under CC BY 3.0', 'model', 'C', 'computed from the model: cubics fitted per joint, within 1.7 mm'),
    'lumbar-model': ('constrained lumbar spine model', 'Constrained lumbar spine model, as packaged with open musculoskeletal models, MIT licence', 'model', 'C', 'computed from the model: levers of the trunk muscles in neutral'),
}

EXERCISES: tuple[str, ...] = (
    'barbell curl\tcurl|BB curl|standing barbell curl|straight-bar curl|biceps curl|standing curl\tbarbell\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tlow\tnovice\theavy\tbarbell\t1\tdumbbell curl|bent-bar curl\tstrict curl against the wall\t\t',
    'dumbbell curl\tDB curl|standing dumbbell curl|dumbbell biceps curl|supinating curl|DB biceps curl\tdumbbell\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tnone\tnovice\tlight\tdumbbell\t1\tcable curl|machine curl\tincline dumbbell curl\t\t',
    'hammer curl\tdumbbell hammer curl|DB hammer curl|neutral-grip curl|standing hammer curl\tdumbbell\tdynamic\tstanding\tneutral\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\tbrachioradialis~direct~With the thumb up its lever is at its best and the biceps no longer has the palm-up position to itself.\tbiceps long head|biceps short head|brachialis|brachioradialis\t\tbiceps long head~0.57|brachialis~0.57\tnone\tnovice\tlight\tdumbbell\t1\trope hammer curl\tcross-body hammer curl\t\t',
    'cable pushdown\ttriceps pushdown|pushdown|cable triceps pushdown|press-down|triceps press-down|bar pushdown|triceps extension\tcable\tdynamic\tstanding\toverhand\t\t\t\telbow extension\t\tshoulder~10 10|elbow~110 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.43|triceps lateral head~0.47|triceps medial head~0.47\tnone\tnovice\tlight\tcable\t\tband pushdown\toverhead cable triceps extension\t\t',
    'rope pushdown\trope triceps pushdown|rope press-down\tcable\tdynamic\tstanding\tneutral\t\t\t\telbow extension\t\tshoulder~10 10|elbow~110 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.43|triceps lateral head~0.47|triceps medial head~0.47\tnone\tnovice\tlight\tcable\t\tband pushdown\toverhead cable triceps extension\t\t',
    'overhead cable triceps extension\toverhead triceps extension|overhead rope extension|overhead cable extension|cable overhead extension|rope overhead extension|French press with cable\tcable\tdynamic\tstanding\tneutral\t\t\t\telbow extension\t\tshoulder~165 165|elbow~125 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.76|triceps lateral head~0.53|triceps medial head~0.53\tnone\tnovice\tlight\tcable\t\tcable pushdown\toverhead dumbbell triceps extension\t\tmaeo-2023',
    'lying triceps extension\tskull crusher|lying barbell triceps extension|bent-bar skull crusher|nose breaker|lying extension\tbarbell\tdynamic\tlying\toverhand\t\t\t\telbow extension\t\tshoulder~90 90|elbow~120 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.82|triceps lateral head~0.51|triceps medial head~0.51\tnone\tintermediate\tlight\tbarbell|bench\t\tcable pushdown\tclose-grip bench press\t\t',
    'incline dumbbell curl\tincline curl|incline DB curl|incline bench curl|seated incline curl\tdumbbell\tdynamic\tincline\tunderhand\t\t\t\telbow flexion\t\tshoulder~-45 -45|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.71|brachialis~0.57\tnone\tnovice\tlight\tdumbbell|bench\t1\tdumbbell curl\t\t\t',
    'preacher curl\tbent-bar preacher curl|barbell preacher curl|preacher bench curl\tbarbell\tdynamic\tseated\tunderhand\t\t\t\telbow flexion\t\tshoulder~50 50|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.43|brachialis~0.57\tnone\tnovice\tlight\tpreacher bench|barbell\t1\tmachine preacher curl\tbarbell curl\t\t',
    'cable curl\tstanding cable curl|low cable curl|cable biceps curl|bar cable curl\tcable\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tnone\tnovice\tlight\tcable\t1\tband curl\tbarbell curl\t\t',
    'bent-bar curl\tcambered-bar curl|angled-bar curl\tbarbell\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tlow\tnovice\tlight\tbarbell\t1\tdumbbell curl\tbarbell curl\t\t',
    'overhead dumbbell triceps extension\tdumbbell overhead extension|overhead dumbbell extension|two-hand overhead extension|seated overhead triceps extension|DB overhead extension|overhead DB triceps extension|seated dumbbell triceps extension|French press\tdumbbell\tdynamic\tseated\tneutral\t\t\t\telbow extension\t\tshoulder~165 165|elbow~125 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.76|triceps lateral head~0.53|triceps medial head~0.53\tnone\tnovice\tlight\tdumbbell\t\toverhead cable triceps extension\tone-arm overhead triceps extension\t\tmaeo-2023',
    'machine curl\tmachine biceps curl|biceps curl machine|arm curl machine|seated machine curl\tmachine\tdynamic\tseated\tunderhand\t\t\t\telbow flexion\t\tshoulder~45 45|elbow~10 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.43|brachialis~0.55\tnone\tnovice\theavy\tmachine curl\t1\t\tdumbbell curl\t\t',
    'machine preacher curl\tpreacher curl machine|plate-loaded preacher curl\tmachine\tdynamic\tseated\tunderhand\t\t\t\telbow flexion\t\tshoulder~50 50|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.43|brachialis~0.57\tnone\tnovice\tlight\tmachine preacher curl\t1\t\tpreacher curl\t\t',
    'dumbbell preacher curl\tone-arm preacher curl|single-arm preacher curl|DB preacher curl\tdumbbell\tdynamic\tseated\tunderhand\t1\t\t\telbow flexion\t\tshoulder~50 50|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.43|brachialis~0.57\tnone\tnovice\tlight\tpreacher bench|dumbbell\t1\tmachine preacher curl\t\t\t',
    'cable preacher curl\tpreacher cable curl\tcable\tdynamic\tseated\tunderhand\t\t\t\telbow flexion\t\tshoulder~50 50|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.43|brachialis~0.57\tnone\tnovice\tlight\tpreacher bench|cable\t1\tmachine preacher curl\t\t\t',
    'concentration curl\tseated concentration curl|dumbbell concentration curl\tdumbbell\tdynamic\tseated\tunderhand\t1\t\t\telbow flexion\t\tshoulder~40 40|elbow~5 130\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.43|brachialis~0.55\tnone\tnovice\tlight\tdumbbell|bench\t1\tmachine curl\tdumbbell preacher curl\t\t',
    'prone incline curl\tspider curl|chest-supported curl|prone curl\tdumbbell\tdynamic\tsupported\tunderhand\t\t\t\telbow flexion\t\tshoulder~70 70|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.4|brachialis~0.57\tnone\tintermediate\tlight\tdumbbell|bench\t1\tpreacher curl\t\t\t',
    'alternating dumbbell curl\talternating curl|alternate dumbbell curl|alternating DB curl\tdumbbell\tdynamic\tstanding\tunderhand\t1\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tnone\tnovice\tlight\tdumbbell\t1\tcable curl\tincline dumbbell curl\t\t',
    'seated dumbbell curl\tseated curl|seated DB curl|seated alternating dumbbell curl\tdumbbell\tdynamic\tseated\tunderhand\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tnone\tnovice\tlight\tdumbbell|bench\t1\tmachine curl\tincline dumbbell curl\t\t',
    'one-arm cable curl\tsingle-arm cable curl|one-arm low cable curl\tcable\tdynamic\tstanding\tunderhand\t1\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tnone\tnovice\tlight\tcable\t1\tband curl\t\t\t',
    'behind-the-body cable curl\tface-away cable curl|cable curl facing away|behind-back cable curl\tcable\tdynamic\tstanding\tunderhand\t1\t\t\telbow flexion\t\tshoulder~-35 -35|elbow~5 120\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.7|brachialis~0.6\tnone\tintermediate\tlight\tcable\t1\tone-arm cable curl\t\t\t',
    'high cable curl\toverhead cable curl|double-biceps cable curl|lat-machine curl\tcable\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\t\tshoulder~90 90|elbow~10 130\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.36|brachialis~0.53\tnone\tnovice\tlight\tcable\t1\tcable curl\t\t\t',
    'lying cable curl\tsupine cable curl|floor cable curl\tcable\tdynamic\tlying\tunderhand\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tnone\tnovice\tlight\tcable|floor\t1\tcable curl\t\t\t',
    'drag curl\tbarbell drag curl|elbows-back curl\tbarbell\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\t\tshoulder~0 -35|elbow~10 120\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.64|brachialis~0.58\tlow\tintermediate\tlight\tbarbell\t1\tbarbell curl\t\t\t',
    'strict curl against the wall\tstrict curl|wall curl|back-to-wall curl\tbarbell\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tnone\tintermediate\theavy\tbarbell|wall\t1\tbarbell curl\t\t\t',
    'cheat curl\tbody-swing curl|cheating curl\tbarbell\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\ttrunk extension\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\terector spinae|multifidus|brachioradialis\tbiceps long head~0.57|brachialis~0.57\tmoderate\tadvanced\theavy\tbarbell\t1\tbarbell curl\t\t\t',
    'partial-range barbell curl\t21s|twenty-ones|curl 21s|curls in thirds\tbarbell\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tlow\tintermediate\tlight\tbarbell\t1\tbarbell curl\t\t\t',
    'wide-grip barbell curl\twide curl|wide-grip curl\tbarbell\tdynamic\tstanding\twide\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tlow\tnovice\tlight\tbarbell\t1\tbarbell curl\t\t\t',
    'close-grip barbell curl\tnarrow-grip curl|close-grip curl\tbarbell\tdynamic\tstanding\tclose\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tlow\tnovice\tlight\tbarbell\t1\tbent-bar curl\t\t\t',
    'band curl\tbanded curl|resistance band curl|band biceps curl\tband\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tnone\tnovice\tlight\tband\t\t\tdumbbell curl|cable curl\t\t',
    'kettlebell curl\tKB curl|goblet curl|two-hand kettlebell curl\tkettlebell\tdynamic\tstanding\tneutral\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\tbrachioradialis~direct~With the thumb up its lever is at its best and the biceps no longer has the palm-up position to itself.\tbiceps long head|biceps short head|brachialis|brachioradialis\t\tbiceps long head~0.57|brachialis~0.57\tnone\tnovice\tlight\tkettlebell\t1\t\thammer curl\t\t',
    'suspension curl\tring curl|suspended biceps curl|bodyweight curl|suspension biceps curl\tsuspension\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\t\tshoulder~80 80|elbow~5 120\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.41|brachialis~0.6\tnone\tintermediate\tlight\tsuspension\t1\tband curl\tchin-up\t\t',
    'curl hold\tisometric curl|static curl|curl iso hold|90-degree curl hold\tdumbbell\tisometric\tstanding\tunderhand\t\t\t\telbow flexion\t\tshoulder~0|elbow~90\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.43|brachialis~0.39\tnone\tnovice\tlight\tdumbbell\t1\tband curl\t\t\t',
    'eccentric curl\tnegative curl|slow-lowering curl|curl negatives\tdumbbell\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tnone\tintermediate\tlight\tdumbbell\t1\tdumbbell curl\t\t\t',
    'rope hammer curl\tcable hammer curl|cable rope curl\tcable\tdynamic\tstanding\tneutral\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\tbrachioradialis~direct~With the thumb up its lever is at its best and the biceps no longer has the palm-up position to itself.\tbiceps long head|biceps short head|brachialis|brachioradialis\t\tbiceps long head~0.57|brachialis~0.57\tnone\tnovice\tlight\tcable\t1\tband curl\thammer curl\t\t',
    'cross-body hammer curl\tpinwheel curl|cross-body curl|alternating cross-body curl\tdumbbell\tdynamic\tstanding\tneutral\t1\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\tbrachioradialis~direct~With the thumb up its lever is at its best and the biceps no longer has the palm-up position to itself.\tbiceps long head|biceps short head|brachialis|brachioradialis\t\tbiceps long head~0.57|brachialis~0.57\tnone\tnovice\tlight\tdumbbell\t1\thammer curl\t\t\t',
    'seated hammer curl\tincline hammer curl|seated dumbbell hammer curl\tdumbbell\tdynamic\tincline\tneutral\t\t\t\telbow flexion\t\tshoulder~-30 -30|elbow~5 125\tbrachioradialis~direct~With the thumb up its lever is at its best and the biceps no longer has the palm-up position to itself.\tbiceps long head|biceps short head|brachialis|brachioradialis\t\tbiceps long head~0.67|brachialis~0.57\tnone\tnovice\tlight\tdumbbell|bench\t1\thammer curl\t\t\t',
    'preacher hammer curl\tneutral-grip preacher curl\tdumbbell\tdynamic\tseated\tneutral\t\t\t\telbow flexion\t\tshoulder~50 50|elbow~5 125\tbrachioradialis~direct~With the thumb up its lever is at its best and the biceps no longer has the palm-up position to itself.\tbiceps long head|biceps short head|brachialis|brachioradialis\t\tbiceps long head~0.43|brachialis~0.57\tnone\tnovice\tlight\tpreacher bench|dumbbell\t1\thammer curl\t\t\t',
    'reverse curl\toverhand curl|reverse barbell curl|pronated curl|bent-bar reverse curl|reverse-grip curl|reverse biceps curl\tbarbell\tdynamic\tstanding\toverhand\t\t\t\telbow flexion\twrist extension\tshoulder~0 0|elbow~5 125\tbrachioradialis~direct~With the palm down the biceps winds round the radius and loses pull; this muscle takes over.|biceps long head~indirect~The palm-down forearm takes the biceps out of its line of pull.|biceps short head~indirect~The palm-down forearm takes the biceps out of its line of pull.\tbrachialis|brachioradialis\tbiceps long head|biceps short head|wrist extensors\tbiceps long head~0.57|brachialis~0.57\tlow\tnovice\tlight\tbarbell\t1\thammer curl\trotating curl\t\t',
    'reverse cable curl\tcable reverse curl|overhand cable curl\tcable\tdynamic\tstanding\toverhand\t\t\t\telbow flexion\twrist extension\tshoulder~0 0|elbow~5 125\tbrachioradialis~direct~With the palm down the biceps winds round the radius and loses pull; this muscle takes over.|biceps long head~indirect~The palm-down forearm takes the biceps out of its line of pull.|biceps short head~indirect~The palm-down forearm takes the biceps out of its line of pull.\tbrachialis|brachioradialis\tbiceps long head|biceps short head|wrist extensors\tbiceps long head~0.57|brachialis~0.57\tnone\tnovice\tlight\tcable\t1\trope hammer curl\treverse curl\t\t',
    'reverse dumbbell curl\tdumbbell reverse curl|DB reverse curl\tdumbbell\tdynamic\tstanding\toverhand\t\t\t\telbow flexion\twrist extension\tshoulder~0 0|elbow~5 125\tbrachioradialis~direct~With the palm down the biceps winds round the radius and loses pull; this muscle takes over.|biceps long head~indirect~The palm-down forearm takes the biceps out of its line of pull.|biceps short head~indirect~The palm-down forearm takes the biceps out of its line of pull.\tbrachialis|brachioradialis\tbiceps long head|biceps short head|wrist extensors\tbiceps long head~0.57|brachialis~0.57\tnone\tnovice\tlight\tdumbbell\t1\thammer curl\t\t\t',
    'rotating curl\tpalms-up-palms-down curl|turn-over curl|supination-pronation curl\tdumbbell\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\tsupination|pronation\tshoulder~0 0|elbow~5 125\tbrachioradialis~direct~The weight is lowered with the palm down, where the biceps has lost pull and this muscle takes over.\tbiceps long head|biceps short head|brachialis|brachioradialis\tsupinator|pronators\tbiceps long head~0.57|brachialis~0.57\tnone\tintermediate\tlight\tdumbbell\t1\thammer curl|reverse dumbbell curl\t\t\t',
    'straight-bar pushdown\tV-bar pushdown|angled-bar pushdown\tcable\tdynamic\tstanding\toverhand\t\t\t\telbow extension\t\tshoulder~10 10|elbow~110 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.43|triceps lateral head~0.47|triceps medial head~0.47\tnone\tnovice\tlight\tcable\t\tband pushdown\t\t\t',
    'one-arm cable pushdown\tsingle-arm pushdown|single-arm cable pushdown|one-arm pushdown|single-arm triceps pushdown|one-arm triceps extension\tcable\tdynamic\tstanding\toverhand\t1\t\t\telbow extension\t\tshoulder~10 10|elbow~110 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.43|triceps lateral head~0.47|triceps medial head~0.47\tnone\tnovice\tlight\tcable\t\tband pushdown\t\t\t',
    'reverse-grip pushdown\tunderhand pushdown|supinated pushdown|underhand triceps pushdown\tcable\tdynamic\tstanding\tunderhand\t\t\t\telbow extension\t\tshoulder~10 10|elbow~110 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.43|triceps lateral head~0.47|triceps medial head~0.47\tnone\tnovice\tlight\tcable\t\tcable pushdown\t\t\t',
    'band pushdown\tbanded pushdown|band triceps pushdown|band triceps extension|resistance band pushdown\tband\tdynamic\tstanding\toverhand\t\t\t\telbow extension\t\tshoulder~10 10|elbow~110 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.43|triceps lateral head~0.47|triceps medial head~0.47\tnone\tnovice\tlight\tband\t\t\tcable pushdown\t\t',
    'cross-cable triceps extension\tcross-body cable extension|cross-cable extension|cable cross-body triceps extension\tcable\tdynamic\tstanding\tneutral\t\t\t\telbow extension\t\tshoulder~30 30|elbow~115 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.54|triceps lateral head~0.49|triceps medial head~0.49\tnone\tnovice\tlight\tcable\t\tcable pushdown\t\t\t',
    'triceps kickback\tdumbbell kickback|kickback|DB kickback|bent-over triceps extension\tdumbbell\tdynamic\tstanding\tneutral\t\t\t\telbow extension\t\tshoulder~-10 -10|elbow~95 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.3|triceps lateral head~0.41|triceps medial head~0.41\tnone\tnovice\tlight\tdumbbell\t\tcable pushdown\t\t\t',
    'cable kickback for triceps\tcable triceps kickback\tcable\tdynamic\tstanding\tneutral\t1\t\t\telbow extension\t\tshoulder~-10 -10|elbow~95 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.3|triceps lateral head~0.41|triceps medial head~0.41\tnone\tnovice\tlight\tcable\t\ttriceps kickback\t\t\t',
    'machine triceps extension\ttriceps extension machine|machine triceps|seated triceps machine|triceps machine\tmachine\tdynamic\tseated\toverhand\t\t\t\telbow extension\t\tshoulder~60 60|elbow~120 10\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.71|triceps lateral head~0.53|triceps medial head~0.53\tnone\tnovice\theavy\tmachine triceps\t\t\tlying triceps extension\t\t',
    'lying dumbbell triceps extension\tdumbbell skull crusher|DB skull crusher|dumbbell lying extension|DB triceps extension\tdumbbell\tdynamic\tlying\tneutral\t\t\t\telbow extension\t\tshoulder~90 90|elbow~120 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.82|triceps lateral head~0.51|triceps medial head~0.51\tnone\tnovice\tlight\tdumbbell|bench\t\tcable pushdown\tlying triceps extension\t\t',
    'incline triceps extension\tincline skull crusher|incline barbell triceps extension|incline dumbbell triceps extension\tbarbell\tdynamic\tincline\toverhand\t\t\t\telbow extension\t\tshoulder~130 130|elbow~120 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.86|triceps lateral head~0.51|triceps medial head~0.51\tnone\tintermediate\tlight\tbarbell|bench\t\tlying triceps extension\t\t\tmaeo-2023',
    'lying triceps extension behind the head\tdeep skull crusher|behind-the-head skull crusher|dead-stop triceps extension\tbarbell\tdynamic\tlying\toverhand\t\t\t\telbow extension\t\tshoulder~115 115|elbow~125 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.87|triceps lateral head~0.53|triceps medial head~0.53\tnone\tintermediate\tlight\tbarbell|bench\t\tlying triceps extension\t\t\tmaeo-2023',
    'decline triceps extension\tdecline skull crusher\tbarbell\tdynamic\tlying\toverhand\t\t\t\telbow extension\t\tshoulder~75 75|elbow~120 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.77|triceps lateral head~0.51|triceps medial head~0.51\tnone\tintermediate\tlight\tbarbell|bench\t\tlying triceps extension\t\t\t',
    'lying cable triceps extension\tcable skull crusher|cable lying extension\tcable\tdynamic\tlying\toverhand\t\t\t\telbow extension\t\tshoulder~90 90|elbow~120 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.82|triceps lateral head~0.51|triceps medial head~0.51\tnone\tnovice\tlight\tcable|bench\t\tcable pushdown\t\t\t',
    'one-arm lying triceps extension\tcross-face extension|cross-body dumbbell extension|single-arm skull crusher\tdumbbell\tdynamic\tlying\toverhand\t1\t\t\telbow extension\t\tshoulder~90 90|elbow~120 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.82|triceps lateral head~0.51|triceps medial head~0.51\tnone\tintermediate\tlight\tdumbbell|bench\t\tlying dumbbell triceps extension\t\t\t',
    'rolling dumbbell extension\troll-back triceps extension|dumbbell rollback|roll-back extension\tdumbbell\tdynamic\tlying\tneutral\t\t\t\telbow extension\t\tshoulder~115 90|elbow~125 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.85|triceps lateral head~0.53|triceps medial head~0.53\tnone\tintermediate\tlight\tdumbbell|floor\t\tlying dumbbell triceps extension\tlying triceps extension\t\t',
    'elbows-out triceps extension\telbows-out extension|flared triceps extension\tdumbbell\tdynamic\tlying\toverhand\t\t\t\telbow extension\t\telbow~115 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps lateral head~0.49|triceps medial head~0.49\tnone\tintermediate\tlight\tdumbbell|bench\t\tlying dumbbell triceps extension\t\t\t',
    'overhead barbell triceps extension\tbarbell overhead extension|bent-bar overhead extension|standing     barbell triceps extension|barbell French press\tbarbell\tdynamic\tstanding\toverhand\t\t\t\telbow extension\t\tshoulder~165 165|elbow~125 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.76|triceps lateral head~0.53|triceps medial head~0.53\tlow\tintermediate\tlight\tbarbell\t\toverhead dumbbell triceps extension\t\t\tmaeo-2023',
    'one-arm overhead triceps extension\tsingle-arm overhead extension|single-arm overhead triceps extension|one-arm dumbbell overhead extension|single-arm dumbbell triceps extension\tdumbbell\tdynamic\tstanding\tneutral\t1\t\t\telbow extension\t\tshoulder~165 165|elbow~125 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.76|triceps lateral head~0.53|triceps medial head~0.53\tnone\tnovice\tlight\tdumbbell\t\toverhead cable triceps extension\t\t\tmaeo-2023',
    'one-arm overhead cable extension\tsingle-arm cable overhead extension|single-arm overhead cable triceps extension\tcable\tdynamic\tstanding\tneutral\t1\t\t\telbow extension\t\tshoulder~165 165|elbow~125 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.76|triceps lateral head~0.53|triceps medial head~0.53\tnone\tnovice\tlight\tcable\t\toverhead cable triceps extension\t\t\tmaeo-2023',
    'band overhead triceps extension\tbanded overhead extension|band overhead extension\tband\tdynamic\tstanding\tneutral\t\t\t\telbow extension\t\tshoulder~165 165|elbow~125 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.76|triceps lateral head~0.53|triceps medial head~0.53\tnone\tnovice\tlight\tband\t\t\toverhead cable triceps extension\t\tmaeo-2023',
    'kettlebell overhead triceps extension\tKB overhead extension|kettlebell triceps extension\tkettlebell\tdynamic\tstanding\tneutral\t\t\t\telbow extension\t\tshoulder~165 165|elbow~125 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.76|triceps lateral head~0.53|triceps medial head~0.53\tnone\tnovice\tlight\tkettlebell\t\toverhead cable triceps extension\t\t\tmaeo-2023',
    'machine overhead triceps extension\toverhead triceps machine\tmachine\tdynamic\tseated\tneutral\t\t\t\telbow extension\t\tshoulder~150 150|elbow~120 10\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.83|triceps lateral head~0.53|triceps medial head~0.53\tnone\tnovice\theavy\tmachine overhead triceps\t\tmachine triceps extension\t\t\tmaeo-2023',
    'bodyweight triceps extension\tbodyweight skull crusher|triceps push-out|bar triceps extension\tbodyweight\tdynamic\tprone\toverhand\t\t\t\telbow extension\ttrunk flexion\tshoulder~115 110|elbow~120 5\t\ttriceps long head|triceps lateral head|triceps medial head\trectus abdominis\ttriceps long head~0.86|triceps lateral head~0.51|triceps medial head~0.51\tnone\tintermediate\theavy\tbarbell|rack\t\tlying triceps extension|close-grip push-up\t\t\t',
    'suspension triceps extension\tring triceps extension|suspended triceps extension\tsuspension\tdynamic\tstanding\tneutral\t\t\t\telbow extension\ttrunk flexion\tshoulder~115 110|elbow~120 5\t\ttriceps long head|triceps lateral head|triceps medial head\trectus abdominis\ttriceps long head~0.86|triceps lateral head~0.51|triceps medial head~0.51\tnone\tintermediate\tlight\tsuspension\t\toverhead cable triceps extension\tbodyweight triceps extension\t\t',
    'triceps extension hold\tisometric triceps extension|pushdown hold\tcable\tisometric\tstanding\toverhand\t\t\t\telbow extension\t\tshoulder~10|elbow~30\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.34|triceps lateral head~0.24|triceps medial head~0.24\tnone\tnovice\tlight\tcable\t\tband pushdown\t\t\t',
    'wrist curl\tbarbell wrist curl|seated wrist curl|palms-up wrist curl|forearm curl|dumbbell wrist curl\tbarbell\tdynamic\tseated\tunderhand\t\t\t\twrist flexion\t\t\t\twrist flexors\tfinger flexors\t\tnone\tnovice\tlight\tbarbell|bench\t1\tcable wrist curl\tbehind-the-back wrist curl\t\t',
    'reverse wrist curl\twrist extension|palms-down wrist curl|dumbbell reverse wrist curl|barbell reverse wrist curl|seated reverse wrist curl\tdumbbell\tdynamic\tseated\toverhand\t\t\t\twrist extension\t\t\t\twrist extensors\t\t\tnone\tnovice\tlight\tdumbbell|bench\t1\tisometric wrist extension\t\t\t',
    'behind-the-back wrist curl\tstanding wrist curl|behind-back barbell wrist curl\tbarbell\tdynamic\tstanding\toverhand\t\t\t\twrist flexion\tgrip\t\t\twrist flexors\tfinger flexors\t\tnone\tnovice\theavy\tbarbell|rack\t1\twrist curl\t\t\t',
    'cable wrist curl\tcable forearm curl\tcable\tdynamic\tstanding\tunderhand\t\t\t\twrist flexion\t\t\t\twrist flexors\tfinger flexors\t\tnone\tnovice\tlight\tcable\t1\t\twrist curl\t\t',
    'isometric wrist extension\twrist extension hold|isometric wrist extensor hold\tdumbbell\tisometric\tseated\t\t1\t\t\twrist extension\t\t\t\twrist extensors\t\t\tnone\tnovice\tlight\tdumbbell|bench\t1\t\treverse wrist curl\t\t',
    'eccentric wrist extension\tslow-lowering wrist extension|wrist extension lowering|eccentric reverse wrist curl\tdumbbell\tdynamic\tseated\toverhand\t1\t\t\twrist extension\t\t\t\twrist extensors\t\t\tnone\tnovice\tlight\tdumbbell|bench\t1\tisometric wrist extension\treverse wrist curl\t\t',
    'wrist roller\twrist roller up|forearm roller|wrist roll-up\tplate\tdynamic\tstanding\toverhand\t\t\t\twrist extension\twrist flexion|grip\t\t\twrist extensors\twrist flexors|finger flexors\t\tnone\tintermediate\tlight\twrist roller|plate\t1\treverse wrist curl\t\t\t',
    'forearm pronation\tdumbbell pronation|hammer pronation|pronation with a lever\tdumbbell\tdynamic\tseated\t\t1\t\t\tpronation\t\telbow~90\t\tpronators\t\t\tnone\tnovice\tlight\tdumbbell|bench\t1\t\t\t\t',
    'forearm supination\tdumbbell supination|hammer supination|supination with a lever\tdumbbell\tdynamic\tseated\t\t1\t\t\tsupination\t\telbow~90\t\tbiceps long head|biceps short head|supinator\t\t\tnone\tnovice\tlight\tdumbbell|bench\t1\t\t\t\t',
    'dead hang\tbar hang|passive hang|hang|straight-arm hang|pull-up bar hang\tbodyweight\tisometric\thanging\toverhand\t\t\t\tgrip\t\t\t\tfinger flexors\twrist flexors|wrist extensors\t\tnone\tnovice\theavy\tpull-up bar\t1\t\ttowel hang|one-arm hang\t\t',
    'towel hang\ttowel grip hang|rope hang\tbodyweight\tisometric\thanging\tneutral\t\t\t\tgrip\twrist flexion\t\t\tfinger flexors\twrist flexors|wrist extensors\t\tnone\tintermediate\theavy\tpull-up bar\t1\tdead hang\t\t\t',
    'one-arm hang\tsingle-arm hang|one-arm dead hang|single-arm dead hang\tbodyweight\tisometric\thanging\t\t1\t\t\tgrip\tscapular depression\t\t\tfinger flexors\tlower trapezius|wrist flexors|wrist extensors\t\tnone\tadvanced\theavy\tpull-up bar\t1\tdead hang|towel hang\t\t\t',
    'fingertip hang\tfingerboard hang|finger hang|edge hang|hangboard hang\tbodyweight\tisometric\thanging\toverhand\t\t\t\tgrip\t\t\t\tfinger flexors\twrist flexors|wrist extensors\t\tnone\tadvanced\theavy\tfingerboard\t1\tdead hang\t\t\t',
    'plate pinch\tpinch grip hold|plate pinch hold|pinch hold\tplate\tisometric\tstanding\t\t\t\t\tgrip\t\t\t\tfinger flexors\twrist flexors|wrist extensors\t\tlow\tnovice\tlight\tplate\t1\tdead hang\t\t\t',
    "barbell hold\tgrip hold|static barbell hold|timed barbell hold|thick-bar hold\tbarbell\tisometric\tstanding\toverhand\t\t\t\tgrip\tscapular elevation\t\t\tfinger flexors\tupper trapezius|wrist flexors|wrist extensors\t\thigh\tintermediate\theavy\tbarbell|rack\t1\tfarmer's hold\t\t\t",
    "farmer's hold\tdumbbell hold|static farmer hold|dumbbell grip hold\tdumbbell\tisometric\tstanding\tneutral\t\t\t\tgrip\tscapular elevation\t\t\tfinger flexors\tupper trapezius|wrist flexors|wrist extensors\t\tmoderate\tnovice\theavy\tdumbbell\t1\tdead hang\tfarmer's carry\t\t",
    "hand gripper squeeze\tgripper|hand gripper|crush grip|gripper close\tnone\tdynamic\tstanding\tclose\t1\t\t\tgrip\t\t\t\tfinger flexors\twrist flexors|wrist extensors\t\tnone\tnovice\tlight\thand gripper\t1\t\tfarmer's hold\t\t",
    'finger curl\tbarbell finger curl|finger roll|finger roll-up\tbarbell\tdynamic\tseated\tunderhand\t\t\t\tgrip\twrist flexion\t\t\tfinger flexors\twrist flexors|wrist extensors\t\tnone\tnovice\tlight\tbarbell|bench\t1\thand gripper squeeze\t\t\t',
    'finger extension with band\tband finger extension|finger opening|rubber-band finger extension\tband\tdynamic\tseated\t\t1\t\t\twrist extension\t\t\t\twrist extensors\t\t\tnone\tnovice\tlight\tband\t\t\t\t\t',
    'wrist deviation with a lever\tradial deviation|ulnar deviation|sledgehammer lever|lever lift\tdumbbell\tdynamic\tstanding\t\t1\t\t\twrist extension|wrist flexion\tgrip\t\t\twrist flexors|wrist extensors\tfinger flexors\t\tnone\tintermediate\tlight\tdumbbell\t1\twrist curl\t\t\t',
    "farmer's carry\tfarmer's walk|dumbbell farmer's carry|loaded carry|dumbbell carry|farmers\tdumbbell\tcarry\tstanding\tneutral\t\tcarry\tcarry\tgrip\tscapular elevation|trunk extension\t\t\tfinger flexors\terector spinae|multifidus|upper trapezius|wrist flexors|wrist extensors\t\tmoderate\tnovice\theavy\tdumbbell\t1\tfarmer's hold\ttrap bar carry\t\t",
    "suitcase carry\tsuitcase walk|one-arm farmer's carry|single-arm farmer's carry|one-sided carry|offset carry\tkettlebell\tcarry\tstanding\tneutral\t1\tcarry\tcarry\ttrunk side bend|grip\tscapular elevation\t\t\texternal oblique|internal oblique|quadratus lumborum|finger flexors\trectus abdominis|erector spinae|upper trapezius|wrist flexors|wrist extensors\t\tmoderate\tnovice\theavy\tkettlebell\t1\tside plank|farmer's carry\tsuitcase deadlift\t\t",
    'Turkish get-up\tTGU|get-up|kettlebell get-up|dumbbell get-up\tkettlebell\tdynamic\tstanding\t\t1\t\t\tscapular upward rotation|trunk flexion\tshoulder abduction|elbow extension|trunk rotation|hip abduction|hip extension|knee extension\thip~90 0|knee~90 0|ankle~10 0\tquadriceps~none~What the arm can hold overhead is far too light for the thigh.|gluteus maximus~none~What the arm can hold overhead is far too light for the hip.|adductor magnus~none~What the arm can hold overhead is far too light for the hip.\trectus abdominis|upper trapezius|serratus anterior\tgluteus medius|gluteus minimus|external oblique|internal oblique|middle trapezius|lower trapezius|middle deltoid|triceps long head|triceps lateral head|triceps medial head\t\tlow\tadvanced\tlight\tkettlebell|floor\t\thalf get-up|Turkish sit-up\tbottoms-up Turkish get-up\tWhole-body skill: the path is the last part, from half-kneeling to standing. The load is what the arm can hold overhead, light for the legs.\t',
    'medicine ball slam\tball slam|overhead slam|med ball slam|slam ball|overhead medicine ball slam|MB slam\tmedicine ball\tballistic\tstanding\t\t\tthrow\tthrow\tshoulder extension\ttrunk flexion|elbow extension\tshoulder~165 40|elbow~60 10\t\tlatissimus dorsi|teres major\trectus abdominis|posterior deltoid|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.71|triceps lateral head~0.28|triceps medial head~0.28\tnone\tnovice\tlight\tmedicine ball\t\tstraight-arm pulldown\trotational medicine ball slam\t\t',
    'medicine ball chest pass\tchest pass|med ball chest pass|medicine ball chest throw|MB chest pass|wall chest pass|standing chest throw\tmedicine ball\tballistic\tstanding\t\t\tthrow\tthrow\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~110 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.47|triceps medial head~0.47\tnone\tnovice\tlight\tmedicine ball|wall\t\tpush-up\tplyometric push-up|lying medicine ball chest throw\t\t',
    'rotational medicine ball throw\trotational throw|med ball rotational throw|side throw|medicine ball side toss|MB rotational throw|rotational wall throw|side toss\tmedicine ball\tballistic\tstanding\t\t1\tthrow\tthrow\ttrunk rotation\tshoulder horizontal adduction\t\t\texternal oblique|internal oblique\ttransversus abdominis|sternocostal chest\t\tnone\tnovice\tlight\tmedicine ball|wall\t\tcable rotation\tstep-behind rotational throw\t\t',
    "trap bar carry\ttrap bar farmer's walk|trap bar walk|hex bar carry|frame carry\ttrap bar\tcarry\tstanding\tneutral\t\tcarry\tcarry\tgrip\tscapular elevation|trunk extension\t\t\tfinger flexors\terector spinae|multifidus|upper trapezius|wrist flexors|wrist extensors\t\thigh\tintermediate\theavy\ttrap bar\t1\tfarmer's carry\t\t\t",
    "kettlebell farmer's carry\tkettlebell carry|KB farmer's walk|kettlebell walk|KB carry\tkettlebell\tcarry\tstanding\tneutral\t\tcarry\tcarry\tgrip\tscapular elevation|trunk extension\t\t\tfinger flexors\terector spinae|multifidus|upper trapezius|wrist flexors|wrist extensors\t\tmoderate\tnovice\theavy\tkettlebell\t1\tfarmer's hold\ttrap bar carry\t\t",
    "farmer's handle carry\tfarmer's handles|handle carry|farmer's walk with handles\tbarbell\tcarry\tstanding\tneutral\t\tcarry\tcarry\tgrip\tscapular elevation|trunk extension\t\t\tfinger flexors\terector spinae|multifidus|upper trapezius|wrist flexors|wrist extensors\t\thigh\tintermediate\theavy\tfarmer's handles\t1\tfarmer's carry\t\t\t",
    'overhead carry\ttwo-arm overhead carry|overhead walk|double overhead carry|barbell overhead carry\tdumbbell\tcarry\tstanding\tneutral\t\tcarry\tcarry\tscapular upward rotation\tshoulder abduction|elbow extension|trunk flexion\t\t\tupper trapezius|serratus anterior\trectus abdominis|middle trapezius|lower trapezius|middle deltoid|triceps long head|triceps lateral head|triceps medial head\t\tmoderate\tintermediate\tlight\tdumbbell\t\track carry|overhead hold\t\t\t',
    "waiter's walk\twaiter's carry|one-arm overhead carry|single-arm overhead carry\tkettlebell\tcarry\tstanding\tneutral\t1\tcarry\tcarry\tscapular upward rotation\tshoulder abduction|elbow extension|trunk side bend\t\t\tupper trapezius|serratus anterior\texternal oblique|internal oblique|quadratus lumborum|middle trapezius|lower trapezius|middle deltoid|triceps long head|triceps lateral head|triceps medial head\t\tlow\tintermediate\tlight\tkettlebell\t\tkettlebell overhead press\tbottoms-up carry\t\t",
    'rack carry\tfront rack carry|kettlebell rack carry|double kettlebell rack carry|rack walk\tkettlebell\tcarry\tstanding\tneutral\t\tcarry\tcarry\ttrunk extension\telbow flexion|trunk flexion\t\t\terector spinae|multifidus\trectus abdominis|biceps long head|biceps short head|brachialis\t\tmoderate\tintermediate\theavy\tkettlebell\t\tgoblet carry\toverhead carry\t\t',
    "one-arm rack carry\tsingle-arm rack carry|one-arm front rack carry|offset rack carry\tkettlebell\tcarry\tstanding\tneutral\t1\tcarry\tcarry\ttrunk side bend\telbow flexion\t\t\texternal oblique|internal oblique|quadratus lumborum\trectus abdominis|erector spinae|biceps long head|biceps short head|brachialis\t\tmoderate\tnovice\theavy\tkettlebell\t\tgoblet carry\twaiter's walk\t\t",
    'goblet carry\tgoblet walk|bear-hug kettlebell carry\tkettlebell\tcarry\tstanding\tneutral\t\tcarry\tcarry\ttrunk extension\telbow flexion|trunk flexion\t\t\terector spinae|multifidus\trectus abdominis|biceps long head|biceps short head|brachialis\t\tmoderate\tnovice\theavy\tkettlebell\t\t\track carry|sandbag carry\t\t',
    'sandbag shoulder carry\tshoulder carry|sandbag over-the-shoulder carry\tsandbag\tcarry\tstanding\tneutral\t1\tcarry\tcarry\ttrunk side bend|trunk extension\t\t\t\texternal oblique|internal oblique|erector spinae|multifidus|quadratus lumborum\trectus abdominis\t\thigh\tnovice\theavy\tsandbag\t\tsandbag carry\t\t\t',
    'plate carry\tplate hug carry|plate pinch carry|hugged plate carry\tplate\tcarry\tstanding\tneutral\t\tcarry\tcarry\ttrunk extension\telbow flexion|trunk flexion\t\t\terector spinae|multifidus\trectus abdominis|biceps long head|biceps short head|brachialis\t\tmoderate\tnovice\theavy\tplate\t\t\tsandbag carry\t\t',
    'front-loaded bar carry\tcrook-of-the-elbow carry|elbow-crook carry|front-held barbell carry\tbarbell\tcarry\tstanding\tneutral\t\tcarry\tcarry\ttrunk extension\telbow flexion|trunk flexion\t\t\terector spinae|multifidus\trectus abdominis|biceps long head|biceps short head|brachialis\t\thigh\tintermediate\theavy\tbarbell|rack\t\tgoblet carry\t\t\t',
    "bottoms-up carry\tbottoms-up kettlebell carry|bottoms-up walk|bottoms-up rack carry\tkettlebell\tcarry\tstanding\tneutral\t1\tcarry\tcarry\tgrip\tscapular upward rotation|shoulder external rotation\t\t\tfinger flexors\tupper trapezius|serratus anterior|infraspinatus|teres minor|wrist flexors|wrist extensors\t\tlow\tadvanced\tlight\tkettlebell\t1\tone-arm rack carry|waiter's walk\t\t\t",
    "mixed carry\tcross-body carry|high-low carry|one up one down carry|overhead and suitcase carry\tkettlebell\tcarry\tstanding\t\t\tcarry\tcarry\tgrip|scapular upward rotation\ttrunk side bend|scapular elevation|elbow extension\t\t\tupper trapezius|serratus anterior|finger flexors\texternal oblique|internal oblique|quadratus lumborum|middle trapezius|lower trapezius|triceps long head|triceps lateral head|triceps medial head|wrist flexors|wrist extensors\t\tmoderate\tintermediate\theavy\tkettlebell\t1\tsuitcase carry|waiter's walk\t\t\t",
    "bucket carry\tfront bucket carry|water can carry|jerrycan carry\tsandbag\tcarry\tstanding\tneutral\t\tcarry\tcarry\tgrip|trunk extension\telbow flexion\t\t\terector spinae|multifidus|finger flexors\tbiceps long head|biceps short head|brachialis|wrist flexors|wrist extensors\t\tmoderate\tnovice\theavy\tbucket\t1\tfarmer's carry\t\t\t",
    "towel farmer's carry\ttowel carry|thick-handle farmer's carry|thick-grip carry\tkettlebell\tcarry\tstanding\tneutral\t\tcarry\tcarry\tgrip\tscapular elevation|trunk extension\t\t\tfinger flexors\terector spinae|multifidus|upper trapezius|wrist flexors|wrist extensors\t\tmoderate\tintermediate\theavy\tkettlebell\t1\tkettlebell farmer's carry\t\t\t",
    'pinch carry\tplate pinch carry walk|plate pinch walk\tplate\tcarry\tstanding\t\t\tcarry\tcarry\tgrip\tscapular elevation|trunk extension\t\t\tfinger flexors\terector spinae|multifidus|upper trapezius|wrist flexors|wrist extensors\t\tlow\tnovice\tlight\tplate\t1\tplate pinch\t\t\t',
    'half get-up\thalf Turkish get-up|get-up to the hand|partial get-up|get-up to elbow\tkettlebell\tdynamic\tlying\t\t1\t\t\ttrunk flexion|scapular upward rotation\ttrunk rotation|shoulder abduction|elbow extension\tshoulder~90|elbow~0\t\trectus abdominis|upper trapezius|serratus anterior\texternal oblique|internal oblique|middle trapezius|lower trapezius|middle deltoid\t\tlow\tintermediate\tlight\tkettlebell|floor\t\tTurkish sit-up|arm bar\t\t\t',
    'bottoms-up Turkish get-up\tbottoms-up get-up\tkettlebell\tdynamic\tstanding\t\t1\t\t\tscapular upward rotation|trunk flexion\tshoulder abduction|elbow extension|trunk rotation|hip abduction|hip extension|knee extension|grip\thip~90 0|knee~90 0|ankle~10 0\tquadriceps~none~What the arm can hold overhead is far too light for the thigh.|gluteus maximus~none~What the arm can hold overhead is far too light for the hip.|adductor magnus~none~What the arm can hold overhead is far too light for the hip.\trectus abdominis|upper trapezius|serratus anterior\tgluteus medius|gluteus minimus|external oblique|internal oblique|middle trapezius|lower trapezius|middle deltoid|triceps long head|triceps lateral head|triceps medial head|finger flexors\t\tlow\tadvanced\tlight\tkettlebell|floor\t1\tTurkish get-up|bottoms-up kettlebell press\t\tWhole-body skill: the path is the last part, from half-kneeling to standing. The load is what the arm can hold overhead, light for the legs.\t',
    'sandbag get-up\tshouldered get-up|sandbag Turkish get-up\tsandbag\tdynamic\tstanding\t\t1\t\t\ttrunk flexion|knee extension\ttrunk rotation|hip extension|hip abduction\thip~90 0|knee~90 0|ankle~10 0\tquadriceps~none~What the arm can hold overhead is far too light for the thigh.|gluteus maximus~none~What the arm can hold overhead is far too light for the hip.|adductor magnus~none~What the arm can hold overhead is far too light for the hip.\trectus abdominis\tgluteus medius|gluteus minimus|external oblique|internal oblique\t\tmoderate\tintermediate\theavy\tsandbag|floor\t\tsit-up|bodyweight lunge\t\tThe path is the last part, from half-kneeling to standing.\t',
    'arm bar\tkettlebell arm bar|KB arm bar|screwdriver|lying arm bar\tkettlebell\tisometric\tlying\t\t1\t\t\tscapular upward rotation\tshoulder external rotation|scapular retraction\tshoulder~90|elbow~0\t\tupper trapezius|serratus anterior\tmiddle trapezius|lower trapezius|rhomboids|infraspinatus|teres minor\t\tnone\tintermediate\tlight\tkettlebell|floor\t\tserratus punch\thalf get-up\t\t',
    'kettlebell clean and press\tKB clean and press|one-arm clean and press|single-arm kettlebell clean and press|C&P\tkettlebell\tdynamic\tstanding\t\t1\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation|hip extension\tshoulder~50 165|elbow~120 5\tgluteus maximus~none~The bell that can be pressed is light for the hips.|adductor magnus~none~The bell that can be pressed is light for the hips.|hamstrings~none~The bell that can be pressed is light for the hips.\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tlow\tintermediate\theavy\tkettlebell\t\tkettlebell overhead press\tdouble kettlebell clean and press\tThe press limits it; the clean brings the bell to the shoulder.\t',
    'double kettlebell clean and press\tdouble clean and press|double KB clean and press|two-kettlebell clean and press\tkettlebell\tdynamic\tstanding\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation|hip extension\tshoulder~50 165|elbow~120 5\tgluteus maximus~none~The bells that can be pressed are light for the hips.|adductor magnus~none~The bells that can be pressed are light for the hips.|hamstrings~none~The bells that can be pressed are light for the hips.\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tmoderate\tadvanced\theavy\tkettlebell\t\tkettlebell clean and press|double kettlebell overhead press\t\tThe press limits it; the clean brings the bells to the shoulders.\t',
    'kettlebell push press\tKB push press|one-arm kettlebell push press\tkettlebell\tdynamic\tstanding\t\t1\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tlow\tintermediate\theavy\tkettlebell\t\tkettlebell overhead press\tkettlebell jerk\t\t',
    'kettlebell jerk\tKB jerk|one-arm kettlebell jerk|kettlebell push jerk\tkettlebell\tballistic\tstanding\t\t1\t\t\tknee extension|shoulder flexion\telbow extension|scapular upward rotation|plantarflexion\thip~30 0|knee~50 0|ankle~20 -15|shoulder~60 165|elbow~120 5\tvastus lateralis~indirect~A short, quick drive with a bell held in one hand: speed work for the thigh, not a heavy set.|vastus medialis~indirect~A short, quick drive with a bell held in one hand: speed work for the thigh, not a heavy set.|vastus intermedius~indirect~A short, quick drive with a bell held in one hand: speed work for the thigh, not a heavy set.\tanterior deltoid\tvastus lateralis|vastus medialis|vastus intermedius|soleus|upper trapezius|serratus anterior|clavicular chest|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\tvastus lateralis~0.25|vastus medialis~0.25|vastus intermedius~0.25|soleus~0.69|triceps long head~0.82|triceps lateral head~0.51|triceps medial head~0.51\tlow\tadvanced\theavy\tkettlebell\t\tkettlebell push press\t\t\t',
    'kettlebell pullover\tKB pullover|floor pullover with kettlebell\tkettlebell\tdynamic\tlying\t\t\t\t\tshoulder extension\t\tshoulder~170 85|elbow~15 15\t\tlatissimus dorsi|teres major\tposterior deltoid|triceps long head\ttriceps long head~0.68\tnone\tnovice\tlight\tkettlebell|floor\t\tstraight-arm pulldown\tdumbbell pullover\t\t',
    'rotational medicine ball slam\trotational slam|side slam|medicine ball side slam|med ball side slam|rainbow slam\tmedicine ball\tballistic\tstanding\t\t1\tthrow\tthrow\ttrunk rotation|shoulder extension\ttrunk flexion\tshoulder~160 40|elbow~50 10\t\texternal oblique|internal oblique|latissimus dorsi|teres major\trectus abdominis|transversus abdominis|posterior deltoid|triceps long head\ttriceps long head~0.69\tnone\tintermediate\tlight\tmedicine ball\t\tmedicine ball slam\t\t\t',
    'kneeling medicine ball slam\ttall-kneeling slam|half-kneeling slam|kneeling slam\tmedicine ball\tballistic\tkneeling\t\t\tthrow\tthrow\tshoulder extension\ttrunk flexion|elbow extension\tshoulder~165 40|elbow~60 10\t\tlatissimus dorsi|teres major\trectus abdominis|posterior deltoid|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.71|triceps lateral head~0.28|triceps medial head~0.28\tnone\tnovice\tlight\tmedicine ball\t\t\tmedicine ball slam\t\t',
    'medicine ball overhead throw\toverhead throw|soccer throw|overhead medicine ball pass|two-hand overhead throw|med ball overhead throw|football throw-in\tmedicine ball\tballistic\tstanding\t\t\tthrow\tthrow\tshoulder extension\ttrunk flexion|elbow extension\tshoulder~170 90|elbow~100 10\t\tlatissimus dorsi|teres major\trectus abdominis|posterior deltoid|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.45|triceps medial head~0.45\tnone\tnovice\tlight\tmedicine ball|wall\t\tkneeling medicine ball slam\tstep-in overhead throw\t\t',
    'step-in overhead throw\tstepping overhead throw|step-in medicine ball overhead throw\tmedicine ball\tballistic\tsplit\t\t\tthrow\tthrow\tshoulder extension\ttrunk flexion|elbow extension\tshoulder~170 90|elbow~100 10\t\tlatissimus dorsi|teres major\trectus abdominis|posterior deltoid|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.45|triceps medial head~0.45\tnone\tintermediate\tlight\tmedicine ball|wall\t\tmedicine ball overhead throw\t\t\t',
    'medicine ball pullover throw\tlying overhead throw|supine overhead throw|pullover pass|sit-up throw\tmedicine ball\tballistic\tlying\t\t\tthrow\tthrow\tshoulder extension|trunk flexion\telbow extension|hip flexion\tshoulder~170 90|elbow~60 10|hip~45 95|knee~90 90|ankle~0 0\t\trectus abdominis|latissimus dorsi|teres major\tiliacus|psoas major|external oblique|internal oblique|posterior deltoid|triceps long head|triceps lateral head|triceps medial head\tiliacus~0.34|psoas major~0.34|triceps long head~0.75|triceps lateral head~0.28|triceps medial head~0.28\tnone\tintermediate\tlight\tmedicine ball|floor\t\tsit-up|kneeling medicine ball slam\t\t\t',
    'kneeling medicine ball chest pass\ttall-kneeling chest pass|kneeling chest throw|half-kneeling chest pass\tmedicine ball\tballistic\tkneeling\t\t\tthrow\tthrow\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~110 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.47|triceps medial head~0.47\tnone\tnovice\tlight\tmedicine ball|wall\t\tpush-up\tmedicine ball chest pass\t\t',
    'seated medicine ball chest pass\tseated chest pass|seated medicine ball throw|seated chest throw\tmedicine ball\tballistic\tseated\t\t\tthrow\tthrow\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~110 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.47|triceps medial head~0.47\tnone\tnovice\tlight\tmedicine ball|wall\t\t\tmedicine ball chest pass\t\t',
    'lying medicine ball chest throw\tsupine chest throw|supine medicine ball throw|lying chest throw|medicine ball bench throw|vertical chest throw\tmedicine ball\tballistic\tlying\t\t\tthrow\tthrow\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~110 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.47|triceps medial head~0.47\tnone\tintermediate\tlight\tmedicine ball|floor\t\tmedicine ball chest pass\tbench press throw\t\t',
    'one-arm medicine ball put\tmedicine ball put|shot put throw|medicine ball shot put|rotational put|med ball punch throw\tmedicine ball\tballistic\tsplit\t\t1\tthrow\tthrow\tshoulder horizontal adduction\tshoulder flexion|elbow extension|trunk rotation\telbow~110 5\t\tsternocostal chest\texternal oblique|internal oblique|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.47|triceps medial head~0.47\tnone\tintermediate\tlight\tmedicine ball|wall\t\tmedicine ball chest pass\t\t\t',
    'medicine ball push throw\tstep-in chest pass|jump-in chest pass|broad jump chest pass\tmedicine ball\tballistic\tstanding\t\t\tthrow\tthrow\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~110 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.47|triceps medial head~0.47\tnone\tintermediate\tlight\tmedicine ball|wall\t\tmedicine ball chest pass\t\t\t',
    'half-kneeling rotational throw\thalf-kneeling medicine ball throw|half-kneeling side toss|kneeling rotational throw\tmedicine ball\tballistic\tkneeling\t\t1\tthrow\tthrow\ttrunk rotation\tshoulder horizontal adduction\t\t\texternal oblique|internal oblique\ttransversus abdominis|sternocostal chest\t\tnone\tnovice\tlight\tmedicine ball|wall\t\thalf-kneeling chop\trotational medicine ball throw\t\t',
    'step-behind rotational throw\tstep-behind throw|shuffle rotational throw|running rotational throw\tmedicine ball\tballistic\tstanding\t\t1\tthrow\tthrow\ttrunk rotation\tshoulder horizontal adduction\t\t\texternal oblique|internal oblique\ttransversus abdominis|sternocostal chest\t\tnone\tadvanced\tlight\tmedicine ball|wall\t\trotational medicine ball throw\t\t\t',
    'scoop throw to the side\trotational scoop toss|side scoop toss|scoop toss|medicine ball scoop toss\tmedicine ball\tballistic\tstanding\t\t1\tthrow\tthrow\ttrunk rotation\tshoulder flexion\t\t\texternal oblique|internal oblique\ttransversus abdominis|anterior deltoid\t\tnone\tintermediate\tlight\tmedicine ball|wall\t\trotational medicine ball throw\t\t\t',
    'seated rotational throw\tseated medicine ball side throw|seated side toss|Russian twist throw\tmedicine ball\tballistic\tseated\t\t1\tthrow\tthrow\ttrunk rotation\ttrunk flexion\t\t\texternal oblique|internal oblique\trectus abdominis|transversus abdominis\t\tnone\tnovice\tlight\tmedicine ball|wall\t\tRussian twist\trotational medicine ball throw\t\t',
    'medicine ball wall taps\tback-to-wall rotation pass|behind-the-back ball pass|back-to-back ball pass\tmedicine ball\tdynamic\tstanding\t\t\trotation\trotation\ttrunk rotation\t\t\t\texternal oblique|internal oblique\ttransversus abdominis\t\tnone\tnovice\tlight\tmedicine ball|wall\t\tband rotation\trotational medicine ball throw\t\t',
    'backward overhead throw\toverhead backward throw|backward medicine ball throw|backwards overhead toss|BOMB throw|overhead back toss\tmedicine ball\tballistic\tstanding\t\t\tthrow\tthrow\thip extension|knee extension\tshoulder flexion|trunk extension|plantarflexion\thip~85 0|knee~70 0|ankle~20 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|anterior deltoid\tbiceps femoris long head~0.59|semitendinosus~0.59|semimembranosus~0.59|vastus lateralis~0.34|vastus medialis~0.34|vastus intermedius~0.34|gluteus maximus~0.62|adductor magnus~0.32|soleus~0.65\tnone\tintermediate\tlight\tmedicine ball\t\tkettlebell swing\tmedicine ball squat throw\t\t',
    'forward scoop throw\tunderhand forward throw|between-the-legs throw|forward medicine ball scoop|granny toss\tmedicine ball\tballistic\tstanding\t\t\tthrow\tthrow\thip extension|knee extension\tshoulder flexion|trunk extension|plantarflexion\thip~85 0|knee~70 0|ankle~20 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|anterior deltoid\tbiceps femoris long head~0.59|semitendinosus~0.59|semimembranosus~0.59|vastus lateralis~0.34|vastus medialis~0.34|vastus intermedius~0.34|gluteus maximus~0.62|adductor magnus~0.32|soleus~0.65\tnone\tintermediate\tlight\tmedicine ball\t\tkettlebell swing\tbackward overhead throw\t\t',
    'medicine ball squat throw\tsquat throw|vertical toss|medicine ball vertical throw|squat to press throw|overhead vertical throw\tmedicine ball\tballistic\tstanding\t\t\tthrow\tthrow\thip extension|knee extension\tshoulder flexion|elbow extension|plantarflexion\thip~90 0|knee~95 0|ankle~25 -20\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|anterior deltoid|triceps long head|triceps lateral head|triceps medial head\tvastus lateralis~0.45|vastus medialis~0.45|vastus intermedius~0.45|gluteus maximus~0.63|adductor magnus~0.35|soleus~0.68\tnone\tintermediate\tlight\tmedicine ball\t\twall ball squat\t\t\t',
    'rope climb\tclimbing rope|rope climbing|rope ascent|arms-only rope climb\trope\tdynamic\thanging\t\t1\tvertical pull\tvertical pull\tshoulder extension|grip\telbow flexion|scapular retraction|scapular depression\tshoulder~150 30|elbow~30 120\t\tlatissimus dorsi|teres major|finger flexors\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis|wrist flexors|wrist extensors\tbiceps long head~0.39|brachialis~0.5\tnone\tadvanced\theavy\trope\t1\ttowel pull-up|towel hang\t\t\t',
    'alternating rope wave\tbattle rope wave|battle rope|battling rope|alternating waves|battle rope alternating wave|heavy rope wave|rope waves\trope\tdynamic\tstanding\t\t1\t\t\tshoulder flexion\tshoulder extension|grip\t\t\tanterior deltoid\tlatissimus dorsi|teres major|clavicular chest|coracobrachialis|finger flexors\t\tnone\tnovice\tlight\trope\t1\t\tdouble rope wave\t\t',
    'double rope wave\tdouble-arm wave|battle rope double wave|two-arm rope wave\trope\tdynamic\tstanding\t\t\t\t\tshoulder flexion\tshoulder extension|trunk extension|grip\t\t\tanterior deltoid\terector spinae|multifidus|latissimus dorsi|teres major|clavicular chest|coracobrachialis|finger flexors\t\tnone\tnovice\tlight\trope\t1\talternating rope wave\trope slam\t\t',
    'rope slam\tbattle rope slam|heavy rope slam|double-arm rope slam|power slam with rope\trope\tballistic\tstanding\t\t\t\t\tshoulder extension|shoulder flexion\ttrunk flexion|grip\t\t\tlatissimus dorsi|teres major|anterior deltoid\trectus abdominis|clavicular chest|posterior deltoid|coracobrachialis|triceps long head|finger flexors\t\tnone\tnovice\tlight\trope\t1\tdouble rope wave\t\t\t',
    'rope outward circles\trope circles|battle rope circles|outside circles\trope\tdynamic\tstanding\t\t\t\t\tshoulder abduction\tshoulder flexion|grip\t\t\tmiddle deltoid\tanterior deltoid|supraspinatus|finger flexors\t\tnone\tnovice\tlight\trope\t1\talternating rope wave\t\t\t',
    'sled row\tstanding sled row|sled pull row|backward sled row|strap sled row\tsled\tdynamic\tstanding\t\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk extension\tshoulder~80 -5|elbow~5 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\terector spinae|multifidus|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.68\tnone\tnovice\theavy\tsled\t1\tband row|suspension row\trope sled pull\t\t',
    'rope sled pull\tarm-over-arm sled pull|hand-over-hand sled pull|hand-over-hand rope pull|seated rope sled pull|arm-over-arm pull\tsled\tdynamic\tstanding\t\t1\thorizontal pull\thorizontal pull\tshoulder extension|grip\telbow flexion|scapular retraction|trunk extension\tshoulder~80 -5|elbow~5 100\t\tlatissimus dorsi|teres major|finger flexors\terector spinae|multifidus|middle trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis|wrist flexors|wrist extensors\tbiceps long head~0.55|brachialis~0.68\tnone\tintermediate\theavy\tsled|rope\t1\tsled row\t\t\t',
    'sled chest press\tsled press-out|explosive sled press|sled push-out\tsled\tdynamic\tstanding\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\theavy\tsled\t\tstanding cable chest press\tmedicine ball chest pass\t\t',
    'sled face pull\tstrap sled face pull|sled rear-shoulder row\tsled\tdynamic\tstanding\t\t\thorizontal pull\thorizontal pull\tshoulder horizontal abduction|scapular retraction\tshoulder external rotation|elbow flexion\telbow~10 100\t\tmiddle trapezius|rhomboids|posterior deltoid\tlower trapezius|middle deltoid|infraspinatus|teres minor|biceps long head|biceps short head|brachialis\tbrachialis~0.67\tnone\tnovice\tlight\tsled\t1\tband face pull\tsled row\t\t',
    'sled triceps extension\tsled overhead extension|strap sled triceps extension\tsled\tdynamic\tstanding\t\t\t\t\telbow extension\t\tshoulder~165 165|elbow~125 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.76|triceps lateral head~0.53|triceps medial head~0.53\tnone\tnovice\tlight\tsled\t\toverhead cable triceps extension\t\t\t',
    'bear crawl\tbear walk|forward bear crawl|baby bear crawl|leopard crawl\tbodyweight\tdynamic\tquadruped\t\t\t\t\ttrunk flexion\tscapular protraction|shoulder flexion|elbow extension\thip~75 100|knee~80 100|ankle~10 10\t\trectus abdominis\texternal oblique|internal oblique|serratus anterior|anterior deltoid|triceps long head|triceps lateral head|triceps medial head\t\tnone\tnovice\tlight\tfloor\t\tbear hold\tbear crawl with drag\t\t',
    'bear crawl with drag\tloaded bear crawl|sandbag drag bear crawl\tsandbag\tdynamic\tquadruped\t\t\t\t\ttrunk flexion\tscapular protraction|shoulder flexion|elbow extension|trunk rotation\thip~75 100|knee~80 100|ankle~10 10\t\trectus abdominis\texternal oblique|internal oblique|serratus anterior|anterior deltoid|triceps long head|triceps lateral head|triceps medial head\t\tnone\tintermediate\tlight\tsandbag|floor\t\tbear crawl|plank drag\t\t\t',
    'lateral bear crawl\tsideways bear crawl|side bear crawl\tbodyweight\tdynamic\tquadruped\t\t\t\t\ttrunk flexion|trunk rotation\tscapular protraction|shoulder flexion|elbow extension\thip~75 100|knee~80 100|ankle~10 10\t\trectus abdominis|external oblique|internal oblique\ttransversus abdominis|serratus anterior|anterior deltoid|triceps long head|triceps lateral head|triceps medial head\t\tnone\tnovice\tlight\tfloor\t\tbear crawl\t\t\t',
    'crab walk\tcrab crawl|backward crawl|reverse crawl\tbodyweight\tisometric\tsupported\t\t\t\t\telbow extension\tshoulder extension|hip extension\thip~45|knee~90|ankle~0|shoulder~-45|elbow~5\t\ttriceps long head|triceps lateral head|triceps medial head\tgluteus maximus|adductor magnus|latissimus dorsi|teres major\tgluteus maximus~0.66|adductor magnus~0.32|triceps long head~-0.0|triceps lateral head~0.01|triceps medial head~0.01\tnone\tnovice\tlight\tfloor\t\treverse plank\t\t\t',
    'inchworm\twalk-out|hand walk-out|inchworm walk-out|plank walk-out\tbodyweight\tdynamic\tprone\t\t\t\t\ttrunk flexion\tshoulder flexion|scapular protraction\thip~5 90|knee~5 5|ankle~0 0|shoulder~160 90|elbow~5 5\t\trectus abdominis\texternal oblique|internal oblique|serratus anterior|anterior deltoid\t\tnone\tnovice\tlight\tfloor\t\thigh plank\tab wheel rollout\t\t',
    'countermovement jump\tCMJ|vertical jump|bodyweight squat jump|jump|vertical leap|bodyweight jump squat\tbodyweight\tplyometric\tstanding\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\t\thip~80 0|knee~85 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.41|vastus medialis~0.41|vastus intermedius~0.41|gluteus maximus~0.6|adductor magnus~0.3|soleus~0.56\tnone\tnovice\tlight\tfloor\t\tsquat jump|snap-down\tdepth jump|tuck jump\t\t',
    'box jump\tjump to box|box jumps onto box|standing box jump\tbox\tplyometric\tstanding\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\t\thip~80 0|knee~85 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.41|vastus medialis~0.41|vastus intermedius~0.41|gluteus maximus~0.6|adductor magnus~0.3|soleus~0.56\tnone\tnovice\tlight\tbox\t\tcountermovement jump\tseated box jump|depth jump\t\t',
    'broad jump\tstanding long jump|standing broad jump|SLJ|long jump standing|horizontal jump\tbodyweight\tplyometric\tstanding\t\t\tjump\tjump\thip extension|knee extension|plantarflexion\t\thip~90 0|knee~85 0|ankle~25 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.41|vastus medialis~0.41|vastus intermedius~0.41|gluteus maximus~0.63|adductor magnus~0.35|soleus~0.6\tnone\tnovice\tlight\tfloor\t\tcountermovement jump\trepeated broad jump\t\t',
    'squat jump\tstatic squat jump|paused squat jump|non-countermovement jump|static jump|SJ\tbodyweight\tplyometric\tstanding\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\t\thip~80 0|knee~90 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.43|vastus medialis~0.43|vastus intermedius~0.43|gluteus maximus~0.6|adductor magnus~0.3|soleus~0.56\tnone\tnovice\tlight\tfloor\t\tbodyweight squat\tcountermovement jump\t\t',
    'depth jump\tdrop jump for height|depth drop jump|box depth jump|depth jump to box\tbox\tplyometric\tstanding\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\t\thip~60 0|knee~75 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.36|vastus medialis~0.36|vastus intermedius~0.36|gluteus maximus~0.52|adductor magnus~0.2|soleus~0.56\tnone\tadvanced\tlight\tbox|floor\t\tdrop landing|countermovement jump\t\tDrop height and number of contacts count, not hard sets.\t',
    'drop jump\tfast drop jump|reactive drop jump|DJ|rebound drop jump\tbox\tplyometric\tstanding\t\t\tjump\tjump\tplantarflexion|knee extension\thip extension\thip~30 0|knee~40 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gastrocnemius|soleus\tgluteus maximus\tvastus lateralis~0.2|vastus medialis~0.2|vastus intermedius~0.2|gluteus maximus~0.37|gastrocnemius~0.68|soleus~0.56\tnone\tadvanced\tlight\tbox|floor\t\tpogo jump|drop landing\t\t\t',
    'tuck jump\tknee-tuck jump|tuck jumps in place|repeated tuck jump\tbodyweight\tplyometric\tstanding\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\thip flexion\thip~70 0|knee~75 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.36|vastus medialis~0.36|vastus intermedius~0.36|gluteus maximus~0.56|adductor magnus~0.25|soleus~0.56\tnone\tintermediate\tlight\tfloor\t\tcountermovement jump\thurdle jump\t\t',
    'hurdle jump\tdouble-leg hurdle jump|hurdle hop|repeated hurdle jump|barrier jump\tbodyweight\tplyometric\tstanding\t\t\tjump\tjump\tplantarflexion|knee extension|hip extension\t\thip~45 0|knee~50 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|gastrocnemius|soleus\t\tvastus lateralis~0.25|vastus medialis~0.25|vastus intermedius~0.25|gluteus maximus~0.45|adductor magnus~0.14|gastrocnemius~0.65|soleus~0.56\tnone\tintermediate\tlight\thurdles|floor\t\tpogo jump|tuck jump\tdepth jump\t\t',
    'pogo jump\tpogo|pogo hop|ankle hop|ankle jump|stiff-leg hop|ankle bounce|double-leg pogo\tbodyweight\tplyometric\tstanding\t\t\tjump\tjump\tplantarflexion\t\thip~10 0|knee~15 5|ankle~15 -30\t\tgastrocnemius|soleus\t\tgastrocnemius~0.7|soleus~0.53\tnone\tnovice\tlight\tfloor\t\tjump rope\tsingle-leg pogo|drop jump\t\t',
    'jump rope\tskipping rope|rope skipping|rope jump|rope jumping|double unders|skip rope\trope\tplyometric\tstanding\t\t\tjump\tjump\tplantarflexion\t\thip~10 5|knee~15 5|ankle~12 -25\t\tgastrocnemius|soleus\t\tgastrocnemius~0.71|soleus~0.54\tnone\tnovice\tlight\tfloor|rope\t\tbodyweight calf raise\tpogo jump\t\t',
    'seated box jump\tseated jump|seated jump to box|box-seated jump|seated vertical jump\tbodyweight\tplyometric\tseated\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\t\thip~85 0|knee~90 0|ankle~15 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.43|vastus medialis~0.43|vastus intermedius~0.43|gluteus maximus~0.62|adductor magnus~0.32|soleus~0.53\tnone\tintermediate\tlight\tbox\t\tsquat jump|box jump\tkneeling jump\t\t',
    'kneeling jump\tknee jump|jump from knees|kneeling jump to squat|kneeling to box jump\tbodyweight\tplyometric\tkneeling\t\t\tjump\tjump\thip extension|knee extension\tplantarflexion\thip~90 0|knee~110 20|ankle~-20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.6|vastus medialis~0.6|vastus intermedius~0.6|gluteus maximus~0.63|adductor magnus~0.35\tnone\tadvanced\tlight\tfloor\t\tseated box jump\t\t\t',
    'repeated broad jump\tcontinuous broad jump|consecutive broad jumps|triple broad jump|multiple broad jumps|frog jump|frog leap\tbodyweight\tplyometric\tstanding\t\t\tjump\tjump\thip extension|knee extension|plantarflexion\t\thip~85 0|knee~85 0|ankle~25 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.41|vastus medialis~0.41|vastus intermedius~0.41|gluteus maximus~0.62|adductor magnus~0.32|soleus~0.6\tnone\tintermediate\tlight\tfloor\t\tbroad jump\tbounding\t\t',
    'lateral hurdle jump\tside-to-side jump|lateral barrier jump|lateral line hop|lateral jump|lateral box jump\tbodyweight\tplyometric\tstanding\t\t\tjump\tjump\tplantarflexion|knee extension|hip extension\thip abduction\thip~45 0|knee~50 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|gastrocnemius|soleus\tgluteus medius|gluteus minimus\tvastus lateralis~0.25|vastus medialis~0.25|vastus intermedius~0.25|gluteus maximus~0.45|adductor magnus~0.14|gastrocnemius~0.65|soleus~0.56\tnone\tintermediate\tlight\thurdles|floor\t\tpogo jump|lateral bound\t\t\t',
    'rotational jump\t180-degree jump|jump turn|90-degree jump|quarter-turn jump|rotational box jump\tbodyweight\tplyometric\tstanding\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\t\thip~75 0|knee~80 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.39|vastus medialis~0.39|vastus intermedius~0.39|gluteus maximus~0.58|adductor magnus~0.27|soleus~0.56\tnone\tintermediate\tlight\tfloor\t\tcountermovement jump\t\t\t',
    'band-assisted jump\tassisted jump|overspeed jump|accelerated jump|band-assisted vertical jump\tband\tplyometric\tstanding\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\t\thip~65 0|knee~70 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.34|vastus medialis~0.34|vastus intermedius~0.34|gluteus maximus~0.54|adductor magnus~0.23|soleus~0.56\tnone\tintermediate\tlight\tband|rack\t\tcountermovement jump\t\t\t',
    'barbell squat jump\tbarbell jump squat|jump squat|loaded squat jump|weighted jump squat|loaded jump squat|loaded jump\tbarbell\tballistic\tstanding\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\t\thip~75 0|knee~80 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.39|vastus medialis~0.39|vastus intermedius~0.39|gluteus maximus~0.58|adductor magnus~0.27|soleus~0.56\tmoderate\tintermediate\tlight\tbarbell|rack\t\tdumbbell squat jump|trap bar jump\t\t\t',
    'trap bar jump\thex bar jump|trap bar jump squat|hex bar jump squat|trap bar squat jump\ttrap bar\tballistic\tstanding\tneutral\t\tjump\tjump\thip extension|knee extension|plantarflexion\t\thip~70 0|knee~65 0|ankle~15 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.32|vastus medialis~0.32|vastus intermedius~0.32|gluteus maximus~0.56|adductor magnus~0.25|soleus~0.53\tmoderate\tintermediate\tlight\ttrap bar\t1\tdumbbell squat jump\tbarbell squat jump\t\t',
    'dumbbell squat jump\tDB squat jump|dumbbell jump squat|dumbbell countermovement jump|kettlebell squat jump|goblet squat jump\tdumbbell\tballistic\tstanding\tneutral\t\tjump\tjump\tknee extension|hip extension|plantarflexion\t\thip~75 0|knee~80 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.39|vastus medialis~0.39|vastus intermedius~0.39|gluteus maximus~0.58|adductor magnus~0.27|soleus~0.56\tlow\tnovice\tlight\tdumbbell\t1\tcountermovement jump\ttrap bar jump|barbell squat jump\t\t',
    'band-resisted jump\tbanded jump|resistance band jump|band-resisted broad jump|banded broad jump\tband\tballistic\tstanding\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\t\thip~75 0|knee~80 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.39|vastus medialis~0.39|vastus intermedius~0.39|gluteus maximus~0.58|adductor magnus~0.27|soleus~0.56\tlow\tintermediate\tlight\tband|floor\t\tcountermovement jump\t\t\t',
    'guided-bar squat jump\tguided-bar jump squat|fixed-track jump squat\tguided bar\tballistic\tstanding\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\t\thip~75 0|knee~85 0|ankle~18 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.41|vastus medialis~0.41|vastus intermedius~0.41|gluteus maximus~0.58|adductor magnus~0.27|soleus~0.55\tmoderate\tintermediate\tlight\tguided bar\t\tcountermovement jump\tbarbell squat jump\t\t',
    'leg press jump\thorizontal jump on leg press|leg press throw|ballistic leg press|sled jump\tmachine\tballistic\tsupported\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\t\thip~100 55|knee~95 5|ankle~15 -25\trectus femoris~indirect~It shortens little, and would bend the very hip that the press straightens.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\trectus femoris\trectus femoris~0.34|vastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47|gluteus maximus~0.88|adductor magnus~0.66|soleus~0.57\tlow\tintermediate\tlight\tmachine leg press\t\tleg press\tcountermovement jump\t\t',
    'wall ball squat\twall ball|wall ball throw|wall ball shot|medicine ball squat to throw|medicine ball thruster\tmedicine ball\tballistic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\tshoulder flexion|shoulder abduction|elbow extension\thip~100 0|knee~110 0|ankle~22 -10|shoulder~60 160|elbow~130 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tanterior deltoid|middle deltoid|triceps long head|triceps lateral head|triceps medial head\tvastus lateralis~0.51|vastus medialis~0.51|vastus intermedius~0.51|gluteus maximus~0.67|adductor magnus~0.4|triceps long head~0.83|triceps lateral head~0.53|triceps medial head~0.53\tlow\tnovice\tlight\tmedicine ball|wall\t\tgoblet squat\tthruster\t\t',
    'burpee\tsquat thrust with jump|burpee with push-up|burpee jump\tbodyweight\tplyometric\tstanding\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\thip flexion|elbow extension\thip~90 0|knee~95 0|ankle~22 -25\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\ttriceps long head|triceps lateral head|triceps medial head\tvastus lateralis~0.45|vastus medialis~0.45|vastus intermedius~0.45|gluteus maximus~0.63|adductor magnus~0.35|soleus~0.62\tnone\tintermediate\tlight\tfloor\t\tcountermovement jump\t\t\t',
    'split squat jump\tjump lunge|lunge jump|jumping lunge|split jump|scissor jump|alternating split squat jump|cycled split squat jump|split lunge jump\tbodyweight\tplyometric\tsplit\t\t1\tjump\tjump\tknee extension|hip extension\tplantarflexion|hip abduction\thip~85 10|knee~90 15|ankle~15 -20\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus|soleus\tvastus lateralis~0.5|vastus medialis~0.5|vastus intermedius~0.5|gluteus maximus~0.66|adductor magnus~0.36|soleus~0.61\tnone\tintermediate\tlight\tfloor\t\tsplit squat|countermovement jump\tsingle-leg box jump\t\t',
    'single-leg hop\thop|one-leg hop|forward hop|single-leg forward hop|single-leg broad jump|hop for distance|single-leg jump|single-leg vertical jump\tbodyweight\tplyometric\tsingle leg\t\t1\tjump\tjump\tknee extension|hip extension|plantarflexion\thip abduction\thip~60 0|knee~60 0|ankle~22 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\tgluteus medius|gluteus minimus\tvastus lateralis~0.3|vastus medialis~0.3|vastus intermedius~0.3|gluteus maximus~0.52|adductor magnus~0.2|soleus~0.58\tnone\tintermediate\tlight\tfloor\t\thop and stick\ttriple hop\t\t',
    'hop and stick\tsingle-leg hop and stick|hop and hold|single-leg hop and hold|multidirectional hop and stick\tbodyweight\tplyometric\tsingle leg\t\t1\tjump\tjump\tknee extension|hip extension|plantarflexion\thip abduction\thip~50 0|knee~50 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|gastrocnemius|soleus\tgluteus medius|gluteus minimus\tvastus lateralis~0.25|vastus medialis~0.25|vastus intermedius~0.25|gluteus maximus~0.47|adductor magnus~0.16|gastrocnemius~0.65|soleus~0.56\tnone\tnovice\tlight\tfloor\t\tsingle-leg landing|snap-down\tsingle-leg hop\t\t',
    'triple hop\tsingle-leg triple hop|repeated hop|repeated single-leg hop|continuous hops|speed hop|crossover hop\tbodyweight\tplyometric\tsingle leg\t\t1\tjump\tjump\tplantarflexion|knee extension|hip extension\thip abduction\thip~50 0|knee~50 0|ankle~22 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|gastrocnemius|soleus\tgluteus medius|gluteus minimus\tvastus lateralis~0.25|vastus medialis~0.25|vastus intermedius~0.25|gluteus maximus~0.47|adductor magnus~0.16|gastrocnemius~0.66|soleus~0.58\tnone\tadvanced\tlight\tfloor\t\tsingle-leg hop\tbounding\t\t',
    'single-leg box jump\tone-leg box jump|single-leg jump to box|single-leg hop to box\tbox\tplyometric\tsingle leg\t\t1\tjump\tjump\tknee extension|hip extension|plantarflexion\thip abduction\thip~65 0|knee~65 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\tgluteus medius|gluteus minimus\tvastus lateralis~0.32|vastus medialis~0.32|vastus intermedius~0.32|gluteus maximus~0.54|adductor magnus~0.23|soleus~0.56\tnone\tadvanced\tlight\tbox\t\tbox jump|single-leg hop\t\t\t',
    'single-leg pogo\tsingle-leg pogo jump|single-leg pogo hop|single-leg ankle hop|one-leg pogo\tbodyweight\tplyometric\tsingle leg\t\t1\tjump\tjump\tplantarflexion\thip abduction\thip~10 0|knee~15 5|ankle~15 -30\t\tgastrocnemius|soleus\tgluteus medius|gluteus minimus\tgastrocnemius~0.7|soleus~0.53\tnone\tintermediate\tlight\tfloor\t\tpogo jump|single-leg calf raise\ttriple hop\t\t',
    'lateral bound\tskater jump|skater hop|skater bound|side bound|lateral bound and stick|speed skater jump\tbodyweight\tplyometric\tsingle leg\t\t1\tjump\tjump\thip extension|knee extension|hip abduction\tplantarflexion\thip~65 0|knee~65 0|ankle~20 -25\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|gluteus medius|gluteus minimus|adductor magnus\ttensor fasciae latae|soleus\tvastus lateralis~0.32|vastus medialis~0.32|vastus intermedius~0.32|gluteus maximus~0.54|tensor fasciae latae~0.74|adductor magnus~0.23|soleus~0.61\tnone\tintermediate\tlight\tfloor\t\thop and stick|lateral lunge\tlateral hurdle jump\t\t',
    'bounding\tbounds|alternate-leg bound|alternating bounds|power bound|horizontal bounds|running bounds\tbodyweight\tplyometric\tsingle leg\t\t1\tjump\tjump\thip extension|plantarflexion|knee extension\thip abduction\thip~45 -10|knee~45 5|ankle~20 -30\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|gastrocnemius|soleus\tgluteus medius|gluteus minimus\tbiceps femoris long head~0.51|semitendinosus~0.51|semimembranosus~0.51|vastus lateralis~0.25|vastus medialis~0.25|vastus intermedius~0.25|gluteus maximus~0.39|adductor magnus~0.12|gastrocnemius~0.65|soleus~0.56\tnone\tadvanced\tlight\ttrack\t\tpower skip|single-leg hop\t\t\t',
    'power skip\tskip for height|skipping for height|skip for distance|A-skip\tbodyweight\tplyometric\tsingle leg\t\t1\tjump\tjump\tplantarflexion|hip extension|knee extension\thip flexion\thip~35 0|knee~35 0|ankle~18 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|gastrocnemius|soleus\tadductor magnus\tvastus lateralis~0.18|vastus medialis~0.18|vastus intermedius~0.18|gluteus maximus~0.4|adductor magnus~0.1|gastrocnemius~0.68|soleus~0.55\tnone\tnovice\tlight\ttrack\t\tjump rope\tbounding\t\t',
    'explosive step-up\tstep-up jump|jumping step-up|alternating push-off|box push-off|plyometric step-up|alternating step-up jump\tbox\tplyometric\tsingle leg\t\t1\tjump\tjump\tknee extension|hip extension|plantarflexion\thip abduction\thip~75 0|knee~80 0|ankle~18 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\tgluteus medius|gluteus minimus\tvastus lateralis~0.39|vastus medialis~0.39|vastus intermedius~0.39|gluteus maximus~0.58|adductor magnus~0.27|soleus~0.55\tnone\tintermediate\tlight\tbox\t\tbodyweight step-up\tsingle-leg box jump\t\t',
    'drop landing\tdepth drop|altitude landing|altitude drop|drop and stick|box drop landing|landing from box|drop squat landing\tbox\tplyometric\tstanding\t\t\tjump\tjump\tknee extension|hip extension\tplantarflexion\thip~70 0|knee~75 0|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.36|vastus medialis~0.36|vastus intermedius~0.36|gluteus maximus~0.56|adductor magnus~0.25\tnone\tnovice\tlight\tbox|floor\t\tsnap-down\tdepth jump|single-leg landing\tThe work is the landing; the path is run from the caught position back to standing.\t',
    'single-leg landing\tsingle-leg drop landing|single-leg drop and stick|single-leg depth drop|single-leg altitude landing\tbox\tplyometric\tsingle leg\t\t1\tjump\tjump\tknee extension|hip extension\tplantarflexion|hip abduction\thip~50 0|knee~55 0|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.27|vastus medialis~0.27|vastus intermedius~0.27|gluteus maximus~0.47|adductor magnus~0.16\tnone\tintermediate\tlight\tbox|floor\t\tdrop landing\thop and stick\t\t',
    'snap-down\tdrop squat|rapid squat drop|landing drill|snap-down to landing\tbodyweight\tplyometric\tstanding\t\t\tjump\tjump\tknee extension|hip extension\t\thip~70 0|knee~75 0|ankle~18 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.36|vastus medialis~0.36|vastus intermedius~0.36|gluteus maximus~0.56|adductor magnus~0.25\tnone\tnovice\tlight\tfloor\t\tbodyweight squat\tdrop landing|squat jump\t\t',
    'sled push\theavy sled push|push sled|weighted sled push|sled drive|sled march\tsled\tdynamic\tstanding\t\t1\t\t\tknee extension|hip extension|plantarflexion\t\thip~100 20|knee~95 15|ankle~25 -20\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.52|vastus medialis~0.52|vastus intermedius~0.52|gluteus maximus~0.75|adductor magnus~0.48|soleus~0.68\tlow\tnovice\theavy\tsled|track\t\tsled drag|step-up\tsled sprint\t\t',
    'sled drag\tforward sled drag|sled pull forward|sled pull|harness sled drag|sled tow|sled walk|forward sled pull\tsled\tdynamic\tstanding\t\t1\t\t\thip extension|knee extension|plantarflexion\t\thip~65 0|knee~65 20|ankle~22 -25\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tbiceps femoris long head~0.51|semitendinosus~0.51|semimembranosus~0.51|vastus lateralis~0.42|vastus medialis~0.42|vastus intermedius~0.42|gluteus maximus~0.54|adductor magnus~0.23|soleus~0.62\tnone\tnovice\theavy\tsled|track|harness\t\t\tsled push|resisted sprint\t\t',
    'backward sled drag\treverse sled drag|backward sled pull|backward sled walk|reverse sled pull|backward sled|reverse sled walk\tsled\tdynamic\tstanding\t\t1\t\t\tknee extension\tplantarflexion\thip~60 25|knee~85 20|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius\tsoleus\tvastus lateralis~0.5|vastus medialis~0.5|vastus intermedius~0.5|soleus~0.84\tnone\tnovice\theavy\tsled|track\t1\tterminal knee extension\tsled push\t\t',
    'lateral sled drag\tside sled drag|lateral sled pull|sideways sled drag|crossover sled drag|lateral sled walk\tsled\tdynamic\tstanding\t\t1\t\t\thip abduction|hip adduction\tknee extension\thip~35 15|knee~35 10|ankle~15 0\t\tgracilis|gluteus medius|gluteus minimus|adductor magnus|adductor longus|adductor brevis|pectineus\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|tensor fasciae latae\tvastus lateralis~0.23|vastus medialis~0.23|vastus intermedius~0.23|gracilis~0.53|gluteus maximus~0.48|tensor fasciae latae~0.79|adductor magnus~0.15|adductor longus~0.35|adductor brevis~0.35\tnone\tnovice\tlight\tsled|track|harness\t\tlateral band walk\t\t\t',
    'sled sprint\tlight sled push|sled push sprint|sprint sled push|sled push for speed|fast sled push\tsled\tballistic\tstanding\t\t1\t\t\thip extension|knee extension|plantarflexion\t\thip~90 5|knee~85 15|ankle~20 -25\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tbiceps femoris long head~0.54|semitendinosus~0.54|semimembranosus~0.54|vastus lateralis~0.48|vastus medialis~0.48|vastus intermedius~0.48|gluteus maximus~0.66|adductor magnus~0.37|soleus~0.61\tlow\tintermediate\tlight\tsled|track\t\tsled push\tresisted sprint\t\t',
    'resisted sprint\tsled-towing sprint|sled sprint tow|towed sprint|resisted sprinting|sled pull sprint|sled-resisted sprint|sled tow sprint\tsled\tballistic\tstanding\t\t1\t\t\thip extension|plantarflexion|knee extension\t\thip~75 -10|knee~70 15|ankle~20 -30\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tbiceps femoris long head~0.51|semitendinosus~0.51|semimembranosus~0.51|vastus lateralis~0.41|vastus medialis~0.41|vastus intermedius~0.41|gluteus maximus~0.53|adductor magnus~0.24|soleus~0.56\tnone\tintermediate\tlight\tsled|track|harness\t\tsled drag|hill sprint\t\t\t',
    'bear-crawl sled drag\tbear crawl sled pull|sled bear crawl|quadruped sled drag\tsled\tdynamic\tquadruped\t\t1\t\t\tknee extension|hip extension\tplantarflexion\thip~105 60|knee~100 45|ankle~20 -15\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus\tvastus lateralis~0.67|vastus medialis~0.67|vastus intermedius~0.67|gluteus maximus~0.91|adductor magnus~0.72|soleus~0.69\tnone\tintermediate\tlight\tsled|floor|harness\t\tsled drag\tsled push\t\t',
    'sled hip extension walk\tlong-stride sled drag|sled powerwalk|sled lunge walk|straight-leg sled drag|strap between legs sled walk\tsled\tdynamic\tstanding\t\t1\t\thip hinge\thip extension\tplantarflexion|knee extension\thip~65 -10|knee~25 5|ankle~15 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tgastrocnemius|soleus\tbiceps femoris long head~0.6|semitendinosus~0.6|semimembranosus~0.6|gluteus maximus~0.49|adductor magnus~0.2|gastrocnemius~0.72|soleus~0.61\tnone\tnovice\tlight\tsled|track|harness\t\tsled drag\tresisted sprint\t\t',
    'sprint\tflat sprint|sprinting|acceleration|acceleration sprint|flying sprint|build-up sprint\tbodyweight\tplyometric\tsingle leg\t\t1\t\t\thip extension|plantarflexion|knee extension\thip flexion|knee flexion\thip~70 -10|knee~70 15|ankle~20 -30\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tbiceps femoris long head~0.49|semitendinosus~0.49|semimembranosus~0.49|vastus lateralis~0.41|vastus medialis~0.41|vastus intermedius~0.41|gluteus maximus~0.51|adductor magnus~0.22|soleus~0.56\tnone\tintermediate\tlight\ttrack\t\thill sprint\tresisted sprint\t\t',
    'hill sprint\tuphill sprint|incline sprint|hill run|uphill run\tbodyweight\tplyometric\tsingle leg\t\t1\t\t\thip extension|plantarflexion|knee extension\thip flexion\thip~75 -5|knee~75 15|ankle~25 -30\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tbiceps femoris long head~0.51|semitendinosus~0.51|semimembranosus~0.51|vastus lateralis~0.44|vastus medialis~0.44|vastus intermedius~0.44|gluteus maximus~0.55|adductor magnus~0.26|soleus~0.6\tnone\tnovice\tlight\thill\t\tloaded hill walk\tsprint\t\t',
    'stair run\tstair sprint|stair running|stadium run|stair bounding|step sprint\tbodyweight\tplyometric\tsingle leg\t\t1\t\t\tknee extension|hip extension|plantarflexion\thip flexion\thip~70 0|knee~75 5|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.39|vastus medialis~0.39|vastus intermedius~0.39|gluteus maximus~0.56|adductor magnus~0.25|soleus~0.56\tnone\tnovice\tlight\tstairs\t\tloaded stair climb\thill sprint\t\t',
    'yoke carry\tyoke walk|super yoke|yoke|barbell back carry|frame yoke carry\tbarbell\tcarry\tstanding\t\t1\tcarry\tcarry\ttrunk extension\thip extension|knee extension|plantarflexion\thip~25 -5|knee~25 5|ankle~10 -15\t\terector spinae|multifidus\tgluteus maximus|soleus\tgluteus maximus~0.32|soleus~0.61\thigh\tadvanced\theavy\tyoke|floor\t\tsandbag carry\t\t\t',
    'sandbag carry\tsandbag bear-hug carry|bear-hug carry|sandbag walk|sandbag front carry|odd-object carry|stone carry|keg carry\tsandbag\tcarry\tstanding\t\t1\tcarry\tcarry\ttrunk extension\thip extension\thip~30 0|knee~25 5|ankle~10 -15\t\terector spinae|multifidus\tgluteus maximus\tgluteus maximus~0.37\tmoderate\tnovice\theavy\tsandbag|floor\t1\t\tyoke carry\t\t',
    'marching carry\tfarmer march|loaded march in place|high-knee carry|suitcase march|marching farmer carry|loaded high-knee march\tdumbbell\tcarry\tsingle leg\t\t1\tcarry\tcarry\tgrip|hip flexion\thip abduction|trunk side bend\thip~0 90|knee~5 90|ankle~0 0\t\tiliacus|psoas major|finger flexors\tsartorius|gluteus medius|gluteus minimus|tensor fasciae latae|external oblique|internal oblique|quadratus lumborum|wrist flexors|wrist extensors\tsartorius~0.63|tensor fasciae latae~0.65|iliacus~0.55|psoas major~0.55\tmoderate\tnovice\tlight\tdumbbell|floor\t1\tstanding knee raise\t\t\t',
    'ruck\trucking|loaded march|weighted walk|pack march|ruck march|weighted vest walk|backpack walk\tnone\tcarry\tstanding\t\t1\tcarry\tcarry\tplantarflexion\thip extension\thip~30 -10|knee~20 5|ankle~12 -20\t\tgastrocnemius|soleus\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus\tbiceps femoris long head~0.53|semitendinosus~0.53|semimembranosus~0.53|gluteus maximus~0.32|gastrocnemius~0.72|soleus~0.59\tmoderate\tnovice\tlight\ttrack\t\t\tloaded hill walk\t\t',
    'loaded hill walk\tincline walk|weighted hill walk|uphill walk|incline treadmill walk|uphill ruck|loaded incline walk\tsandbag\tcarry\tstanding\t\t1\tcarry\tcarry\thip extension|plantarflexion\tknee extension\thip~48 10|knee~40 10|ankle~22 -20\t\tgluteus maximus|adductor magnus|gastrocnemius|soleus\tvastus lateralis|vastus medialis|vastus intermedius\tvastus lateralis~0.25|vastus medialis~0.25|vastus intermedius~0.25|gluteus maximus~0.51|adductor magnus~0.18|gastrocnemius~0.71|soleus~0.66\tlow\tnovice\tlight\thill\t\truck\thill sprint|loaded stair climb\t\t',
    'loaded stair climb\tstair climb|weighted stair climb|stair climb with load|weighted vest stair climb|stair walk|stair machine\tsandbag\tcarry\tstanding\t\t1\tcarry\tcarry\tknee extension|hip extension\tplantarflexion\thip~65 0|knee~70 5|ankle~18 -20\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus\tvastus lateralis~0.37|vastus medialis~0.37|vastus intermedius~0.37|gluteus maximus~0.54|adductor magnus~0.23|soleus~0.63\tlow\tnovice\tlight\tstairs\t\tbodyweight step-up\tstep-up|stair run\t\t',
    'backward walk\tbackward treadmill walk|reverse walk|backwards walking|retro walk|backward uphill walk|backward walk on unpowered treadmill\tbodyweight\tdynamic\tstanding\t\t1\t\t\tknee extension\tplantarflexion\thip~35 10|knee~50 10|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius\t\tvastus lateralis~0.3|vastus medialis~0.3|vastus intermedius~0.3\tnone\tnovice\tlight\ttreadmill|track\t\t\tbackward sled drag\t\t',
    'deadlift\tconventional deadlift|barbell deadlift|DL|BB deadlift|deadlift from the floor\tbarbell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\tknee extension|trunk extension\thip~80 0|knee~60 0|ankle~10 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|erector spinae|multifidus\tbiceps femoris long head~0.6|semitendinosus~0.6|semimembranosus~0.6|vastus lateralis~0.3|vastus medialis~0.3|vastus intermedius~0.3|gluteus maximus~0.6|adductor magnus~0.3\thigh\tintermediate\theavy\tbarbell|floor\t1\tkettlebell deadlift|trap bar deadlift\tdeficit deadlift|paused deadlift\t\t',
    'Romanian deadlift\tRDL|barbell RDL|barbell Romanian deadlift|Romanian\tbarbell\tdynamic\tstanding\toverhand\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~90 0|knee~15 15|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.69|semitendinosus~0.69|semimembranosus~0.69|gluteus maximus~0.63|adductor magnus~0.35\thigh\tintermediate\theavy\tbarbell\t1\tdumbbell Romanian deadlift|kettlebell deadlift\tdeficit Romanian deadlift|snatch-grip Romanian deadlift\t\t',
    'stiff-leg deadlift\tSLDL|stiff-legged deadlift|straight-leg deadlift|barbell stiff-leg deadlift|stiff leg DL\tbarbell\tdynamic\tstanding\toverhand\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~90 0|knee~10 5|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.71|semitendinosus~0.71|semimembranosus~0.71|gluteus maximus~0.63|adductor magnus~0.35\thigh\tintermediate\theavy\tbarbell|floor\t1\tdumbbell stiff-leg deadlift|Romanian deadlift\tdeficit stiff-leg deadlift\t\t',
    'dumbbell Romanian deadlift\tDB RDL|dumbbell RDL|DB Romanian deadlift|kettlebell Romanian deadlift|KB RDL\tdumbbell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~90 0|knee~15 15|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.69|semitendinosus~0.69|semimembranosus~0.69|gluteus maximus~0.63|adductor magnus~0.35\tmoderate\tnovice\tlight\tdumbbell\t1\tkettlebell deadlift|band good morning\tRomanian deadlift|single-leg Romanian deadlift\t\t',
    'trap bar deadlift\thex bar deadlift|TBDL|trap-bar DL|high-handle trap bar deadlift|HBDL\ttrap bar\tdynamic\tstanding\tneutral\t\thip hinge\thip hinge\thip extension|knee extension\ttrunk extension\thip~80 0|knee~75 0|ankle~15 0\tbiceps femoris long head~indirect~The knee bends almost as far as in a squat, so it shortens little more than 1 cm; the lean of the trunk still loads it.|semitendinosus~indirect~The knee bends almost as far as in a squat, so it shortens little more than 1 cm; the lean of the trunk still loads it.|semimembranosus~indirect~The knee bends almost as far as in a squat, so it shortens little more than 1 cm; the lean of the trunk still loads it.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus|erector spinae|multifidus\tbiceps femoris long head~0.56|semitendinosus~0.56|semimembranosus~0.56|vastus lateralis~0.36|vastus medialis~0.36|vastus intermedius~0.36|gluteus maximus~0.6|adductor magnus~0.3\thigh\tnovice\theavy\ttrap bar|floor\t1\tkettlebell deadlift|dumbbell deadlift\tdeadlift|deficit trap bar deadlift\t\t',
    'sumo deadlift\twide-stance deadlift|sumo DL|barbell sumo deadlift\tbarbell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\tknee extension|hip adduction|trunk extension\thip~80 0|knee~65 0|ankle~5 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|gracilis|adductor longus|adductor brevis|pectineus|erector spinae|multifidus\tbiceps femoris long head~0.59|semitendinosus~0.59|semimembranosus~0.59|vastus lateralis~0.32|vastus medialis~0.32|vastus intermedius~0.32|gracilis~0.52|gluteus maximus~0.6|adductor magnus~0.3|adductor longus~0.23|adductor brevis~0.23\thigh\tintermediate\theavy\tbarbell|floor\t1\tkettlebell sumo deadlift|deadlift\tdeficit deadlift\t\t',
    'single-leg Romanian deadlift\tSL RDL|single-leg RDL|one-leg RDL|dumbbell single-leg RDL|single-leg deadlift|single-leg stiff-leg deadlift\tdumbbell\tdynamic\tsingle leg\t\t1\thip hinge\thip hinge\thip extension\thip abduction|trunk extension\thip~85 0|knee~20 15|ankle~2 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus|erector spinae|multifidus\tbiceps femoris long head~0.66|semitendinosus~0.66|semimembranosus~0.66|gluteus maximus~0.62|adductor magnus~0.32\tlow\tintermediate\tlight\tdumbbell\t1\tB-stance Romanian deadlift|dumbbell Romanian deadlift\tbarbell single-leg Romanian deadlift\t\t',
    'good morning\tbarbell good morning|GM|bent-knee good morning\tbarbell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~80 0|knee~20 20|ankle~5 5\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.64|semitendinosus~0.64|semimembranosus~0.64|gluteus maximus~0.6|adductor magnus~0.3\thigh\tintermediate\theavy\tbarbell|rack\t\tband good morning|dumbbell Romanian deadlift\tsafety bar good morning\t\t',
    'kettlebell deadlift\tKB deadlift|KB DL\tkettlebell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\tknee extension|trunk extension\thip~75 0|knee~45 0|ankle~5 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|erector spinae|multifidus\tbiceps femoris long head~0.62|semitendinosus~0.62|semimembranosus~0.62|vastus lateralis~0.23|vastus medialis~0.23|vastus intermedius~0.23|gluteus maximus~0.58|adductor magnus~0.27\tlow\tnovice\tlight\tkettlebell\t1\tband pull-through|hip hinge drill\ttrap bar deadlift|kettlebell swing\t\t',
    'dumbbell deadlift\tDB deadlift|two-dumbbell deadlift\tdumbbell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\tknee extension|trunk extension\thip~80 0|knee~60 0|ankle~10 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|erector spinae|multifidus\tbiceps femoris long head~0.6|semitendinosus~0.6|semimembranosus~0.6|vastus lateralis~0.3|vastus medialis~0.3|vastus intermedius~0.3|gluteus maximus~0.6|adductor magnus~0.3\tmoderate\tnovice\theavy\tdumbbell\t1\tkettlebell deadlift\ttrap bar deadlift|deadlift\t\t',
    'dumbbell stiff-leg deadlift\tDB SLDL|DB stiff-leg deadlift|dumbbell straight-leg deadlift|dumbbell SLDL\tdumbbell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~90 0|knee~10 5|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.71|semitendinosus~0.71|semimembranosus~0.71|gluteus maximus~0.63|adductor magnus~0.35\tmoderate\tnovice\tlight\tdumbbell\t1\tdumbbell Romanian deadlift\tstiff-leg deadlift\t\t',
    'rack pull\tblock pull|deadlift from blocks|deadlift from pins|partial deadlift|block deadlift\tbarbell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~50 0|knee~25 0|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.6|semitendinosus~0.6|semimembranosus~0.6|gluteus maximus~0.47|adductor magnus~0.16\thigh\tintermediate\theavy\tbarbell|rack\t1\tkettlebell deadlift\tdeadlift\t\t',
    'deficit deadlift\tdeadlift off plate|deadlift from deficit\tbarbell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\tknee extension|trunk extension\thip~90 0|knee~75 0|ankle~15 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|erector spinae|multifidus\tbiceps femoris long head~0.59|semitendinosus~0.59|semimembranosus~0.59|vastus lateralis~0.36|vastus medialis~0.36|vastus intermedius~0.36|gluteus maximus~0.63|adductor magnus~0.35\thigh\tadvanced\theavy\tbarbell|plate|floor\t1\tdeadlift\t\t\t',
    'paused deadlift\tpause deadlift|deadlift with pause at the knee\tbarbell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\tknee extension|trunk extension\thip~80 0|knee~60 0|ankle~10 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|erector spinae|multifidus\tbiceps femoris long head~0.6|semitendinosus~0.6|semimembranosus~0.6|vastus lateralis~0.3|vastus medialis~0.3|vastus intermedius~0.3|gluteus maximus~0.6|adductor magnus~0.3\thigh\tadvanced\theavy\tbarbell|floor\t1\tdeadlift\tdeficit deadlift\t\t',
    'snatch-grip deadlift\twide-grip deadlift|snatch grip DL|SGDL\tbarbell\tdynamic\tstanding\twide\t\thip hinge\thip hinge\thip extension\tknee extension|trunk extension\thip~88 0|knee~70 0|ankle~12 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|erector spinae|multifidus\tbiceps femoris long head~0.59|semitendinosus~0.59|semimembranosus~0.59|vastus lateralis~0.34|vastus medialis~0.34|vastus intermedius~0.34|gluteus maximus~0.63|adductor magnus~0.34\thigh\tadvanced\theavy\tbarbell|floor\t1\tdeadlift\t\t\t',
    'snatch-grip Romanian deadlift\tsnatch-grip RDL|wide-grip RDL\tbarbell\tdynamic\tstanding\twide\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~95 0|knee~20 15|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.69|semitendinosus~0.69|semimembranosus~0.69|gluteus maximus~0.65|adductor magnus~0.37\thigh\tadvanced\theavy\tbarbell\t1\tRomanian deadlift\t\t\t',
    'deficit Romanian deadlift\tdeficit RDL|RDL off plate\tbarbell\tdynamic\tstanding\toverhand\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~98 0|knee~15 15|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.7|semitendinosus~0.7|semimembranosus~0.7|gluteus maximus~0.66|adductor magnus~0.39\thigh\tadvanced\theavy\tbarbell|plate\t1\tRomanian deadlift\t\t\t',
    'deficit stiff-leg deadlift\tdeficit SLDL|stiff-leg deadlift off plate\tbarbell\tdynamic\tstanding\toverhand\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~98 0|knee~10 5|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.73|semitendinosus~0.73|semimembranosus~0.73|gluteus maximus~0.66|adductor magnus~0.39\thigh\tadvanced\theavy\tbarbell|plate|floor\t1\tstiff-leg deadlift\t\t\t',
    'deficit trap bar deadlift\tlow-handle trap bar deadlift|deficit hex bar deadlift\ttrap bar\tdynamic\tstanding\tneutral\t\thip hinge\thip hinge\thip extension|knee extension\ttrunk extension\thip~88 0|knee~80 0|ankle~18 0\tbiceps femoris long head~indirect~The knee bends almost as far as in a squat, so it shortens little more than 1 cm; the lean of the trunk still loads it.|semitendinosus~indirect~The knee bends almost as far as in a squat, so it shortens little more than 1 cm; the lean of the trunk still loads it.|semimembranosus~indirect~The knee bends almost as far as in a squat, so it shortens little more than 1 cm; the lean of the trunk still loads it.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus|erector spinae|multifidus\tbiceps femoris long head~0.57|semitendinosus~0.57|semimembranosus~0.57|vastus lateralis~0.39|vastus medialis~0.39|vastus intermedius~0.39|gluteus maximus~0.63|adductor magnus~0.34\thigh\tintermediate\theavy\ttrap bar|plate|floor\t1\ttrap bar deadlift\t\t\t',
    'trap bar Romanian deadlift\ttrap bar RDL|hex bar RDL|hex bar Romanian deadlift\ttrap bar\tdynamic\tstanding\tneutral\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~88 0|knee~15 15|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.68|semitendinosus~0.68|semimembranosus~0.68|gluteus maximus~0.63|adductor magnus~0.34\thigh\tnovice\theavy\ttrap bar\t1\tdumbbell Romanian deadlift\tRomanian deadlift\t\t',
    'kettlebell sumo deadlift\tKB sumo deadlift|dumbbell sumo deadlift|sumo kettlebell deadlift\tkettlebell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\tknee extension|hip adduction|trunk extension\thip~80 0|knee~60 0|ankle~5 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|gracilis|adductor longus|adductor brevis|pectineus|erector spinae|multifidus\tbiceps femoris long head~0.6|semitendinosus~0.6|semimembranosus~0.6|vastus lateralis~0.3|vastus medialis~0.3|vastus intermedius~0.3|gracilis~0.54|gluteus maximus~0.6|adductor magnus~0.3|adductor longus~0.23|adductor brevis~0.23\tlow\tnovice\tlight\tkettlebell\t1\thip hinge drill\tsumo deadlift\t\t',
    'sumo Romanian deadlift\tsumo RDL|wide-stance RDL\tbarbell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\thip adduction|trunk extension\thip~85 0|knee~15 15|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tgracilis|adductor longus|adductor brevis|pectineus|erector spinae|multifidus\tbiceps femoris long head~0.67|semitendinosus~0.67|semimembranosus~0.67|gracilis~0.63|gluteus maximus~0.62|adductor magnus~0.32|adductor longus~0.22|adductor brevis~0.22\thigh\tintermediate\theavy\tbarbell\t1\tRomanian deadlift\t\t\t',
    'B-stance Romanian deadlift\tB-stance RDL|kickstand RDL|kickstand Romanian deadlift|staggered-stance RDL|split-stance RDL\tdumbbell\tdynamic\tsplit\t\t1\thip hinge\thip hinge\thip extension\thip abduction|trunk extension\thip~88 0|knee~15 15|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus|erector spinae|multifidus\tbiceps femoris long head~0.68|semitendinosus~0.68|semimembranosus~0.68|gluteus maximus~0.63|adductor magnus~0.34\tmoderate\tnovice\tlight\tdumbbell\t1\tdumbbell Romanian deadlift\tsingle-leg Romanian deadlift\t\t',
    'barbell single-leg Romanian deadlift\tbarbell single-leg RDL|BB SL RDL|barbell SL RDL\tbarbell\tdynamic\tsingle leg\t\t1\thip hinge\thip hinge\thip extension\thip abduction|trunk extension\thip~85 0|knee~20 15|ankle~2 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus|erector spinae|multifidus\tbiceps femoris long head~0.66|semitendinosus~0.66|semimembranosus~0.66|gluteus maximus~0.62|adductor magnus~0.32\tmoderate\tadvanced\theavy\tbarbell\t1\tsingle-leg Romanian deadlift\t\t\t',
    'landmine single-leg Romanian deadlift\tlandmine single-leg RDL|landmine SL RDL|angled-bar single-leg RDL\tbarbell\tdynamic\tsingle leg\t\t1\thip hinge\thip hinge\thip extension\thip abduction|trunk extension\thip~85 0|knee~20 15|ankle~2 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus|erector spinae|multifidus\tbiceps femoris long head~0.66|semitendinosus~0.66|semimembranosus~0.66|gluteus maximus~0.62|adductor magnus~0.32\tlow\tintermediate\tlight\tlandmine|barbell\t1\tB-stance Romanian deadlift\tsingle-leg Romanian deadlift\t\t',
    'bodyweight single-leg Romanian deadlift\tbodyweight single-leg RDL|single-leg hinge|single-leg hip hinge|single-leg reach|bodyweight SL RDL\tbodyweight\tdynamic\tsingle leg\t\t1\thip hinge\thip hinge\thip extension\thip abduction\thip~85 0|knee~20 15|ankle~2 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tbiceps femoris long head~0.66|semitendinosus~0.66|semimembranosus~0.66|gluteus maximus~0.62|adductor magnus~0.32\tnone\tnovice\tlight\tfloor\t\thip hinge drill\tsingle-leg Romanian deadlift\t\t',
    'suitcase deadlift\tone-arm deadlift|single-arm deadlift|kettlebell suitcase deadlift\tkettlebell\tdynamic\tstanding\tneutral\t1\thip hinge\thip hinge\thip extension\tknee extension|trunk extension|trunk side bend\thip~80 0|knee~60 0|ankle~10 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|external oblique|internal oblique|erector spinae|multifidus|quadratus lumborum\tbiceps femoris long head~0.6|semitendinosus~0.6|semimembranosus~0.6|vastus lateralis~0.3|vastus medialis~0.3|vastus intermedius~0.3|gluteus maximus~0.6|adductor magnus~0.3\tlow\tintermediate\tlight\tkettlebell\t1\tkettlebell deadlift\tdeadlift\t\t',
    'guided-bar Romanian deadlift\tguided-bar RDL|fixed-track RDL|guided-bar stiff-leg deadlift\tguided bar\tdynamic\tstanding\toverhand\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~88 0|knee~15 15|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.68|semitendinosus~0.68|semimembranosus~0.68|gluteus maximus~0.63|adductor magnus~0.34\thigh\tnovice\theavy\tguided bar\t1\tdumbbell Romanian deadlift\tRomanian deadlift\t\t',
    'cable Romanian deadlift\tcable RDL|cable stiff-leg deadlift|cable deadlift\tcable\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~88 0|knee~15 15|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.68|semitendinosus~0.68|semimembranosus~0.68|gluteus maximus~0.63|adductor magnus~0.34\tlow\tnovice\tlight\tcable\t1\tcable pull-through\tdumbbell Romanian deadlift\t\t',
    'cable pull-through\tpull-through|cable hip hinge|rope pull-through\tcable\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~85 0|knee~25 10|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.66|semitendinosus~0.66|semimembranosus~0.66|gluteus maximus~0.62|adductor magnus~0.32\tlow\tnovice\tlight\tcable\t1\tband pull-through\tkettlebell swing|Romanian deadlift\t\t',
    'band pull-through\tbanded pull-through|resistance band pull-through\tband\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\t\thip~85 0|knee~25 10|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\t\tbiceps femoris long head~0.66|semitendinosus~0.66|semimembranosus~0.66|gluteus maximus~0.62|adductor magnus~0.32\tnone\tnovice\tlight\tband|rack\t1\thip hinge drill\tcable pull-through\t\t',
    'hip hinge drill\thinge drill|dowel hip hinge|broomstick hinge|wall hinge|bodyweight hip hinge|bodyweight good morning\tnone\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\t\thip~80 0|knee~20 15|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\t\tbiceps femoris long head~0.65|semitendinosus~0.65|semimembranosus~0.65|gluteus maximus~0.6|adductor magnus~0.3\tnone\tnovice\tlight\tfloor\t\tglute bridge\tband good morning|kettlebell deadlift\t\t',
    'band good morning\tbanded good morning|resistance band good morning\tband\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~80 0|knee~20 15|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.65|semitendinosus~0.65|semimembranosus~0.65|gluteus maximus~0.6|adductor magnus~0.3\tlow\tnovice\tlight\tband\t\thip hinge drill\tgood morning|dumbbell Romanian deadlift\t\t',
    'safety bar good morning\tSSB good morning|safety squat bar good morning\tbarbell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~80 0|knee~20 20|ankle~5 5\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.64|semitendinosus~0.64|semimembranosus~0.64|gluteus maximus~0.6|adductor magnus~0.3\thigh\tintermediate\theavy\tbarbell|rack\t\tgood morning\t\t\t',
    'seated good morning\tseated barbell good morning\tbarbell\tdynamic\tseated\t\t\t\t\thip extension|trunk extension\t\thip~105 75|knee~90 90|ankle~0 0\t\tadductor magnus|erector spinae|multifidus\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus\tbiceps femoris long head~0.57|semitendinosus~0.57|semimembranosus~0.57|gluteus maximus~0.94|adductor magnus~0.8\tmoderate\tintermediate\tlight\tbarbell|rack|bench\t\tback extension\tgood morning\tThe lower back does as much of it as the hips.\t',
    'sandbag deadlift\tsandbag lift|odd-object deadlift\tsandbag\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\tknee extension|trunk extension\thip~85 0|knee~65 0|ankle~10 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|erector spinae|multifidus\tbiceps femoris long head~0.6|semitendinosus~0.6|semimembranosus~0.6|vastus lateralis~0.32|vastus medialis~0.32|vastus intermedius~0.32|gluteus maximus~0.62|adductor magnus~0.32\tmoderate\tintermediate\theavy\tsandbag|floor\t1\tkettlebell deadlift\tsandbag over shoulder\t\t',
    'isometric mid-thigh pull\tIMTP|isometric deadlift|rack isometric pull\tbarbell\tisometric\tstanding\t\t\t\t\thip extension|knee extension\ttrunk extension\thip~35|knee~40|ankle~10\trectus femoris~none~Held as in a squat: it would bend the hip that the hold keeps from bending.\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.53|semitendinosus~0.53|semimembranosus~0.53|vastus lateralis~0.4|vastus medialis~0.4|vastus intermedius~0.4|gluteus maximus~0.57|adductor magnus~0.23\thigh\tintermediate\theavy\tbarbell|rack\t1\t\track pull\t\t',
    'back extension\t45-degree back extension|hyperextension|45-degree hyperextension|45 degree hip extension|incline back extension\tbodyweight\tdynamic\tincline\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~85 0|knee~0 0|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.73|semitendinosus~0.73|semimembranosus~0.73|gluteus maximus~0.62|adductor magnus~0.32\tnone\tnovice\tlight\t45-degree bench\t\tprone hip extension|hip hinge drill\tweighted back extension|single-leg back extension\t\t',
    'weighted back extension\tweighted hyperextension|loaded back extension|barbell back extension|plate back extension\tplate\tdynamic\tincline\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~85 0|knee~0 0|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.73|semitendinosus~0.73|semimembranosus~0.73|gluteus maximus~0.62|adductor magnus~0.32\tlow\tintermediate\theavy\t45-degree bench|plate\t1\tback extension\tsingle-leg back extension\t\t',
    'single-leg back extension\tone-leg back extension|single-leg hyperextension|single-leg hip extension on bench\tbodyweight\tdynamic\tincline\t\t1\thip hinge\thip hinge\thip extension\ttrunk extension|hip abduction\thip~85 0|knee~0 0|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus|erector spinae|multifidus\tbiceps femoris long head~0.73|semitendinosus~0.73|semimembranosus~0.73|gluteus maximus~0.62|adductor magnus~0.32\tnone\tintermediate\tlight\t45-degree bench\t\tback extension\t\t\t',
    'horizontal back extension\tRoman chair back extension|90-degree back extension|GHD back extension|hip extension on Roman chair|GHD hip extension\tbodyweight\tdynamic\tprone\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~85 0|knee~0 0|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.73|semitendinosus~0.73|semimembranosus~0.73|gluteus maximus~0.62|adductor magnus~0.32\tnone\tintermediate\tlight\tglute-ham bench\t\tback extension\tweighted back extension|glute-ham raise\t\t',
    'back extension hold\tisometric back extension|trunk extension hold|Roman chair hold|isometric hip extension hold\tbodyweight\tisometric\tprone\t\t\t\t\thip extension|trunk extension\t\thip~5|knee~0|ankle~0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus|erector spinae|multifidus\t\tbiceps femoris long head~0.55|semitendinosus~0.55|semimembranosus~0.55|gluteus maximus~0.27|adductor magnus~0.03\tnone\tnovice\tlight\tglute-ham bench\t\tprone hip extension\tsingle-leg back extension hold\t\t',
    'single-leg back extension hold\tsingle-leg Roman chair hold|single-leg isometric back extension\tbodyweight\tisometric\tprone\t\t1\t\t\thip extension|trunk extension\thip abduction\thip~5|knee~5|ankle~0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus|erector spinae|multifidus\tgluteus medius|gluteus minimus\tbiceps femoris long head~0.53|semitendinosus~0.53|semimembranosus~0.53|gluteus maximus~0.27|adductor magnus~0.03\tnone\tintermediate\tlight\tglute-ham bench\t\tback extension hold\t\t\t',
    'reverse hyperextension\treverse hyper|reverse back extension\tmachine\tdynamic\tprone\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~85 -5|knee~10 5|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.69|semitendinosus~0.69|semimembranosus~0.69|gluteus maximus~0.59|adductor magnus~0.31\tnone\tnovice\theavy\tmachine reverse hyperextension\t\tbench reverse hyperextension\t\t\t',
    'bench reverse hyperextension\tbodyweight reverse hyper|ball reverse hyper|bodyweight reverse hyperextension\tbodyweight\tdynamic\tprone\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~75 -5|knee~5 5|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.68|semitendinosus~0.68|semimembranosus~0.68|gluteus maximus~0.55|adductor magnus~0.26\tnone\tnovice\tlight\tbench\t\tprone hip extension\treverse hyperextension\t\t',
    'hip thrust\tbarbell hip thrust|BHT|BB hip thrust|thrust|bench hip thrust\tbarbell\tdynamic\tsupported\t\t\thip thrust\thip thrust\thip extension\t\thip~80 0|knee~90 90|ankle~10 10\t\tgluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus\tbiceps femoris long head~0.34|semitendinosus~0.34|semimembranosus~0.34|gluteus maximus~0.6|adductor magnus~0.3\tnone\tnovice\theavy\tbarbell|bench\t\tglute bridge|dumbbell hip thrust\tsingle-leg hip thrust\t\t',
    'glute bridge\tbridge|hip bridge|bodyweight glute bridge|bodyweight bridge|hip raise|two-leg bridge\tbodyweight\tdynamic\tlying\t\t\thip thrust\thip thrust\thip extension\t\thip~50 -5|knee~95 95|ankle~0 0\t\tgluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus\tbiceps femoris long head~0.24|semitendinosus~0.24|semimembranosus~0.24|gluteus maximus~0.44|adductor magnus~0.15\tnone\tnovice\tlight\tfloor\t\t\tsingle-leg glute bridge|hip thrust\t\t',
    'single-leg hip thrust\tone-leg hip thrust|SL hip thrust|single-leg bench hip thrust\tbodyweight\tdynamic\tsupported\t\t1\thip thrust\thip thrust\thip extension\thip abduction\thip~80 0|knee~90 90|ankle~10 10\t\tgluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus medius|gluteus minimus\tbiceps femoris long head~0.34|semitendinosus~0.34|semimembranosus~0.34|gluteus maximus~0.6|adductor magnus~0.3\tnone\tintermediate\tlight\tbench\t\tsingle-leg glute bridge|hip thrust\t\t\t',
    'dumbbell hip thrust\tDB hip thrust|kettlebell hip thrust|bodyweight hip thrust\tdumbbell\tdynamic\tsupported\t\t\thip thrust\thip thrust\thip extension\t\thip~80 0|knee~90 90|ankle~10 10\t\tgluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus\tbiceps femoris long head~0.34|semitendinosus~0.34|semimembranosus~0.34|gluteus maximus~0.6|adductor magnus~0.3\tnone\tnovice\tlight\tdumbbell|bench\t\tglute bridge\thip thrust|B-stance hip thrust\t\t',
    'hip thrust machine\tmachine hip thrust|glute bridge machine|lever hip thrust\tmachine\tdynamic\tsupported\t\t\thip thrust\thip thrust\thip extension\t\thip~85 0|knee~90 90|ankle~10 10\t\tgluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus\tbiceps femoris long head~0.35|semitendinosus~0.35|semimembranosus~0.35|gluteus maximus~0.62|adductor magnus~0.32\tnone\tnovice\theavy\tmachine hip thrust\t\tglute bridge\thip thrust\t\t',
    'guided-bar hip thrust\tfixed-track hip thrust\tguided bar\tdynamic\tsupported\t\t\thip thrust\thip thrust\thip extension\t\thip~80 0|knee~90 90|ankle~10 10\t\tgluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus\tbiceps femoris long head~0.34|semitendinosus~0.34|semimembranosus~0.34|gluteus maximus~0.6|adductor magnus~0.3\tnone\tnovice\theavy\tguided bar|bench\t\tglute bridge\thip thrust\t\t',
    'barbell glute bridge\tBB glute bridge|floor hip thrust|weighted glute bridge\tbarbell\tdynamic\tlying\t\t\thip thrust\thip thrust\thip extension\t\thip~50 -5|knee~90 90|ankle~0 0\t\tgluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus\tbiceps femoris long head~0.25|semitendinosus~0.25|semimembranosus~0.25|gluteus maximus~0.44|adductor magnus~0.15\tnone\tnovice\theavy\tbarbell|floor\t\tglute bridge\thip thrust\t\t',
    'single-leg glute bridge\tone-leg bridge|SL glute bridge|single-leg bridge|single-leg hip bridge\tbodyweight\tdynamic\tlying\t\t1\thip thrust\thip thrust\thip extension\thip abduction\thip~50 -5|knee~95 95|ankle~0 0\t\tgluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus medius|gluteus minimus\tbiceps femoris long head~0.24|semitendinosus~0.24|semimembranosus~0.24|gluteus maximus~0.44|adductor magnus~0.15\tnone\tnovice\tlight\tfloor\t\tglute bridge\tsingle-leg hip thrust\t\t',
    'B-stance hip thrust\tkickstand hip thrust|staggered-stance hip thrust\tbarbell\tdynamic\tsupported\t\t1\thip thrust\thip thrust\thip extension\t\thip~80 0|knee~90 90|ankle~10 10\t\tgluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus\tbiceps femoris long head~0.34|semitendinosus~0.34|semimembranosus~0.34|gluteus maximus~0.6|adductor magnus~0.3\tnone\tintermediate\theavy\tbarbell|bench\t\thip thrust\tsingle-leg hip thrust\t\t',
    'band hip thrust\tbanded hip thrust|banded glute bridge|band glute bridge|mini-band glute bridge\tband\tdynamic\tsupported\t\t\thip thrust\thip thrust\thip extension\thip abduction\thip~70 0|knee~90 90|ankle~5 5\t\tgluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus medius|gluteus minimus\tbiceps femoris long head~0.32|semitendinosus~0.32|semimembranosus~0.32|gluteus maximus~0.56|adductor magnus~0.25\tnone\tnovice\tlight\tband|bench\t\tglute bridge\thip thrust\t\t',
    'feet-elevated glute bridge\tfoot-elevated bridge|elevated bridge|feet-raised bridge\tbodyweight\tdynamic\tlying\t\t\thip thrust\thip thrust\thip extension\t\thip~75 -5|knee~90 90|ankle~0 0\t\tgluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus\tbiceps femoris long head~0.32|semitendinosus~0.32|semimembranosus~0.32|gluteus maximus~0.55|adductor magnus~0.26\tnone\tnovice\tlight\tbench|floor\t\tglute bridge\tsingle-leg hip thrust\t\t',
    'frog pump\tfrog bridge|weighted frog pump\tbodyweight\tdynamic\tlying\t\t\thip thrust\thip thrust\thip extension\thip external rotation|hip abduction\thip~45 -5|knee~110 110|ankle~0 0\t\tgluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus medius|gluteus minimus|deep hip rotators\tbiceps femoris long head~0.18|semitendinosus~0.18|semimembranosus~0.18|gluteus maximus~0.42|adductor magnus~0.13\tnone\tnovice\tlight\tfloor\t\tglute bridge\tband hip thrust\t\t',
    'long-lever bridge\thamstring bridge|long-lever hamstring bridge|straight-leg bridge|long lever glute bridge\tbodyweight\tdynamic\tlying\t\t\thip thrust\thip thrust|hip hinge\thip extension\t\thip~40 -5|knee~25 25|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\t\tbiceps femoris long head~0.51|semitendinosus~0.51|semimembranosus~0.51|gluteus maximus~0.4|adductor magnus~0.11\tnone\tnovice\tlight\tfloor|box\t\tglute bridge\tsingle-leg hamstring bridge\t\t',
    'single-leg hamstring bridge\tsingle-leg long-lever bridge|SLHB|single leg bridge from box|SL hamstring bridge\tbodyweight\tdynamic\tlying\t\t1\thip thrust\thip thrust|hip hinge\thip extension\thip abduction\thip~55 0|knee~20 20|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tbiceps femoris long head~0.58|semitendinosus~0.58|semimembranosus~0.58|gluteus maximus~0.49|adductor magnus~0.18\tnone\tintermediate\tlight\tbox\t\tlong-lever bridge\tback extension|slider leg curl\t\t',
    'glute bridge hold\tbridge hold|isometric glute bridge|isometric bridge\tbodyweight\tisometric\tlying\t\t\t\t\thip extension\t\thip~0|knee~95|ankle~0\t\tgluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus\tbiceps femoris long head~0.13|semitendinosus~0.13|semimembranosus~0.13|gluteus maximus~0.21|adductor magnus~0.02\tnone\tnovice\tlight\tfloor\t\t\tlong-lever bridge hold\t\t',
    'long-lever bridge hold\thamstring bridge hold|isometric hamstring bridge|isometric long-lever bridge|hamstring iso hold\tbodyweight\tisometric\tlying\t\t\t\t\thip extension|knee flexion\t\thip~0|knee~25|ankle~0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head|gluteus maximus|adductor magnus\tsartorius|gracilis\tbiceps femoris long head~0.43|semitendinosus~0.43|semimembranosus~0.43|biceps femoris short head~0.83|sartorius~0.91|gracilis~0.52|gluteus maximus~0.21|adductor magnus~0.02\tnone\tnovice\tlight\tbox\t\tglute bridge hold\tsingle-leg long-lever bridge hold\t\t',
    'single-leg long-lever bridge hold\tsingle-leg hamstring bridge hold|single-leg isometric hamstring bridge|SL hamstring iso\tbodyweight\tisometric\tlying\t\t1\t\t\thip extension|knee flexion\thip abduction\thip~0|knee~25|ankle~0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head|gluteus maximus|adductor magnus\tsartorius|gracilis|gluteus medius|gluteus minimus\tbiceps femoris long head~0.43|semitendinosus~0.43|semimembranosus~0.43|biceps femoris short head~0.83|sartorius~0.91|gracilis~0.52|gluteus maximus~0.21|adductor magnus~0.02\tnone\tintermediate\tlight\tbox\t\tlong-lever bridge hold\t\t\t',
    'cable hip extension\tcable kickback|cable glute kickback|glute kickback|standing hip extension|multi-hip extension\tcable\tdynamic\tstanding\t\t1\t\thip hinge\thip extension\t\thip~50 -15|knee~15 15|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\t\tbiceps femoris long head~0.55|semitendinosus~0.55|semimembranosus~0.55|gluteus maximus~0.39|adductor magnus~0.13\tnone\tnovice\tlight\tcable\t\tband kickback\tmachine glute kickback\t\t',
    'machine glute kickback\tglute machine|rear kick machine|kneeling glute machine|machine kickback|machine hip extension\tmachine\tdynamic\tsupported\t\t1\t\t\thip extension\tknee extension\thip~95 5|knee~95 40|ankle~0 0\t\tgluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius\tbiceps femoris long head~0.48|semitendinosus~0.48|semimembranosus~0.48|vastus lateralis~0.63|vastus medialis~0.63|vastus intermedius~0.63|gluteus maximus~0.67|adductor magnus~0.39\tnone\tnovice\theavy\tmachine glute kickback\t\tdonkey kick\tcable hip extension\t\t',
    'band kickback\tbanded kickback|band hip extension|standing band hip extension\tband\tdynamic\tstanding\t\t1\t\thip hinge\thip extension\t\thip~30 -15|knee~10 10|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus\tadductor magnus\tbiceps femoris long head~0.53|semitendinosus~0.53|semimembranosus~0.53|gluteus maximus~0.29|adductor magnus~0.06\tnone\tnovice\tlight\tband\t\tprone hip extension\tcable hip extension\t\t',
    'donkey kick\tquadruped hip extension|bent-knee kickback|glute kickback on all fours|bird-dog leg lift\tbodyweight\tdynamic\tquadruped\t\t1\t\t\thip extension\t\thip~90 -5|knee~90 90|ankle~0 0\t\tgluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus\tbiceps femoris long head~0.35|semitendinosus~0.35|semimembranosus~0.35|gluteus maximus~0.61|adductor magnus~0.33\tnone\tnovice\tlight\tfloor\t\tglute bridge\tmachine glute kickback\t\t',
    'prone hip extension\tprone leg lift|lying hip extension|prone leg raise\tbodyweight\tdynamic\tprone\t\t1\t\t\thip extension\ttrunk extension\thip~10 -15|knee~0 0|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus\terector spinae|multifidus\tbiceps femoris long head~0.52|semitendinosus~0.52|semimembranosus~0.52|gluteus maximus~0.19\tnone\tnovice\tlight\tfloor\t\t\tdonkey kick|bench reverse hyperextension\t\t',
    'kettlebell swing\tswing|KB swing|KBS|Russian swing|two-hand swing|two-hand kettlebell swing|hip-hinge swing|dumbbell swing\tkettlebell\tballistic\tstanding\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~85 0|knee~30 0|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.67|semitendinosus~0.67|semimembranosus~0.67|gluteus maximus~0.62|adductor magnus~0.32\tmoderate\tintermediate\tlight\tkettlebell\t1\tkettlebell deadlift|cable pull-through\tsingle-arm kettlebell swing|heavy kettlebell swing\t\t',
    'single-arm kettlebell swing\tone-arm swing|single-arm swing|one-hand swing|one-arm kettlebell swing\tkettlebell\tballistic\tstanding\t\t1\thip hinge\thip hinge\thip extension\ttrunk extension\thip~85 0|knee~30 0|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.67|semitendinosus~0.67|semimembranosus~0.67|gluteus maximus~0.62|adductor magnus~0.32\tmoderate\tintermediate\tlight\tkettlebell\t1\tkettlebell swing\tkettlebell snatch\t\t',
    'overhead kettlebell swing\toverhead swing|full swing|kettlebell swing overhead\tkettlebell\tballistic\tstanding\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~85 0|knee~30 0|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.67|semitendinosus~0.67|semimembranosus~0.67|gluteus maximus~0.62|adductor magnus~0.32\tmoderate\tintermediate\tlight\tkettlebell\t1\tkettlebell swing\tkettlebell snatch\t\t',
    'heavy kettlebell swing\tdouble kettlebell swing|heavy swing|double swing\tkettlebell\tballistic\tstanding\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~85 0|knee~35 0|ankle~5 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.66|semitendinosus~0.66|semimembranosus~0.66|gluteus maximus~0.62|adductor magnus~0.32\tmoderate\tadvanced\theavy\tkettlebell\t1\tkettlebell swing\t\t\t',
    'band swing\tbanded hip snap|band-resisted hinge jump|band-resisted swing\tband\tballistic\tstanding\t\t\thip hinge\thip hinge\thip extension\t\thip~75 0|knee~30 0|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\t\tbiceps femoris long head~0.65|semitendinosus~0.65|semimembranosus~0.65|gluteus maximus~0.58|adductor magnus~0.27\tnone\tnovice\tlight\tband|rack\t\tband pull-through\tkettlebell swing\t\t',
    'power clean\tPC|barbell power clean|power clean from the floor\tbarbell\tballistic\tstanding\toverhand\t\t\t\thip extension|knee extension\tscapular elevation|trunk extension|plantarflexion\thip~85 75 45 0|knee~75 35 50 0|ankle~15 0 12 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius\tbiceps femoris long head~0.62|semitendinosus~0.62|semimembranosus~0.62|vastus lateralis~0.4|vastus medialis~0.4|vastus intermedius~0.4|gluteus maximus~0.71|adductor magnus~0.44|soleus~0.7\thigh\tadvanced\theavy\tbarbell|floor\t1\thang power clean|clean pull\tclean\t\t',
    'clean\tfull clean|squat clean|barbell clean|clean from the floor\tbarbell\tballistic\tstanding\toverhand\t\t\t\thip extension|knee extension\tscapular elevation|trunk extension|plantarflexion\thip~85 75 45 0|knee~75 35 50 0|ankle~15 0 12 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius\tbiceps femoris long head~0.62|semitendinosus~0.62|semimembranosus~0.62|vastus lateralis~0.4|vastus medialis~0.4|vastus intermedius~0.4|gluteus maximus~0.71|adductor magnus~0.44|soleus~0.7\thigh\tadvanced\theavy\tbarbell|floor\t1\tpower clean|hang clean\tclean and jerk\t\t',
    'hang power clean\tHPC|hang power clean from above the knee\tbarbell\tballistic\tstanding\toverhand\t\thip hinge\thip hinge\thip extension|knee extension\tscapular elevation|trunk extension|plantarflexion\thip~65 40 0|knee~25 45 0|ankle~3 10 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius\tbiceps femoris long head~0.59|semitendinosus~0.59|semimembranosus~0.59|vastus lateralis~0.29|vastus medialis~0.29|vastus intermedius~0.29|gluteus maximus~0.57|adductor magnus~0.26|soleus~0.66\thigh\tintermediate\theavy\tbarbell\t1\tjump shrug|hang clean pull\tpower clean|hang clean\t\t',
    'hang clean\thang squat clean|clean from the hang|hang full clean\tbarbell\tballistic\tstanding\toverhand\t\thip hinge\thip hinge\thip extension|knee extension\tscapular elevation|trunk extension|plantarflexion\thip~65 40 0|knee~25 45 0|ankle~3 10 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius\tbiceps femoris long head~0.59|semitendinosus~0.59|semimembranosus~0.59|vastus lateralis~0.29|vastus medialis~0.29|vastus intermedius~0.29|gluteus maximus~0.57|adductor magnus~0.26|soleus~0.66\thigh\tadvanced\theavy\tbarbell\t1\thang power clean\tclean\t\t',
    'block power clean\tpower clean from blocks|clean from blocks|block clean\tbarbell\tballistic\tstanding\toverhand\t\thip hinge\thip hinge\thip extension|knee extension\tscapular elevation|trunk extension|plantarflexion\thip~65 40 0|knee~30 45 0|ankle~3 10 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius\tbiceps femoris long head~0.58|semitendinosus~0.58|semimembranosus~0.58|vastus lateralis~0.3|vastus medialis~0.3|vastus intermedius~0.3|gluteus maximus~0.57|adductor magnus~0.26|soleus~0.66\thigh\tintermediate\theavy\tbarbell|box\t1\thang power clean\tpower clean\t\t',
    'muscle clean\thang muscle clean\tbarbell\tballistic\tstanding\toverhand\t\t\t\thip extension|knee extension\tscapular elevation|shoulder abduction|elbow flexion|trunk extension\thip~85 75 45 0|knee~75 35 50 0|ankle~15 0 12 -15\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\terector spinae|multifidus|upper trapezius|middle deltoid|biceps long head|biceps short head|brachialis\tbiceps femoris long head~0.62|semitendinosus~0.62|semimembranosus~0.62|vastus lateralis~0.4|vastus medialis~0.4|vastus intermedius~0.4|gluteus maximus~0.71|adductor magnus~0.44\tmoderate\tintermediate\tlight\tbarbell\t1\tclean pull\tpower clean\t\t',
    'clean and jerk\tC&J|clean & jerk|CJ|clean and split jerk|power clean and jerk\tbarbell\tballistic\tstanding\toverhand\t\t\t\thip extension|knee extension\tscapular elevation|shoulder flexion|shoulder abduction|elbow extension|trunk extension|plantarflexion\thip~85 75 45 0|knee~75 35 50 0|ankle~15 0 12 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius|anterior deltoid|middle deltoid|triceps long head|triceps lateral head|triceps medial head\tbiceps femoris long head~0.62|semitendinosus~0.62|semimembranosus~0.62|vastus lateralis~0.4|vastus medialis~0.4|vastus intermedius~0.4|gluteus maximus~0.71|adductor magnus~0.44|soleus~0.7\thigh\tadvanced\theavy\tbarbell|floor\t1\tpower clean\t\t\t',
    'clean pull\tclean-grip pull|clean pull from the floor\tbarbell\tballistic\tstanding\toverhand\t\t\t\thip extension|knee extension\tscapular elevation|trunk extension|plantarflexion\thip~85 75 45 0|knee~75 35 50 0|ankle~15 0 12 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius\tbiceps femoris long head~0.62|semitendinosus~0.62|semimembranosus~0.62|vastus lateralis~0.4|vastus medialis~0.4|vastus intermedius~0.4|gluteus maximus~0.71|adductor magnus~0.44|soleus~0.7\thigh\tintermediate\theavy\tbarbell|floor\t1\tdeadlift|hang clean pull\tclean high pull|power clean\t\t',
    'hang clean pull\thang pull|clean pull from the hang\tbarbell\tballistic\tstanding\toverhand\t\thip hinge\thip hinge\thip extension|knee extension\tscapular elevation|trunk extension|plantarflexion\thip~65 40 0|knee~25 45 0|ankle~3 10 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius\tbiceps femoris long head~0.59|semitendinosus~0.59|semimembranosus~0.59|vastus lateralis~0.29|vastus medialis~0.29|vastus intermedius~0.29|gluteus maximus~0.57|adductor magnus~0.26|soleus~0.66\thigh\tintermediate\theavy\tbarbell\t1\tRomanian deadlift|jump shrug\thang power clean|clean pull\t\t',
    'clean high pull\thigh pull|barbell high pull|high pull from the floor|clean-grip high pull\tbarbell\tballistic\tstanding\toverhand\t\t\t\thip extension|knee extension\tscapular elevation|shoulder abduction|elbow flexion|trunk extension|plantarflexion\thip~85 75 45 0|knee~75 35 50 0|ankle~15 0 12 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius|middle deltoid|biceps long head|biceps short head|brachialis\tbiceps femoris long head~0.62|semitendinosus~0.62|semimembranosus~0.62|vastus lateralis~0.4|vastus medialis~0.4|vastus intermedius~0.4|gluteus maximus~0.71|adductor magnus~0.44|soleus~0.7\thigh\tintermediate\theavy\tbarbell|floor\t1\tclean pull\tpower clean\t\t',
    'hang high pull\thang clean high pull|high pull from the hang\tbarbell\tballistic\tstanding\toverhand\t\thip hinge\thip hinge\thip extension|knee extension\tscapular elevation|shoulder abduction|elbow flexion|trunk extension|plantarflexion\thip~65 40 0|knee~25 45 0|ankle~3 10 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius|middle deltoid|biceps long head|biceps short head|brachialis\tbiceps femoris long head~0.59|semitendinosus~0.59|semimembranosus~0.59|vastus lateralis~0.29|vastus medialis~0.29|vastus intermedius~0.29|gluteus maximus~0.57|adductor magnus~0.26|soleus~0.66\thigh\tintermediate\theavy\tbarbell\t1\thang clean pull|jump shrug\thang power clean\t\t',
    'mid-thigh pull\tclean mid-thigh pull|mid-thigh clean pull|dynamic mid-thigh pull\tbarbell\tballistic\tstanding\toverhand\t\t\t\thip extension|knee extension\tscapular elevation|trunk extension|plantarflexion\thip~35 0|knee~40 0|ankle~12 -20\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus\tadductor magnus|soleus|erector spinae|multifidus|upper trapezius\tvastus lateralis~0.2|vastus medialis~0.2|vastus intermedius~0.2|gluteus maximus~0.4|adductor magnus~0.1|soleus~0.59\thigh\tintermediate\theavy\tbarbell|rack\t1\tjump shrug\thang power clean\t\t',
    'jump shrug\thang jump shrug|barbell jump shrug\tbarbell\tballistic\tstanding\toverhand\t\thip hinge\thip hinge\thip extension|knee extension\tscapular elevation|trunk extension|plantarflexion\thip~60 35 0|knee~25 45 0|ankle~3 12 -25\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius\tbiceps femoris long head~0.57|semitendinosus~0.57|semimembranosus~0.57|vastus lateralis~0.29|vastus medialis~0.29|vastus intermedius~0.29|gluteus maximus~0.54|adductor magnus~0.22|soleus~0.66\thigh\tintermediate\theavy\tbarbell\t1\tRomanian deadlift\thang clean pull|hang high pull\t\t',
    'dumbbell hang clean\tDB hang clean|dumbbell power clean|dumbbell clean|DB clean\tdumbbell\tballistic\tstanding\t\t\thip hinge\thip hinge\thip extension|knee extension\tscapular elevation|trunk extension|plantarflexion\thip~65 0|knee~35 0|ankle~5 -15\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\terector spinae|multifidus|upper trapezius\tbiceps femoris long head~0.61|semitendinosus~0.61|semimembranosus~0.61|vastus lateralis~0.18|vastus medialis~0.18|vastus intermedius~0.18|gluteus maximus~0.54|adductor magnus~0.23\tmoderate\tintermediate\tlight\tdumbbell\t1\tkettlebell swing\thang power clean\t\t',
    'kettlebell clean\tKB clean|single-arm kettlebell clean|double kettlebell clean|one-arm clean\tkettlebell\tballistic\tstanding\t\t1\thip hinge\thip hinge\thip extension\tknee extension|trunk extension\thip~80 0|knee~35 0|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|erector spinae|multifidus\tbiceps femoris long head~0.65|semitendinosus~0.65|semimembranosus~0.65|vastus lateralis~0.18|vastus medialis~0.18|vastus intermedius~0.18|gluteus maximus~0.6|adductor magnus~0.3\tmoderate\tintermediate\tlight\tkettlebell\t1\tkettlebell swing\tkettlebell snatch\t\t',
    'sandbag over shoulder\tsandbag to shoulder|sandbag clean|sandbag shouldering|sandbag toss over shoulder\tsandbag\tballistic\tstanding\t\t\t\t\thip extension\tknee extension|trunk extension|elbow flexion\thip~90 75 0|knee~70 60 0|ankle~10 5 -10\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|erector spinae|multifidus|biceps long head|biceps short head|brachialis\tbiceps femoris long head~0.61|semitendinosus~0.61|semimembranosus~0.61|vastus lateralis~0.46|vastus medialis~0.46|vastus intermedius~0.46|gluteus maximus~0.75|adductor magnus~0.5\tmoderate\tintermediate\theavy\tsandbag|floor\t1\tsandbag deadlift\t\t\t',
    'split jerk\tjerk|barbell split jerk|jerk from rack\tbarbell\tballistic\tstanding\t\t\tvertical push\tvertical push\tknee extension\thip extension|shoulder flexion|shoulder abduction|elbow extension|plantarflexion\thip~35 0|knee~55 0|ankle~18 -15|shoulder~60 170|elbow~130 0\t\tvastus lateralis|vastus medialis|vastus intermedius\tgluteus maximus|soleus|anterior deltoid|middle deltoid|triceps long head|triceps lateral head|triceps medial head\tvastus lateralis~0.27|vastus medialis~0.27|vastus intermedius~0.27|gluteus maximus~0.4|soleus~0.67|triceps long head~0.82|triceps lateral head~0.53|triceps medial head~0.53\thigh\tadvanced\theavy\tbarbell|rack\t\tpush jerk\tclean and jerk\t\t',
    'push jerk\tpower jerk|barbell push jerk\tbarbell\tballistic\tstanding\t\t\tvertical push\tvertical push\tknee extension\thip extension|shoulder flexion|shoulder abduction|elbow extension|plantarflexion\thip~35 0|knee~55 0|ankle~18 -15|shoulder~60 170|elbow~130 0\t\tvastus lateralis|vastus medialis|vastus intermedius\tgluteus maximus|soleus|anterior deltoid|middle deltoid|triceps long head|triceps lateral head|triceps medial head\tvastus lateralis~0.27|vastus medialis~0.27|vastus intermedius~0.27|gluteus maximus~0.4|soleus~0.67|triceps long head~0.82|triceps lateral head~0.53|triceps medial head~0.53\thigh\tintermediate\theavy\tbarbell|rack\t\tpush press\tsplit jerk\t\t',
    'power snatch\tbarbell power snatch|power snatch from the floor\tbarbell\tballistic\tstanding\twide\t\t\t\thip extension|knee extension\tscapular elevation|shoulder abduction|trunk extension|plantarflexion\thip~92 80 45 0|knee~80 40 50 0|ankle~18 2 12 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius|middle deltoid\tbiceps femoris long head~0.62|semitendinosus~0.62|semimembranosus~0.62|vastus lateralis~0.42|vastus medialis~0.42|vastus intermedius~0.42|gluteus maximus~0.72|adductor magnus~0.47|soleus~0.72\thigh\tadvanced\theavy\tbarbell|floor\t1\thang power snatch|snatch pull\tsnatch\t\t',
    'snatch\tfull snatch|squat snatch|barbell snatch|snatch from the floor\tbarbell\tballistic\tstanding\twide\t\t\t\thip extension|knee extension\tscapular elevation|shoulder abduction|trunk extension|plantarflexion\thip~92 80 45 0|knee~80 40 50 0|ankle~18 2 12 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius|middle deltoid\tbiceps femoris long head~0.62|semitendinosus~0.62|semimembranosus~0.62|vastus lateralis~0.42|vastus medialis~0.42|vastus intermedius~0.42|gluteus maximus~0.72|adductor magnus~0.47|soleus~0.72\thigh\tadvanced\theavy\tbarbell|floor\t1\tpower snatch|overhead squat\t\t\t',
    'hang power snatch\thang power snatch from above the knee|HPS\tbarbell\tballistic\tstanding\twide\t\thip hinge\thip hinge\thip extension|knee extension\tscapular elevation|shoulder abduction|trunk extension|plantarflexion\thip~75 45 0|knee~25 45 0|ankle~3 10 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius|middle deltoid\tbiceps femoris long head~0.61|semitendinosus~0.61|semimembranosus~0.61|vastus lateralis~0.29|vastus medialis~0.29|vastus intermedius~0.29|gluteus maximus~0.61|adductor magnus~0.31|soleus~0.66\thigh\tadvanced\theavy\tbarbell\t1\thang muscle snatch|dumbbell snatch\tpower snatch\t\t',
    'hang snatch\thang squat snatch|snatch from the hang\tbarbell\tballistic\tstanding\twide\t\thip hinge\thip hinge\thip extension|knee extension\tscapular elevation|shoulder abduction|trunk extension|plantarflexion\thip~75 45 0|knee~25 45 0|ankle~3 10 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius|middle deltoid\tbiceps femoris long head~0.61|semitendinosus~0.61|semimembranosus~0.61|vastus lateralis~0.29|vastus medialis~0.29|vastus intermedius~0.29|gluteus maximus~0.61|adductor magnus~0.31|soleus~0.66\thigh\tadvanced\theavy\tbarbell\t1\thang power snatch\tsnatch\t\t',
    'hang muscle snatch\tmuscle snatch\tbarbell\tballistic\tstanding\twide\t\thip hinge\thip hinge\thip extension|knee extension\tscapular elevation|shoulder abduction|elbow extension|trunk extension\thip~75 45 0|knee~25 45 0|ankle~3 10 -10\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\terector spinae|multifidus|upper trapezius|middle deltoid|triceps long head|triceps lateral head|triceps medial head\tbiceps femoris long head~0.61|semitendinosus~0.61|semimembranosus~0.61|vastus lateralis~0.29|vastus medialis~0.29|vastus intermedius~0.29|gluteus maximus~0.61|adductor magnus~0.31\tmoderate\tintermediate\tlight\tbarbell\t1\tdumbbell snatch\thang power snatch\t\t',
    'snatch pull\tsnatch-grip pull|snatch pull from the floor\tbarbell\tballistic\tstanding\twide\t\t\t\thip extension|knee extension\tscapular elevation|trunk extension|plantarflexion\thip~92 80 45 0|knee~80 40 50 0|ankle~18 2 12 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius\tbiceps femoris long head~0.62|semitendinosus~0.62|semimembranosus~0.62|vastus lateralis~0.42|vastus medialis~0.42|vastus intermedius~0.42|gluteus maximus~0.72|adductor magnus~0.47|soleus~0.72\thigh\tintermediate\theavy\tbarbell|floor\t1\tsnatch-grip deadlift\tsnatch high pull|power snatch\t\t',
    'snatch high pull\tsnatch-grip high pull|wide-grip high pull\tbarbell\tballistic\tstanding\twide\t\t\t\thip extension|knee extension\tscapular elevation|shoulder abduction|elbow flexion|trunk extension|plantarflexion\thip~92 80 45 0|knee~80 40 50 0|ankle~18 2 12 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius|middle deltoid|biceps long head|biceps short head|brachialis\tbiceps femoris long head~0.62|semitendinosus~0.62|semimembranosus~0.62|vastus lateralis~0.42|vastus medialis~0.42|vastus intermedius~0.42|gluteus maximus~0.72|adductor magnus~0.47|soleus~0.72\thigh\tintermediate\theavy\tbarbell|floor\t1\tsnatch pull\tpower snatch\t\t',
    'dumbbell snatch\tDB snatch|single-arm dumbbell snatch|one-arm dumbbell snatch|dumbbell hang snatch\tdumbbell\tballistic\tstanding\t\t1\thip hinge\thip hinge\thip extension|knee extension\tscapular elevation|shoulder abduction|trunk extension|plantarflexion\thip~80 0|knee~55 0|ankle~8 -15\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius|middle deltoid\tbiceps femoris long head~0.61|semitendinosus~0.61|semimembranosus~0.61|vastus lateralis~0.27|vastus medialis~0.27|vastus intermedius~0.27|gluteus maximus~0.6|adductor magnus~0.3|soleus~0.59\tmoderate\tintermediate\tlight\tdumbbell\t1\tkettlebell swing|dumbbell hang clean\thang power snatch\t\t',
    'kettlebell snatch\tKB snatch|single-arm kettlebell snatch|one-arm snatch\tkettlebell\tballistic\tstanding\t\t1\thip hinge\thip hinge\thip extension\tknee extension|shoulder abduction|shoulder flexion|trunk extension\thip~85 0|knee~35 0|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|erector spinae|multifidus|anterior deltoid|middle deltoid\tbiceps femoris long head~0.66|semitendinosus~0.66|semimembranosus~0.66|vastus lateralis~0.18|vastus medialis~0.18|vastus intermedius~0.18|gluteus maximus~0.62|adductor magnus~0.32\tmoderate\tadvanced\tlight\tkettlebell\t1\tkettlebell clean|single-arm kettlebell swing\t\t\t',
    'kettlebell high pull\tKB high pull|single-arm kettlebell high pull|sumo deadlift high pull\tkettlebell\tballistic\tstanding\t\t\thip hinge\thip hinge\thip extension\tknee extension|scapular elevation|shoulder abduction|elbow flexion|trunk extension\thip~80 0|knee~45 0|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|erector spinae|multifidus|upper trapezius|middle deltoid|biceps long head|biceps short head|brachialis\tbiceps femoris long head~0.63|semitendinosus~0.63|semimembranosus~0.63|vastus lateralis~0.23|vastus medialis~0.23|vastus intermedius~0.23|gluteus maximus~0.6|adductor magnus~0.3\tmoderate\tintermediate\tlight\tkettlebell\t1\tkettlebell swing\tkettlebell snatch\t\t',
    'hip abduction machine\tmachine hip abduction|seated hip abduction|abductor machine|hip abduction|abduction machine|seated abduction\tmachine\tdynamic\tseated\t\t\t\t\thip abduction\t\thip~85|knee~90|ankle~0\t\tgluteus medius|gluteus minimus\tgluteus maximus|tensor fasciae latae\tgluteus maximus~0.93|tensor fasciae latae~0.34\tnone\tnovice\theavy\tmachine hip abduction\t\tseated band hip abduction\tleaning hip abduction machine|cable hip abduction\t\t',
    'cable hip abduction\tstanding cable hip abduction|cable abduction|standing hip abduction|multi-hip abduction\tcable\tdynamic\tstanding\t\t1\t\t\thip abduction\t\thip~0|knee~5|ankle~0\t\tgluteus medius|gluteus minimus\tgluteus maximus|tensor fasciae latae\tgluteus maximus~0.21|tensor fasciae latae~0.89\tnone\tnovice\tlight\tcable\t\tstanding band hip abduction\tside plank with leg raise\t\t',
    'side-lying hip abduction\tside-lying leg raise|side leg raise|lying hip abduction|side-lying abduction\tbodyweight\tdynamic\tside-lying\t\t1\t\t\thip abduction\t\thip~-5|knee~0|ankle~0\t\tgluteus medius|gluteus minimus\tgluteus maximus|tensor fasciae latae\tgluteus maximus~0.16|tensor fasciae latae~0.9\tnone\tnovice\tlight\tfloor\t\tclamshell\tstanding band hip abduction|side plank with leg raise\t\t',
    'lateral band walk\tband walk|side-step with band|mini-band walk|X-band walk|lateral walk|crab walk with band|banded side step|sideways band walk\tband\tdynamic\tstanding\t\t\t\t\thip abduction\thip external rotation\thip~35|knee~35|ankle~10\t\tgluteus medius|gluteus minimus\tgluteus maximus|tensor fasciae latae|deep hip rotators\tgluteus maximus~0.57|tensor fasciae latae~0.74\tnone\tnovice\tlight\tband|floor\t\tclamshell\tcable hip abduction|monster walk\t\t',
    'monster walk\tbanded monster walk|forward band walk|diagonal band walk\tband\tdynamic\tstanding\t\t\t\t\thip abduction\thip external rotation|hip flexion\thip~30|knee~30|ankle~10\t\tgluteus medius|gluteus minimus\tgluteus maximus|tensor fasciae latae|deep hip rotators\tgluteus maximus~0.53|tensor fasciae latae~0.77\tnone\tnovice\tlight\tband|floor\t\tlateral band walk\tcable hip abduction\t\t',
    'clamshell\tclam|clam shell exercise|banded clamshell|band clamshell|side-lying clam\tband\tdynamic\tside-lying\t\t1\t\t\thip external rotation|hip abduction\t\thip~45|knee~90|ankle~0\t\tgluteus maximus|gluteus medius|gluteus minimus|deep hip rotators\ttensor fasciae latae\tgluteus maximus~0.66|tensor fasciae latae~0.7\tnone\tnovice\tlight\tband|floor\t\t\tside-lying hip abduction|fire hydrant\t\t',
    'seated band hip abduction\tbanded seated abduction|seated band abduction|band hip abduction seated|seated banded hip abduction\tband\tdynamic\tseated\t\t\t\t\thip abduction\thip external rotation\thip~85|knee~90|ankle~0\t\tgluteus medius|gluteus minimus\tgluteus maximus|tensor fasciae latae|deep hip rotators\tgluteus maximus~0.93|tensor fasciae latae~0.34\tnone\tnovice\tlight\tband|bench\t\tclamshell\thip abduction machine\t\t',
    'standing band hip abduction\tband hip abduction|banded standing abduction|band abduction\tband\tdynamic\tstanding\t\t1\t\t\thip abduction\t\thip~0|knee~5|ankle~0\t\tgluteus medius|gluteus minimus\tgluteus maximus|tensor fasciae latae\tgluteus maximus~0.21|tensor fasciae latae~0.89\tnone\tnovice\tlight\tband\t\tside-lying hip abduction\tcable hip abduction\t\t',
    'leaning hip abduction machine\tlean-forward hip abduction|forward-lean abduction machine|hovering hip abduction\tmachine\tdynamic\tseated\t\t\t\t\thip abduction\t\thip~105|knee~90|ankle~0\t\tgluteus medius|gluteus minimus\tgluteus maximus|tensor fasciae latae\tgluteus maximus~0.99|tensor fasciae latae~0.12\tnone\tnovice\theavy\tmachine hip abduction\t\thip abduction machine\t\t\t',
    'fire hydrant\tquadruped hip abduction|banded fire hydrant|hydrant\tbodyweight\tdynamic\tquadruped\t\t1\t\t\thip abduction\thip external rotation\thip~90|knee~90|ankle~0\t\tgluteus medius|gluteus minimus\tgluteus maximus|tensor fasciae latae|deep hip rotators\tgluteus maximus~0.95|tensor fasciae latae~0.29\tnone\tnovice\tlight\tfloor\t\tclamshell\tseated band hip abduction\t\t',
    'standing machine hip abduction\tstanding abduction machine|standing hip abduction machine|multi-hip machine abduction\tmachine\tdynamic\tstanding\t\t1\t\t\thip abduction\t\thip~0|knee~5|ankle~0\t\tgluteus medius|gluteus minimus\tgluteus maximus|tensor fasciae latae\tgluteus maximus~0.21|tensor fasciae latae~0.89\tnone\tnovice\theavy\tmachine standing hip\t\tcable hip abduction\t\t\t',
    'pelvic drop\thip hike|hip hitch|pelvic hike|pelvic hitch|standing hip hike\tbodyweight\tdynamic\tsingle leg\t\t1\t\t\thip abduction\t\thip~0|knee~0|ankle~0\t\tgluteus medius|gluteus minimus\tgluteus maximus|tensor fasciae latae\tgluteus maximus~0.21|tensor fasciae latae~0.88\tnone\tnovice\tlight\tbox\t\tside-lying hip abduction\tcable hip abduction\t\t',
    'wall press abduction hold\tstanding wall press|isometric hip abduction|wall press hold|single-leg wall press|isometric hip abduction at wall\tbodyweight\tisometric\tsingle leg\t\t1\t\t\thip abduction\t\thip~15|knee~20|ankle~5\t\tgluteus medius|gluteus minimus\tgluteus maximus|tensor fasciae latae\tgluteus maximus~0.38|tensor fasciae latae~0.84\tnone\tnovice\tlight\twall\t\tside-lying hip abduction\tpelvic drop\t\t',
    'frog raise\tprone frog lift|frog reverse hyper|prone frog raise\tbodyweight\tdynamic\tprone\t\t\t\t\thip abduction|hip external rotation\thip extension\thip~30|knee~100|ankle~0\t\tgluteus maximus|gluteus medius|gluteus minimus|deep hip rotators\ttensor fasciae latae\tgluteus maximus~0.53|tensor fasciae latae~0.81\tnone\tnovice\tlight\tbench\t\tclamshell\tfrog pump\t\t',
    'hip adduction machine\tmachine hip adduction|seated hip adduction|adductor machine|hip adduction|adduction machine|seated adduction\tmachine\tdynamic\tseated\t\t\t\t\thip adduction\t\thip~85|knee~90|ankle~0\t\tgracilis|adductor magnus|adductor longus|adductor brevis|pectineus\t\tgracilis~0.37|adductor magnus~0.75|adductor longus~0.01|adductor brevis~0.01\tnone\tnovice\theavy\tmachine hip adduction\t\tball squeeze\tcable hip adduction|Copenhagen side plank\t\t',
    'Copenhagen side plank\tCopenhagen plank|Copenhagen hold|CSP|long-lever Copenhagen plank|Copenhagen plank hold|isometric Copenhagen\tbodyweight\tisometric\tside-lying\t\t1\t\t\thip adduction\ttrunk side bend\thip~0|knee~0|ankle~0\t\tgracilis|adductor magnus|adductor longus|adductor brevis|pectineus\texternal oblique|internal oblique|quadratus lumborum\tgracilis~0.62|adductor magnus~0.02|adductor longus~0.7|adductor brevis~0.7\tnone\tintermediate\tlight\tbench\t\tshort-lever Copenhagen side plank|ball squeeze\tCopenhagen adduction\t\t',
    'Copenhagen adduction\tCopenhagen adductor raise|Copenhagen adduction exercise|Copenhagen hip adduction|dynamic Copenhagen plank|Copenhagen raise|Copenhagen\tbodyweight\tdynamic\tside-lying\t\t1\t\t\thip adduction\ttrunk side bend\thip~0|knee~0|ankle~0\t\tgracilis|adductor magnus|adductor longus|adductor brevis|pectineus\texternal oblique|internal oblique|quadratus lumborum\tgracilis~0.62|adductor magnus~0.02|adductor longus~0.7|adductor brevis~0.7\tnone\tadvanced\theavy\tbench|partner\t\tCopenhagen side plank|short-lever Copenhagen adduction\t\t\t',
    'short-lever Copenhagen side plank\tbent-knee Copenhagen plank|short Copenhagen plank|short-lever Copenhagen plank|half Copenhagen plank|knee Copenhagen plank\tbodyweight\tisometric\tside-lying\t\t1\t\t\thip adduction\ttrunk side bend\thip~0|knee~80|ankle~0\t\tgracilis|adductor magnus|adductor longus|adductor brevis|pectineus\texternal oblique|internal oblique|quadratus lumborum\tgracilis~0.2|adductor magnus~0.02|adductor longus~0.7|adductor brevis~0.7\tnone\tnovice\tlight\tbench\t\tball squeeze|side-lying hip adduction\tCopenhagen side plank|short-lever Copenhagen adduction\t\t',
    'short-lever Copenhagen adduction\tbent-knee Copenhagen adduction|short-lever Copenhagen raise|half Copenhagen adduction\tbodyweight\tdynamic\tside-lying\t\t1\t\t\thip adduction\ttrunk side bend\thip~0|knee~80|ankle~0\t\tgracilis|adductor magnus|adductor longus|adductor brevis|pectineus\texternal oblique|internal oblique|quadratus lumborum\tgracilis~0.2|adductor magnus~0.02|adductor longus~0.7|adductor brevis~0.7\tnone\tintermediate\tlight\tbench\t\tshort-lever Copenhagen side plank\tCopenhagen adduction\t\t',
    'cable hip adduction\tstanding cable hip adduction|cable adduction|standing hip adduction|multi-hip adduction\tcable\tdynamic\tstanding\t\t1\t\t\thip adduction\t\thip~5|knee~5|ankle~0\t\tgracilis|adductor magnus|adductor longus|adductor brevis|pectineus\t\tgracilis~0.6|adductor magnus~0.03|adductor longus~0.63|adductor brevis~0.63\tnone\tnovice\tlight\tcable\t\tband hip adduction\tCopenhagen side plank\t\t',
    'band hip adduction\tstanding band hip adduction|banded adduction|band adduction\tband\tdynamic\tstanding\t\t1\t\t\thip adduction\t\thip~5|knee~5|ankle~0\t\tgracilis|adductor magnus|adductor longus|adductor brevis|pectineus\t\tgracilis~0.6|adductor magnus~0.03|adductor longus~0.63|adductor brevis~0.63\tnone\tnovice\tlight\tband\t\tball squeeze\tcable hip adduction\t\t',
    'ball squeeze\tadductor squeeze|isometric hip adduction|groin squeeze|knee squeeze|adductor ball squeeze|isometric adduction|long-lever squeeze\tmedicine ball\tisometric\tlying\t\t\t\t\thip adduction\t\thip~45|knee~90|ankle~0\t\tgracilis|adductor magnus|adductor longus|adductor brevis|pectineus\t\tgracilis~0.19|adductor magnus~0.32|adductor longus~0.13|adductor brevis~0.13\tnone\tnovice\tlight\tmedicine ball|floor\t\t\tside-lying hip adduction|short-lever Copenhagen side plank\t\t',
    'side-lying hip adduction\tside-lying adduction|inner thigh raise|lying hip adduction|side-lying inner thigh lift\tbodyweight\tdynamic\tside-lying\t\t1\t\t\thip adduction\t\thip~0|knee~0|ankle~0\t\tgracilis|adductor magnus|adductor longus|adductor brevis|pectineus\t\tgracilis~0.62|adductor magnus~0.02|adductor longus~0.7|adductor brevis~0.7\tnone\tnovice\tlight\tfloor\t\tball squeeze\tband hip adduction|short-lever Copenhagen side plank\t\t',
    'slider adduction\tsliding hip adduction|slide-in adduction|slider hip adduction|slide-board adduction\tsliders\tdynamic\tstanding\t\t\t\t\thip adduction\t\thip~15|knee~10|ankle~0\t\tgracilis|adductor magnus|adductor longus|adductor brevis|pectineus\t\tgracilis~0.58|adductor magnus~0.08|adductor longus~0.48|adductor brevis~0.48\tnone\tintermediate\tlight\tsliders|floor\t\tband hip adduction\tCopenhagen side plank\t\t',
    'cable hip flexion\tstanding cable hip flexion|cable knee raise|cable knee drive|standing cable knee drive\tcable\tdynamic\tstanding\t\t1\t\t\thip flexion\t\thip~-5 100|knee~20 95|ankle~0 0\t\tiliacus|psoas major\trectus femoris|sartorius|tensor fasciae latae\trectus femoris~0.52|sartorius~0.58|tensor fasciae latae~0.63|iliacus~0.52|psoas major~0.52\tnone\tnovice\tlight\tcable\t\tband hip flexion\tmachine hip flexion\t\t',
    'band hip flexion\tpsoas march|banded march|standing band hip flexion|banded hip flexion|band knee drive|supine band march|banded psoas march\tband\tdynamic\tstanding\t\t1\t\t\thip flexion\t\thip~0 100|knee~10 95|ankle~0 0\t\tiliacus|psoas major\trectus femoris|sartorius|tensor fasciae latae\trectus femoris~0.48|sartorius~0.58|tensor fasciae latae~0.61|iliacus~0.5|psoas major~0.5\tnone\tnovice\tlight\tband\t\tstanding knee raise\tcable hip flexion\t\t',
    'machine hip flexion\tstanding hip flexion machine|multi-hip flexion|hip flexion machine|hip flexor machine\tmachine\tdynamic\tstanding\t\t1\t\t\thip flexion\t\thip~-5 95|knee~30 90|ankle~0 0\t\tiliacus|psoas major\trectus femoris|sartorius|tensor fasciae latae\trectus femoris~0.54|sartorius~0.59|tensor fasciae latae~0.65|iliacus~0.54|psoas major~0.54\tnone\tnovice\theavy\tmachine standing hip\t\tcable hip flexion\t\t\t',
    'supine straight-leg raise\tSLR|single-leg straight-leg raise|supine straight leg lift|lying single leg raise|single straight-leg raise\tbodyweight\tdynamic\tlying\t\t1\t\t\thip flexion\tknee extension\thip~0 50|knee~0 0|ankle~0 0\tquadriceps~indirect~It holds the knee straight against the weight of the leg, which is the point of it.\tiliacus|psoas major\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius|sartorius|tensor fasciae latae\trectus femoris~0.39|vastus lateralis~0.0|vastus medialis~0.0|vastus intermedius~0.0|sartorius~0.87|tensor fasciae latae~0.76|iliacus~0.71|psoas major~0.71\tnone\tnovice\tlight\tfloor\t\tquad set\tseated straight-leg lift\t\t',
    'standing knee raise\tstanding march|high knee march|standing knee lift|marching in place|kettlebell knee raise|foot-loaded knee raise\tbodyweight\tdynamic\tsingle leg\t\t1\t\t\thip flexion\thip abduction\thip~0 100|knee~5 95|ankle~0 0\t\tiliacus|psoas major\trectus femoris|sartorius|gluteus medius|gluteus minimus|tensor fasciae latae\trectus femoris~0.47|sartorius~0.59|tensor fasciae latae~0.61|iliacus~0.5|psoas major~0.5\tnone\tnovice\tlight\tfloor\t\t\tband hip flexion|cable hip flexion\t\t',
    'seated straight-leg lift\tseated leg lift|seated pike lift|pike compression|seated leg raise over object|pike leg lift|compression lift\tbodyweight\tdynamic\tseated\t\t1\t\t\thip flexion\tknee extension\thip~75 100|knee~0 0|ankle~0 0\t\tiliacus|psoas major\trectus femoris|sartorius|tensor fasciae latae\trectus femoris~0.08|sartorius~0.52|tensor fasciae latae~0.25|iliacus~0.18|psoas major~0.18\tnone\tintermediate\tlight\tfloor\t\tsupine straight-leg raise\t\t\t',
    'lying cable knee drive\tlying cable hip flexion|reverse squat|supine cable knee raise|lying banded knee drive\tcable\tdynamic\tlying\t\t\t\t\thip flexion\ttrunk flexion\thip~10 110|knee~30 100|ankle~0 0\t\tiliacus|psoas major\trectus femoris|sartorius|tensor fasciae latae|rectus abdominis\trectus femoris~0.49|sartorius~0.49|tensor fasciae latae~0.53|iliacus~0.42|psoas major~0.42\tnone\tintermediate\tlight\tcable|floor\t\tband hip flexion\tcable hip flexion\t\t',
    'hip flexion hold\tisometric hip flexion|knee raise hold|standing hip flexion hold|isometric knee raise\tbodyweight\tisometric\tsingle leg\t\t1\t\t\thip flexion\thip abduction\thip~100|knee~95|ankle~0\t\tiliacus|psoas major\trectus femoris|sartorius|gluteus medius|gluteus minimus|tensor fasciae latae\trectus femoris~0.41|sartorius~0.15|tensor fasciae latae~0.18|iliacus~0.07|psoas major~0.07\tnone\tnovice\tlight\tfloor\t\tstanding knee raise\tband hip flexion\t\t',
    'hip flexor lowering\tkneeling hip flexor eccentric|eccentric hip flexion|strap-assisted leg lowering|lying leg lowering|single-leg lowering\tband\tdynamic\tlying\t\t1\t\t\thip flexion\t\thip~-10 60|knee~10 10|ankle~0 0\t\tiliacus|psoas major\trectus femoris|sartorius|tensor fasciae latae\trectus femoris~0.43|sartorius~0.84|tensor fasciae latae~0.76|iliacus~0.71|psoas major~0.71\tnone\tintermediate\tlight\tband|bench\t\tsupine straight-leg raise\tcable hip flexion\t\t',
    'seated hip internal rotation\tseated band hip internal rotation|band hip internal rotation|hip internal rotation|cable hip internal rotation|seated internal hip rotation\tband\tdynamic\tseated\t\t1\t\t\thip internal rotation\t\thip~85|knee~90|ankle~0\t\tgluteus medius|gluteus minimus\ttensor fasciae latae\ttensor fasciae latae~0.34\tnone\tnovice\tlight\tband|box\t\treverse clamshell\t\t\t',
    'seated hip external rotation\tseated band hip external rotation|band hip external rotation|hip external rotation|cable hip external rotation|seated external hip rotation\tband\tdynamic\tseated\t\t1\t\t\thip external rotation\t\thip~55|knee~90|ankle~0\t\tdeep hip rotators\t\t\tnone\tnovice\tlight\tband|box\t\tclamshell\t\tSit high: with the hip bent further than 60 degrees the rotators turn the other way.\t',
    'prone hip internal rotation\tlying hip internal rotation|prone band hip internal rotation|prone internal rotation of the hip\tband\tdynamic\tprone\t\t1\t\t\thip internal rotation\t\thip~0|knee~90|ankle~0\t\tgluteus minimus\t\t\tnone\tnovice\tlight\tband|floor\t\t\tseated hip internal rotation\t\t',
    'prone hip external rotation\tlying hip external rotation|prone band hip external rotation|prone external rotation of the hip|heel squeeze rotation\tband\tdynamic\tprone\t\t1\t\t\thip external rotation\t\thip~0|knee~90|ankle~0\t\tgluteus maximus|deep hip rotators\tgluteus medius\tgluteus maximus~0.21\tnone\tnovice\tlight\tband|floor\t\tclamshell\thip airplane\t\t',
    'reverse clamshell\treverse clam|side-lying hip internal rotation|reverse clam shell exercise\tbodyweight\tdynamic\tside-lying\t\t1\t\t\thip internal rotation\thip abduction\thip~45|knee~90|ankle~0\t\tgluteus medius|gluteus minimus\ttensor fasciae latae\ttensor fasciae latae~0.7\tnone\tnovice\tlight\tfloor\t\t\tseated hip internal rotation\t\t',
    'hip airplane\thip aeroplane|single-leg hip rotation|standing hip airplane\tbodyweight\tdynamic\tsingle leg\t\t1\t\t\thip external rotation|hip abduction\thip internal rotation|hip extension\thip~60|knee~20|ankle~5\t\tgluteus medius|gluteus minimus|deep hip rotators\tgluteus maximus|tensor fasciae latae\tgluteus maximus~0.78|tensor fasciae latae~0.53\tnone\tadvanced\tlight\tfloor\t\tbodyweight single-leg Romanian deadlift|clamshell\t\t\t',
    '90/90 hip lift-off\t90-90 lift-off|90/90 hip rotation|hip 90-90|shin box lift-off|90-90 internal rotation lift\tbodyweight\tdynamic\tseated\t\t1\t\t\thip internal rotation\thip abduction\thip~80|knee~90|ankle~0\t\tgluteus medius|gluteus minimus\ttensor fasciae latae\ttensor fasciae latae~0.39\tnone\tintermediate\tlight\tfloor\t\treverse clamshell\t\t\t',
    'seated leg curl\tseated hamstring curl|machine seated leg curl|seated knee flexion|SLC\tmachine\tdynamic\tseated\t\t\t\t\tknee flexion\t\thip~85 85|knee~0 110|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.7|semitendinosus~0.7|semimembranosus~0.7|biceps femoris short head~0.52|sartorius~0.38|gracilis~0.57\tnone\tnovice\theavy\tmachine seated leg curl\t\tband leg curl\tsingle-leg seated leg curl|leaning seated leg curl\t\t',
    'lying leg curl\tleg curl|prone leg curl|hamstring curl|lying hamstring curl|machine leg curl|prone hamstring curl|LLC|knee flexion\tmachine\tdynamic\tprone\t\t\t\t\tknee flexion\t\thip~15 15|knee~0 110|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.36|semitendinosus~0.36|semimembranosus~0.36|biceps femoris short head~0.52|sartorius~0.76|gracilis~0.34\tnone\tnovice\theavy\tmachine lying leg curl\t\tband leg curl\tsingle-leg lying leg curl|Nordic curl\t\t',
    'single-leg seated leg curl\tone-leg seated leg curl|unilateral seated leg curl|single-leg seated hamstring curl\tmachine\tdynamic\tseated\t\t1\t\t\tknee flexion\t\thip~85 85|knee~0 110|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.7|semitendinosus~0.7|semimembranosus~0.7|biceps femoris short head~0.52|sartorius~0.38|gracilis~0.57\tnone\tnovice\theavy\tmachine seated leg curl\t\tseated leg curl\teccentric seated leg curl\t\t',
    'single-leg lying leg curl\tone-leg lying leg curl|single-leg prone leg curl|unilateral leg curl|single-leg leg curl\tmachine\tdynamic\tprone\t\t1\t\t\tknee flexion\t\thip~15 15|knee~0 110|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.36|semitendinosus~0.36|semimembranosus~0.36|biceps femoris short head~0.52|sartorius~0.76|gracilis~0.34\tnone\tnovice\theavy\tmachine lying leg curl\t\tlying leg curl\teccentric lying leg curl\t\t',
    'standing leg curl\tstanding hamstring curl|machine standing leg curl|single-leg standing leg curl\tmachine\tdynamic\tstanding\t\t1\t\t\tknee flexion\t\thip~5 5|knee~0 110|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.32|semitendinosus~0.32|semimembranosus~0.32|biceps femoris short head~0.52|sartorius~0.79|gracilis~0.34\tnone\tnovice\theavy\tmachine standing leg curl\t\tband standing leg curl\tsingle-leg lying leg curl\t\t',
    'kneeling leg curl\tkneeling hamstring curl|machine kneeling leg curl\tmachine\tdynamic\tkneeling\t\t1\t\t\tknee flexion\t\thip~35 35|knee~0 110|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.46|semitendinosus~0.46|semimembranosus~0.46|biceps femoris short head~0.52|sartorius~0.67|gracilis~0.36\tnone\tnovice\theavy\tmachine kneeling leg curl\t\tlying leg curl\t\t\t',
    'leaning seated leg curl\tlean-forward seated leg curl|forward-lean leg curl|lengthened seated leg curl\tmachine\tdynamic\tseated\t\t\t\t\tknee flexion\t\thip~105 105|knee~0 100|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.78|semitendinosus~0.78|semimembranosus~0.78|biceps femoris short head~0.56|sartorius~0.28|gracilis~0.71\tnone\tintermediate\theavy\tmachine seated leg curl\t\tseated leg curl\t\tThe pelvis tips forward over the thighs, not the upper back.\t',
    'eccentric seated leg curl\tseated leg curl two up one down|seated leg curl eccentric|eccentric overload seated leg curl\tmachine\tdynamic\tseated\t\t1\t\t\tknee flexion\t\thip~85 85|knee~0 110|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.7|semitendinosus~0.7|semimembranosus~0.7|biceps femoris short head~0.52|sartorius~0.38|gracilis~0.57\tnone\tintermediate\theavy\tmachine seated leg curl\t\tsingle-leg seated leg curl\t\t\t',
    'eccentric lying leg curl\ttwo up one down leg curl|lying leg curl eccentric|eccentric leg curl|eccentric overload leg curl\tmachine\tdynamic\tprone\t\t1\t\t\tknee flexion\t\thip~15 15|knee~0 110|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.36|semitendinosus~0.36|semimembranosus~0.36|biceps femoris short head~0.52|sartorius~0.76|gracilis~0.34\tnone\tintermediate\theavy\tmachine lying leg curl\t\tsingle-leg lying leg curl\tNordic curl\t\t',
    'cable leg curl\tstanding cable leg curl|cable hamstring curl|ankle-strap leg curl\tcable\tdynamic\tstanding\t\t1\t\t\tknee flexion\t\thip~5 5|knee~0 100|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.34|semitendinosus~0.34|semimembranosus~0.34|biceps femoris short head~0.56|sartorius~0.81|gracilis~0.37\tnone\tnovice\tlight\tcable\t\tband standing leg curl\tstanding leg curl\t\t',
    'lying cable leg curl\tprone cable leg curl|cable lying leg curl\tcable\tdynamic\tprone\t\t1\t\t\tknee flexion\t\thip~5 5|knee~0 100|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.34|semitendinosus~0.34|semimembranosus~0.34|biceps femoris short head~0.56|sartorius~0.81|gracilis~0.37\tnone\tnovice\tlight\tcable|bench\t\tcable leg curl\tlying leg curl\t\t',
    'band leg curl\tbanded leg curl|prone band leg curl|resistance band leg curl|band hamstring curl|lying band leg curl\tband\tdynamic\tprone\t\t\t\t\tknee flexion\t\thip~5 5|knee~0 100|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.34|semitendinosus~0.34|semimembranosus~0.34|biceps femoris short head~0.56|sartorius~0.81|gracilis~0.37\tnone\tnovice\tlight\tband|floor\t\tlong-lever bridge hold\tlying leg curl|slider leg curl\t\t',
    'seated band leg curl\tband seated leg curl|seated resistance band leg curl|banded seated leg curl\tband\tdynamic\tseated\t\t\t\t\tknee flexion\t\thip~80 80|knee~0 95|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.71|semitendinosus~0.71|semimembranosus~0.71|biceps femoris short head~0.59|sartorius~0.43|gracilis~0.58\tnone\tnovice\tlight\tband|box\t\tband leg curl\tseated leg curl\t\t',
    'band standing leg curl\tstanding band leg curl|ankle-weight leg curl|standing ankle-weight leg curl\tband\tdynamic\tstanding\t\t1\t\t\tknee flexion\t\thip~0 0|knee~0 95|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.33|semitendinosus~0.33|semimembranosus~0.33|biceps femoris short head~0.59|sartorius~0.83|gracilis~0.39\tnone\tnovice\tlight\tband\t\t\tcable leg curl|standing leg curl\t\t',
    'dumbbell leg curl\tDB leg curl|dumbbell lying leg curl|dumbbell hamstring curl|prone dumbbell leg curl\tdumbbell\tdynamic\tprone\t\t\t\t\tknee flexion\t\thip~10 10|knee~0 90|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.38|semitendinosus~0.38|semimembranosus~0.38|biceps femoris short head~0.61|sartorius~0.81|gracilis~0.39\tnone\tintermediate\tlight\tdumbbell|bench\t\tband leg curl\tlying leg curl\t\t',
    'isometric leg curl\tleg curl hold|leg curl isometric|isometric knee flexion|hamstring isometric\tmachine\tisometric\tprone\t\t\t\t\tknee flexion\t\thip~15|knee~30|ankle~0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.47|semitendinosus~0.47|semimembranosus~0.47|biceps femoris short head~0.78|sartorius~0.85|gracilis~0.48\tnone\tnovice\theavy\tmachine lying leg curl\t\tlong-lever bridge hold\tlying leg curl\t\t',
    'seated isometric leg curl\tisometric seated leg curl|seated leg curl hold|seated hamstring isometric\tmachine\tisometric\tseated\t\t\t\t\tknee flexion\t\thip~85|knee~30|ankle~0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.81|semitendinosus~0.81|semimembranosus~0.81|biceps femoris short head~0.78|sartorius~0.47|gracilis~0.71\tnone\tnovice\theavy\tmachine seated leg curl\t\tlong-lever bridge hold\tseated leg curl\t\t',
    'Nordic curl\tNordic|Nordic hamstring curl|Nordic hamstring exercise|NHE|Nordic lower|Nordic leg curl|Russian leg curl|eccentric Nordic curl\tbodyweight\tdynamic\tkneeling\t\t\t\t\tknee flexion\thip extension\thip~0 0|knee~0 90|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.34|semitendinosus~0.34|semimembranosus~0.34|biceps femoris short head~0.61|sartorius~0.84|gracilis~0.4\tnone\tadvanced\theavy\tfloor|partner\t\tassisted Nordic curl|eccentric lying leg curl\tweighted Nordic curl\t\t',
    'assisted Nordic curl\tband-assisted Nordic curl|band Nordic|band-assisted Nordic|push-up assisted Nordic curl\tband\tdynamic\tkneeling\t\t\t\t\tknee flexion\thip extension\thip~0 0|knee~0 90|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.34|semitendinosus~0.34|semimembranosus~0.34|biceps femoris short head~0.61|sartorius~0.84|gracilis~0.4\tnone\tintermediate\tlight\tband|rack\t\tslider leg curl|lying leg curl\tNordic curl\t\t',
    'weighted Nordic curl\tloaded Nordic curl|Nordic curl with plate|full Nordic curl|concentric Nordic curl\tplate\tdynamic\tkneeling\t\t\t\t\tknee flexion\thip extension\thip~0 0|knee~0 90|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.34|semitendinosus~0.34|semimembranosus~0.34|biceps femoris short head~0.61|sartorius~0.84|gracilis~0.4\tnone\tadvanced\theavy\tfloor|plate|partner\t1\tNordic curl\t\t\t',
    'razor curl\tbent-hip Nordic curl|hip-flexed Nordic curl|razor hamstring curl\tbodyweight\tdynamic\tkneeling\t\t\t\t\tknee flexion\thip extension\thip~70 70|knee~15 85|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.66|semitendinosus~0.66|semimembranosus~0.66|biceps femoris short head~0.57|sartorius~0.49|gracilis~0.52\tnone\tadvanced\tlight\tfloor|partner\t\tassisted Nordic curl\tNordic curl\t\t',
    'Nordic hold\tisometric Nordic curl|Nordic isometric|Nordic curl hold\tbodyweight\tisometric\tkneeling\t\t\t\t\tknee flexion\thip extension\thip~0|knee~50|ankle~0\tgluteus maximus~none~It only keeps the hip straight; the bending of the knee is the work.|adductor magnus~none~It only keeps the hip straight; the bending of the knee is the work.\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.32|semitendinosus~0.32|semimembranosus~0.32|biceps femoris short head~0.57|sartorius~0.83|gracilis~0.38\tnone\tintermediate\tlight\tfloor|partner\t\tlong-lever bridge hold\tNordic curl\t\t',
    'glute-ham raise\tGHR|glute ham raise on bench|glute-ham developer raise|GHD raise|glute-ham\tbodyweight\tdynamic\tprone\t\t\t\thip hinge\tknee flexion|hip extension\ttrunk extension\thip~85 0 0|knee~0 0 90|ankle~0 0 0\tgluteus maximus~indirect~Straightening the hip costs it little here: the bending of the knee ends the set.|adductor magnus~indirect~Straightening the hip costs it little here: the bending of the knee ends the set.\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tgracilis|gluteus maximus|adductor magnus|erector spinae|multifidus\tbiceps femoris long head~0.53|semitendinosus~0.53|semimembranosus~0.53|biceps femoris short head~0.81|gracilis~0.54|gluteus maximus~0.42|adductor magnus~0.17\tnone\tadvanced\theavy\tglute-ham bench\t\tback extension|assisted glute-ham raise\tweighted glute-ham raise\t\t',
    'assisted glute-ham raise\tband-assisted glute-ham raise|band-assisted GHR|assisted GHR\tband\tdynamic\tprone\t\t\t\thip hinge\tknee flexion|hip extension\ttrunk extension\thip~85 0 0|knee~0 0 90|ankle~0 0 0\tgluteus maximus~indirect~Straightening the hip costs it little here: the bending of the knee ends the set.|adductor magnus~indirect~Straightening the hip costs it little here: the bending of the knee ends the set.\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tgracilis|gluteus maximus|adductor magnus|erector spinae|multifidus\tbiceps femoris long head~0.53|semitendinosus~0.53|semimembranosus~0.53|biceps femoris short head~0.81|gracilis~0.54|gluteus maximus~0.42|adductor magnus~0.17\tnone\tintermediate\tlight\tglute-ham bench|band\t\tback extension|slider leg curl\tglute-ham raise\t\t',
    'weighted glute-ham raise\tloaded GHR|weighted GHR|plate glute-ham raise\tplate\tdynamic\tprone\t\t\t\thip hinge\tknee flexion|hip extension\ttrunk extension\thip~85 0 0|knee~0 0 90|ankle~0 0 0\tgluteus maximus~indirect~Straightening the hip costs it little here: the bending of the knee ends the set.|adductor magnus~indirect~Straightening the hip costs it little here: the bending of the knee ends the set.\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tgracilis|gluteus maximus|adductor magnus|erector spinae|multifidus\tbiceps femoris long head~0.53|semitendinosus~0.53|semimembranosus~0.53|biceps femoris short head~0.81|gracilis~0.54|gluteus maximus~0.42|adductor magnus~0.17\tlow\tadvanced\theavy\tglute-ham bench|plate\t1\tglute-ham raise\t\t\t',
    'slider leg curl\tsliding leg curl|slide leg curl|hamstring slide|slider hamstring curl|towel leg curl|slide-board leg curl\tsliders\tdynamic\tlying\t\t\t\t\tknee flexion\thip extension\thip~0 0|knee~20 100|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.27|semitendinosus~0.27|semimembranosus~0.27|biceps femoris short head~0.47|sartorius~0.79|gracilis~0.32\tnone\tintermediate\tlight\tsliders|floor\t\teccentric slider leg curl|ball leg curl\tsingle-leg slider leg curl\t\t',
    'eccentric slider leg curl\tslider leg curl eccentric|hamstring slide-out|eccentric sliding leg curl\tsliders\tdynamic\tlying\t\t\t\t\tknee flexion\thip extension\thip~0 0|knee~20 100|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.27|semitendinosus~0.27|semimembranosus~0.27|biceps femoris short head~0.47|sartorius~0.79|gracilis~0.32\tnone\tnovice\tlight\tsliders|floor\t\tlong-lever bridge|hamstring walkout\tslider leg curl\t\t',
    'single-leg slider leg curl\tsingle-leg sliding leg curl|one-leg slider leg curl\tsliders\tdynamic\tlying\t\t1\t\t\tknee flexion\thip extension|hip abduction\thip~0 0|knee~20 100|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis|gluteus medius|gluteus minimus\tbiceps femoris long head~0.27|semitendinosus~0.27|semimembranosus~0.27|biceps femoris short head~0.47|sartorius~0.79|gracilis~0.32\tnone\tadvanced\tlight\tsliders|floor\t\tslider leg curl\tNordic curl\t\t',
    'ball leg curl\tstability ball leg curl|Swiss ball leg curl|exercise ball leg curl|Swiss ball hamstring curl|gym ball leg curl|physio ball curl|SB leg curl\tbodyweight\tdynamic\tlying\t\t\t\t\tknee flexion\thip extension\thip~0 0|knee~20 100|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.27|semitendinosus~0.27|semimembranosus~0.27|biceps femoris short head~0.47|sartorius~0.79|gracilis~0.32\tnone\tnovice\tlight\texercise ball|floor\t\tlong-lever bridge\tslider leg curl|single-leg ball leg curl\t\t',
    'single-leg ball leg curl\tsingle-leg Swiss ball leg curl|single-leg stability ball leg curl|one-leg ball curl\tbodyweight\tdynamic\tlying\t\t1\t\t\tknee flexion\thip extension|hip abduction\thip~0 0|knee~20 100|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis|gluteus medius|gluteus minimus\tbiceps femoris long head~0.27|semitendinosus~0.27|semimembranosus~0.27|biceps femoris short head~0.47|sartorius~0.79|gracilis~0.32\tnone\tintermediate\tlight\texercise ball|floor\t\tball leg curl\tsingle-leg slider leg curl\t\t',
    'suspension leg curl\tstrap leg curl|suspension hamstring curl|suspension trainer leg curl|ring leg curl\tsuspension\tdynamic\tlying\t\t\t\t\tknee flexion\thip extension\thip~0 0|knee~15 100|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.29|semitendinosus~0.29|semimembranosus~0.29|biceps femoris short head~0.49|sartorius~0.8|gracilis~0.33\tnone\tintermediate\tlight\tsuspension|floor\t\tball leg curl\tslider leg curl|single-leg slider leg curl\t\t',
    'hamstring walkout\tbridge walkout|glute bridge walkout|hamstring bridge walkout|heel walkout\tbodyweight\tdynamic\tlying\t\t\t\t\tknee flexion\thip extension\thip~0 0|knee~25 90|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.28|semitendinosus~0.28|semimembranosus~0.28|biceps femoris short head~0.49|sartorius~0.8|gracilis~0.33\tnone\tnovice\tlight\tfloor\t\tglute bridge\teccentric slider leg curl|ball leg curl\t\t',
    'standing calf raise\tcalf raise|machine standing calf raise|standing machine calf raise|standing heel raise|machine calf raise|SCR\tmachine\tdynamic\tstanding\t\t\t\t\tplantarflexion\t\thip~0 0|knee~0 0|ankle~20 -40\t\tgastrocnemius|soleus\t\tgastrocnemius~0.72|soleus~0.48\thigh\tnovice\theavy\tmachine standing calf raise\t\tbodyweight calf raise|leg press calf raise\tsingle-leg calf raise|donkey calf raise\t\t',
    'bodyweight calf raise\theel raise|double-leg calf raise|bodyweight heel raise|two-leg calf raise|double-leg heel raise|BW calf raise\tbodyweight\tdynamic\tstanding\t\t\t\t\tplantarflexion\t\thip~0 0|knee~0 0|ankle~20 -40\t\tgastrocnemius|soleus\t\tgastrocnemius~0.72|soleus~0.48\tnone\tnovice\tlight\tbox\t\tband plantarflexion\tsingle-leg calf raise|standing calf raise\t\t',
    'single-leg calf raise\tsingle-leg heel raise|one-leg calf raise|SL calf raise|bodyweight single-leg calf raise|single-leg standing calf raise|SLCR\tbodyweight\tdynamic\tsingle leg\t\t1\t\t\tplantarflexion\t\thip~0 0|knee~0 0|ankle~20 -40\t\tgastrocnemius|soleus\t\tgastrocnemius~0.72|soleus~0.48\tnone\tnovice\tlight\tbox\t\tbodyweight calf raise\tdumbbell single-leg calf raise\t\t',
    'dumbbell single-leg calf raise\tDB single-leg calf raise|one-dumbbell calf raise|weighted single-leg calf raise|dumbbell one-leg calf raise\tdumbbell\tdynamic\tsingle leg\t\t1\t\t\tplantarflexion\t\thip~0 0|knee~0 0|ankle~20 -40\t\tgastrocnemius|soleus\t\tgastrocnemius~0.72|soleus~0.48\tlow\tnovice\tlight\tdumbbell|box\t1\tsingle-leg calf raise\tguided-bar single-leg calf raise\t\t',
    'leg press calf raise\tcalf press|calf press on leg press|leg press heel raise|leg press toe press|toe press\tmachine\tdynamic\tsupported\t\t\t\t\tplantarflexion\t\thip~80 80|knee~5 5|ankle~20 -40\t\tgastrocnemius|soleus\t\tgastrocnemius~0.7|soleus~0.48\tlow\tnovice\theavy\tmachine leg press\t\tbodyweight calf raise\tsingle-leg leg press calf raise|standing calf raise\t\t',
    'single-leg leg press calf raise\tsingle-leg calf press|one-leg calf press\tmachine\tdynamic\tsupported\t\t1\t\t\tplantarflexion\t\thip~80 80|knee~5 5|ankle~20 -40\t\tgastrocnemius|soleus\t\tgastrocnemius~0.7|soleus~0.48\tlow\tnovice\theavy\tmachine leg press\t\tleg press calf raise\tguided-bar single-leg calf raise\t\t',
    'donkey calf raise\tbent-over calf raise|machine donkey calf raise|donkey heel raise\tmachine\tdynamic\tsupported\t\t\t\t\tplantarflexion\t\thip~85 85|knee~0 0|ankle~20 -40\t\tgastrocnemius|soleus\t\tgastrocnemius~0.72|soleus~0.48\tlow\tnovice\theavy\tmachine donkey calf raise\t\tleg press calf raise\t\t\t',
    'dumbbell calf raise\tDB calf raise|standing dumbbell calf raise|dumbbell standing calf raise|kettlebell calf raise\tdumbbell\tdynamic\tstanding\t\t\t\t\tplantarflexion\t\thip~0 0|knee~0 0|ankle~20 -40\t\tgastrocnemius|soleus\t\tgastrocnemius~0.72|soleus~0.48\tmoderate\tnovice\tlight\tdumbbell|box\t1\tbodyweight calf raise\tdumbbell single-leg calf raise|standing calf raise\t\t',
    'guided-bar calf raise\tfixed-track calf raise|guided-bar standing calf raise\tguided bar\tdynamic\tstanding\t\t\t\t\tplantarflexion\t\thip~0 0|knee~0 0|ankle~20 -40\t\tgastrocnemius|soleus\t\tgastrocnemius~0.72|soleus~0.48\thigh\tnovice\theavy\tguided bar|box\t\tdumbbell calf raise\tguided-bar single-leg calf raise\t\t',
    'guided-bar single-leg calf raise\tfixed-track single-leg calf raise\tguided bar\tdynamic\tsingle leg\t\t1\t\t\tplantarflexion\t\thip~0 0|knee~0 0|ankle~20 -40\t\tgastrocnemius|soleus\t\tgastrocnemius~0.72|soleus~0.48\thigh\tintermediate\theavy\tguided bar|box\t\tdumbbell single-leg calf raise\t\t\t',
    'barbell calf raise\tBB calf raise|standing barbell calf raise|barbell standing calf raise|barbell heel raise\tbarbell\tdynamic\tstanding\t\t\t\t\tplantarflexion\t\thip~0 0|knee~0 0|ankle~15 -35\t\tgastrocnemius|soleus\t\tgastrocnemius~0.72|soleus~0.49\thigh\tintermediate\theavy\tbarbell|rack|plate\t\tdumbbell calf raise\tguided-bar calf raise\t\t',
    'hack squat calf raise\thack machine calf raise|hack squat machine calf raise\tmachine\tdynamic\tsupported\t\t\t\t\tplantarflexion\t\thip~5 5|knee~0 0|ankle~20 -40\t\tgastrocnemius|soleus\t\tgastrocnemius~0.72|soleus~0.48\tmoderate\tnovice\theavy\tmachine hack squat\t\tleg press calf raise\tstanding calf raise\t\t',
    'seated calf raise\tmachine seated calf raise|seated heel raise|seated soleus raise|seated machine calf raise\tmachine\tdynamic\tseated\t\t\t\t\tplantarflexion\t\thip~85 85|knee~90 90|ankle~20 -40\t\tsoleus\t\tsoleus~0.48\tnone\tnovice\theavy\tmachine seated calf raise\t\tdumbbell seated calf raise\tsingle-leg seated calf raise\t\t',
    'single-leg seated calf raise\tone-leg seated calf raise|single-leg seated heel raise\tmachine\tdynamic\tseated\t\t1\t\t\tplantarflexion\t\thip~85 85|knee~90 90|ankle~20 -40\t\tsoleus\t\tsoleus~0.48\tnone\tnovice\theavy\tmachine seated calf raise\t\tseated calf raise\t\t\t',
    'dumbbell seated calf raise\tDB seated calf raise|seated dumbbell calf raise|plate seated calf raise|kettlebell seated calf raise\tdumbbell\tdynamic\tseated\t\t\t\t\tplantarflexion\t\thip~85 85|knee~90 90|ankle~20 -40\t\tsoleus\t\tsoleus~0.48\tnone\tnovice\tlight\tdumbbell|bench|plate\t\t\tseated calf raise\t\t',
    'barbell seated calf raise\tseated barbell calf raise|BB seated calf raise|guided-bar seated calf raise\tbarbell\tdynamic\tseated\t\t\t\t\tplantarflexion\t\thip~85 85|knee~90 90|ankle~20 -40\t\tsoleus\t\tsoleus~0.48\tnone\tnovice\theavy\tbarbell|bench|plate\t\tdumbbell seated calf raise\tseated calf raise\t\t',
    'bent-knee calf raise\tsoleus raise|bent-knee heel raise|standing bent-knee calf raise|soleus calf raise|bodyweight bent-knee calf raise\tbodyweight\tdynamic\tstanding\t\t\t\t\tplantarflexion\t\thip~30 30|knee~50 50|ankle~25 -30\tgastrocnemius~indirect~The half-bent knee shortens it, so the soleus takes the larger share.\tsoleus\tgastrocnemius\tgastrocnemius~0.55|soleus~0.6\tnone\tnovice\tlight\tbox|wall\t\tbodyweight calf raise\tsingle-leg bent-knee calf raise\t\t',
    'single-leg bent-knee calf raise\tsingle-leg soleus raise|bent-knee single-leg calf raise|single-leg bent-knee heel raise|single-leg soleus calf raise\tbodyweight\tdynamic\tsingle leg\t\t1\t\t\tplantarflexion\t\thip~30 30|knee~50 50|ankle~25 -30\tgastrocnemius~indirect~The half-bent knee shortens it, so the soleus takes the larger share.\tsoleus\tgastrocnemius\tgastrocnemius~0.55|soleus~0.6\tnone\tnovice\tlight\tbox|wall\t\tbent-knee calf raise\tguided-bar bent-knee calf raise\t\t',
    'guided-bar bent-knee calf raise\tsplit-squat calf raise|guided-bar soleus raise|bent-knee calf raise in split stance\tguided bar\tdynamic\tsplit\t\t1\t\t\tplantarflexion\t\thip~60 60|knee~80 80|ankle~25 -25\t\tsoleus\t\tsoleus~0.64\tmoderate\tintermediate\theavy\tguided bar|plate\t\tsingle-leg bent-knee calf raise\t\t\t',
    'heel drop\teccentric heel drop|eccentric calf raise|straight-knee heel drop|single-leg heel drop|eccentric heel lowering|calf lowering|Achilles heel drop|heel drops knee straight\tbodyweight\tdynamic\tsingle leg\t\t1\t\t\tplantarflexion\t\thip~0 0|knee~0 0|ankle~20 -40\t\tgastrocnemius|soleus\t\tgastrocnemius~0.72|soleus~0.48\tnone\tnovice\tlight\tbox\t\tbodyweight calf raise\tdumbbell single-leg calf raise\tBoth legs go up, one leg goes down.\t',
    'bent-knee heel drop\teccentric bent-knee heel drop|heel drop knee bent|eccentric soleus drop|bent-knee eccentric calf raise\tbodyweight\tdynamic\tsingle leg\t\t1\t\t\tplantarflexion\t\thip~25 25|knee~45 45|ankle~25 -30\tgastrocnemius~indirect~The half-bent knee shortens it, so the soleus takes the larger share.\tsoleus\tgastrocnemius\tgastrocnemius~0.58|soleus~0.6\tnone\tnovice\tlight\tbox\t\tbent-knee calf raise\tsingle-leg bent-knee calf raise\tBoth legs go up, one leg goes down.\t',
    'calf raise hold\tisometric calf raise|isometric calf hold|calf iso hold|isometric heel raise|single-leg calf raise hold|heel raise hold\tbodyweight\tisometric\tstanding\t\t1\t\t\tplantarflexion\t\thip~0|knee~0|ankle~-15\t\tgastrocnemius|soleus\t\tgastrocnemius~0.67|soleus~0.41\tnone\tnovice\tlight\tfloor\t\tbodyweight calf raise\tsingle-leg calf raise\t\t',
    'bent-knee calf hold\tsoleus hold|isometric soleus hold|bent-knee isometric calf raise|wall-lean soleus hold|soleus wall push|seated isometric calf raise\tbodyweight\tisometric\tsplit\t\t1\t\t\tplantarflexion\t\thip~35|knee~55|ankle~10\tgastrocnemius~indirect~The half-bent knee shortens it, so the soleus takes the larger share.\tsoleus\tgastrocnemius\tgastrocnemius~0.63|soleus~0.8\tnone\tnovice\tlight\twall\t\tbent-knee calf raise\tsingle-leg bent-knee calf raise\t\t',
    'isometric plantarflexion push\tisometric standing calf push|calf isometric against rack|maximal isometric plantarflexion|isometric ankle push\tbarbell\tisometric\tstanding\t\t\t\t\tplantarflexion\t\thip~0|knee~0|ankle~0\t\tgastrocnemius|soleus\t\tgastrocnemius~0.8|soleus~0.65\thigh\tintermediate\theavy\tbarbell|rack\t\tcalf raise hold\tstanding calf raise\t\t',
    'band plantarflexion\tband ankle plantarflexion|banded calf press|resistance band plantarflexion|band calf press\tband\tdynamic\tseated\t\t1\t\t\tplantarflexion\t\thip~85 85|knee~0 0|ankle~10 -40\t\tgastrocnemius|soleus\t\tgastrocnemius~0.67|soleus~0.4\tnone\tnovice\tlight\tband|floor\t\t\tbodyweight calf raise\t\t',
    'toe walk\ttiptoe walk|calf walk|walking on toes|loaded toe walk|farmer toe walk\tbodyweight\tdynamic\tstanding\t\t\t\t\tplantarflexion\t\thip~0 0|knee~5 5|ankle~0 -25\t\tgastrocnemius|soleus\t\tgastrocnemius~0.68|soleus~0.45\tnone\tnovice\tlight\tfloor\t\tbodyweight calf raise\tdumbbell calf raise\t\t',
    'tibialis raise\ttib raise|wall tibialis raise|toe raise|standing toe raise|tibialis wall raise|anterior tibialis raise|shin raise\tbodyweight\tdynamic\tsupported\t\t\t\t\tdorsiflexion\t\thip~15 15|knee~0 0|ankle~-25 15\t\ttibialis anterior\ttoe extensors\ttibialis anterior~0.5\tnone\tnovice\tlight\twall\t\tband dorsiflexion\tloaded tibialis raise\t\t',
    'loaded tibialis raise\ttib bar raise|tibia bar raise|seated tib raise|seated tibialis raise|machine tibialis raise|weighted tibialis raise|seated dorsiflexion with plate\tmachine\tdynamic\tseated\t\t\t\t\tdorsiflexion\t\thip~85 85|knee~80 80|ankle~-30 15\t\ttibialis anterior\ttoe extensors\ttibialis anterior~0.54\tnone\tnovice\tlight\ttibialis bar|bench\t\ttibialis raise\t\t\t',
    'band dorsiflexion\tband ankle dorsiflexion|banded dorsiflexion|resistance band dorsiflexion|cable dorsiflexion|ankle dorsiflexion\tband\tdynamic\tseated\t\t1\t\t\tdorsiflexion\t\thip~85 85|knee~0 0|ankle~-30 15\t\ttibialis anterior\ttoe extensors\ttibialis anterior~0.54\tnone\tnovice\tlight\tband|floor\t\t\ttibialis raise\t\t',
    'kettlebell dorsiflexion\tkettlebell tib raise|foot-loaded dorsiflexion|hanging kettlebell tib raise|dumbbell dorsiflexion\tkettlebell\tdynamic\tseated\t\t1\t\t\tdorsiflexion\t\thip~85 85|knee~80 80|ankle~-30 15\t\ttibialis anterior\ttoe extensors\ttibialis anterior~0.54\tnone\tnovice\tlight\tkettlebell|box\t\tband dorsiflexion\tloaded tibialis raise\t\t',
    'heel walk\twalking on heels|heel walking|shin walk\tbodyweight\tdynamic\tstanding\t\t\t\t\tdorsiflexion\t\thip~5 5|knee~5 5|ankle~-5 15\t\ttibialis anterior\ttoe extensors\ttibialis anterior~0.34\tnone\tnovice\tlight\tfloor\t\tband dorsiflexion\ttibialis raise\t\t',
    'band ankle eversion\tband eversion|ankle eversion|banded ankle eversion|cable ankle eversion|peroneal band work\tband\tdynamic\tseated\t\t1\t\t\tankle eversion\t\thip~85|knee~30|ankle~-10\t\tperoneals\t\t\tnone\tnovice\tlight\tband|floor\t\t\tsingle-leg balance\t\t',
    'band ankle inversion\tband inversion|ankle inversion|banded ankle inversion|cable ankle inversion\tband\tdynamic\tseated\t\t1\t\t\tankle inversion\t\thip~85|knee~30|ankle~-10\t\ttibialis posterior\ttibialis anterior|long toe flexors\ttibialis anterior~0.58\tnone\tnovice\tlight\tband|floor\t\t\tball-squeeze calf raise\t\t',
    'ball-squeeze calf raise\tcalf raise with ball between heels|tibialis posterior calf raise|heel-squeeze calf raise|ball squeeze heel raise\tbodyweight\tdynamic\tstanding\t\t\t\t\tplantarflexion|ankle inversion\t\thip~0 0|knee~0 0|ankle~10 -35\t\tgastrocnemius|soleus|tibialis posterior\ttibialis anterior|long toe flexors\tgastrocnemius~0.69|soleus~0.45|tibialis anterior~0.62\tnone\tnovice\tlight\tfloor\t\tbodyweight calf raise\tsingle-leg calf raise\t\t',
    'short foot\tshort foot exercise|foot doming|arch raise|foot dome|arch lift\tnone\tisometric\tseated\t\t1\t\t\tankle inversion\t\thip~85|knee~90|ankle~0\t\ttibialis posterior\ttibialis anterior|long toe flexors\ttibialis anterior~0.42\tnone\tnovice\tlight\tfloor\t\t\ttowel scrunch|single-leg balance\tMainly the small muscles of the sole, which no count here covers.\t',
    'towel scrunch\ttowel toe curl|towel curl with toes|toe scrunch|towel gathering|toe yoga\tnone\tdynamic\tseated\t\t1\t\t\tankle inversion\t\thip~85|knee~90|ankle~0\t\ttibialis posterior\ttibialis anterior|long toe flexors\ttibialis anterior~0.42\tnone\tnovice\tlight\tfloor\t\tshort foot\tsingle-leg calf raise\tMainly the small muscles of the sole, which no count here covers.\t',
    'single-leg balance\tsingle-leg stance|one-leg balance|single-leg stand|balance on one leg|wobble board balance\tnone\tisometric\tsingle leg\t\t1\t\t\tankle eversion|ankle inversion\thip abduction\thip~5|knee~10|ankle~5\t\ttibialis posterior|peroneals\tgluteus medius|gluteus minimus|tibialis anterior|long toe flexors\ttibialis anterior~0.34\tnone\tnovice\tlight\tfloor\t\t\tsingle-leg calf raise\t\t',
    'back squat\tsquat|barbell squat|barbell back squat|high-bar squat|high-bar back squat|full squat|deep squat|parallel squat|tempo squat\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~110 0|knee~120 0|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.55|vastus medialis~0.55|vastus intermedius~0.55|gluteus maximus~0.7|adductor magnus~0.45\thigh\tintermediate\theavy\tbarbell|rack\t\tgoblet squat|box squat\tpaused squat|overhead squat\t\t',
    'front squat\tbarbell front squat|FS|clean-grip front squat\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~100 0|knee~120 0|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.55|vastus medialis~0.55|vastus intermedius~0.55|gluteus maximus~0.67|adductor magnus~0.4\thigh\tintermediate\theavy\tbarbell|rack\t\tgoblet squat|kettlebell front squat\toverhead squat\t\t',
    'goblet squat\tdumbbell goblet squat|kettlebell goblet squat|DB goblet squat|KB goblet squat\tdumbbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~105 0|knee~115 0|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.53|vastus medialis~0.53|vastus intermedius~0.53|gluteus maximus~0.68|adductor magnus~0.42\tlow\tnovice\tlight\tdumbbell\t1\tbodyweight squat\tfront squat|dumbbell squat\t\t',
    'bodyweight squat\tair squat|BW squat|free squat\tbodyweight\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~105 0|knee~115 0|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.53|vastus medialis~0.53|vastus intermedius~0.53|gluteus maximus~0.68|adductor magnus~0.42\tnone\tnovice\tlight\tfloor\t\tchair squat|suspension squat\tgoblet squat\t\t',
    'low-bar back squat\tlow-bar squat|LBBS\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\thip extension|knee extension\t\thip~115 0|knee~105 0|ankle~18 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.49|vastus medialis~0.49|vastus intermedius~0.49|gluteus maximus~0.71|adductor magnus~0.47\thigh\tintermediate\theavy\tbarbell|rack\t\tbox squat|goblet squat\tpaused squat\t\t',
    'box squat\tbarbell box squat|back squat to box\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\thip extension|knee extension\t\thip~95 0|knee~90 0|ankle~8 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.43|vastus medialis~0.43|vastus intermedius~0.43|gluteus maximus~0.65|adductor magnus~0.37\thigh\tintermediate\theavy\tbarbell|rack|box\t\tgoblet squat\tback squat\t\t',
    'safety bar squat\tSSB squat|safety squat bar squat|yoke bar squat\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~105 0|knee~115 0|ankle~23 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.53|vastus medialis~0.53|vastus intermedius~0.53|gluteus maximus~0.68|adductor magnus~0.42\thigh\tintermediate\theavy\tbarbell|rack\t\tgoblet squat\tback squat|front squat\t\t',
    'paused squat\tpause squat|pause back squat|paused back squat\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~110 0|knee~120 0|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.55|vastus medialis~0.55|vastus intermedius~0.55|gluteus maximus~0.7|adductor magnus~0.45\thigh\tintermediate\theavy\tbarbell|rack\t\tback squat\tpin squat\t\t',
    'half squat\thalf back squat|half-depth squat\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~80 0|knee~90 0|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.43|vastus medialis~0.43|vastus intermedius~0.43|gluteus maximus~0.6|adductor magnus~0.3\thigh\tintermediate\theavy\tbarbell|rack\t\tgoblet squat\tback squat\t\t',
    'quarter squat\tquarter back squat|partial squat\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~45 0|knee~55 0|ankle~15 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.27|vastus medialis~0.27|vastus intermedius~0.27|gluteus maximus~0.45|adductor magnus~0.14\thigh\tintermediate\theavy\tbarbell|rack\t\tgoblet squat\thalf squat\t\t',
    'pin squat\tdead-stop squat|bottom-up squat|squat from pins\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~95 0|knee~100 0|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47|gluteus maximus~0.65|adductor magnus~0.37\thigh\tadvanced\theavy\tbarbell|rack\t\tbox squat\t\t\t',
    'guided-bar squat\tfixed-track squat|guided-bar back squat\tguided bar\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~100 0|knee~110 0|ankle~15 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.51|vastus medialis~0.51|vastus intermedius~0.51|gluteus maximus~0.67|adductor magnus~0.4\thigh\tnovice\theavy\tguided bar\t\tgoblet squat\tback squat\t\t',
    'hack squat\tmachine hack squat|hack squat machine|sled hack squat\tmachine\tdynamic\tsupported\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~95 5|knee~115 5|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.55|vastus medialis~0.55|vastus intermedius~0.55|gluteus maximus~0.67|adductor magnus~0.39\tmoderate\tnovice\theavy\tmachine hack squat\t\tleg press\tpendulum squat|back squat\t\t',
    'pendulum squat\tmachine pendulum squat\tmachine\tdynamic\tsupported\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~100 5|knee~120 5|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.57|vastus medialis~0.57|vastus intermedius~0.57|gluteus maximus~0.69|adductor magnus~0.42\tmoderate\tintermediate\theavy\tmachine pendulum squat\t\thack squat\t\t\t',
    'machine squat\tlever squat machine|V-squat|standing squat machine\tmachine\tdynamic\tsupported\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~100 0|knee~110 0|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.51|vastus medialis~0.51|vastus intermedius~0.51|gluteus maximus~0.67|adductor magnus~0.4\thigh\tnovice\theavy\tmachine squat\t\thack squat\tback squat\t\t',
    'belt squat\thip-belt squat|belt squat machine\tmachine\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~100 0|knee~110 0|ankle~22 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.51|vastus medialis~0.51|vastus intermedius~0.51|gluteus maximus~0.67|adductor magnus~0.4\tnone\tnovice\theavy\tmachine belt squat\t\tgoblet squat\tback squat\t\t',
    'heel-elevated squat\tcyclist squat|heel-elevated goblet squat|heels-raised squat|wedge squat|slant-board squat\tdumbbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension\thip extension\thip~90 0|knee~120 0|ankle~10 -15\t\tvastus lateralis|vastus medialis|vastus intermedius\tgluteus maximus|adductor magnus\tvastus lateralis~0.55|vastus medialis~0.55|vastus intermedius~0.55|gluteus maximus~0.63|adductor magnus~0.35\tlow\tintermediate\tlight\tdumbbell|plate\t1\tgoblet squat\tfront squat|sissy squat\t\t',
    'overhead squat\tbarbell overhead squat|OHS\tbarbell\tdynamic\tstanding\twide\t\tsquat\tsquat\tknee extension|hip extension\t\thip~105 0|knee~120 0|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.55|vastus medialis~0.55|vastus intermedius~0.55|gluteus maximus~0.68|adductor magnus~0.42\thigh\tadvanced\tlight\tbarbell|rack\t\tfront squat\t\t\t',
    'dumbbell squat\tDB squat|dumbbell suitcase squat|two-dumbbell squat\tdumbbell\tdynamic\tstanding\tneutral\t\tsquat\tsquat\tknee extension|hip extension\t\thip~105 0|knee~110 0|ankle~22 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.51|vastus medialis~0.51|vastus intermedius~0.51|gluteus maximus~0.68|adductor magnus~0.42\tmoderate\tnovice\theavy\tdumbbell\t1\tgoblet squat\tback squat|trap bar deadlift\t\t',
    'kettlebell front squat\tdouble kettlebell front squat|KB front squat|kettlebell rack squat|dumbbell front squat\tkettlebell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~100 0|knee~115 0|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.53|vastus medialis~0.53|vastus intermedius~0.53|gluteus maximus~0.67|adductor magnus~0.4\tmoderate\tintermediate\theavy\tkettlebell\t1\tgoblet squat\tfront squat\t\t',
    'sumo squat\tplie squat|wide-stance squat|dumbbell sumo squat|kettlebell sumo squat\tdumbbell\tdynamic\tstanding\t\t\tsquat\tsquat\thip extension|knee extension\thip adduction\thip~90 0|knee~95 0|ankle~10 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgracilis|adductor longus|adductor brevis|pectineus\tvastus lateralis~0.45|vastus medialis~0.45|vastus intermedius~0.45|gracilis~0.46|gluteus maximus~0.63|adductor magnus~0.35|adductor longus~0.21|adductor brevis~0.21\tlow\tnovice\tlight\tdumbbell\t1\tbodyweight squat\tgoblet squat|sumo deadlift\t\t',
    'landmine squat\tangled-bar squat|landmine goblet squat\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~95 0|knee~105 0|ankle~15 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.49|vastus medialis~0.49|vastus intermedius~0.49|gluteus maximus~0.65|adductor magnus~0.37\tlow\tnovice\tlight\tlandmine|barbell\t1\tgoblet squat\tfront squat\t\t',
    'sandbag squat\tsandbag bear-hug squat|bear-hug squat|sandbag front squat\tsandbag\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\ttrunk extension\thip~105 0|knee~110 0|ankle~22 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\terector spinae|multifidus\tvastus lateralis~0.51|vastus medialis~0.51|vastus intermedius~0.51|gluteus maximus~0.68|adductor magnus~0.42\tmoderate\tintermediate\theavy\tsandbag\t1\tgoblet squat\t\t\t',
    'elbow-crook squat\tcrook-of-the-elbow squat|bar-in-elbows squat\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\ttrunk extension\thip~105 0|knee~115 0|ankle~23 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\terector spinae|multifidus\tvastus lateralis~0.53|vastus medialis~0.53|vastus intermedius~0.53|gluteus maximus~0.68|adductor magnus~0.42\thigh\tadvanced\theavy\tbarbell|rack\t\tgoblet squat|front squat\t\t\t',
    'hand-assisted safety bar squat\thands-assisted squat|assisted safety bar squat\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~100 0|knee~115 0|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.53|vastus medialis~0.53|vastus intermedius~0.53|gluteus maximus~0.67|adductor magnus~0.4\thigh\tintermediate\theavy\tbarbell|rack\t\tsafety bar squat\t\t\t',
    'banded squat\tband squat|resistance band squat|band-resisted squat\tband\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~100 0|knee~110 0|ankle~22 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.51|vastus medialis~0.51|vastus intermedius~0.51|gluteus maximus~0.67|adductor magnus~0.4\tlow\tnovice\tlight\tband\t\tbodyweight squat\tgoblet squat\t\t',
    'suspension squat\tassisted squat|suspension-assisted squat|strap squat\tsuspension\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~100 0|knee~110 0|ankle~15 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.51|vastus medialis~0.51|vastus intermedius~0.51|gluteus maximus~0.67|adductor magnus~0.4\tnone\tnovice\tlight\tsuspension\t\tchair squat\tbodyweight squat\t\t',
    'chair squat\tsit-to-stand|chair stand|bodyweight box squat|sit to stand from chair\tbodyweight\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~85 0|knee~90 0|ankle~12 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.43|vastus medialis~0.43|vastus intermedius~0.43|gluteus maximus~0.62|adductor magnus~0.32\tnone\tnovice\tlight\tbox\t\tsuspension squat\tbodyweight squat\t\t',
    'ball wall squat\twall squat with ball|stability ball wall squat\tbodyweight\tdynamic\tsupported\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~85 0|knee~90 0|ankle~5 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.43|vastus medialis~0.43|vastus intermedius~0.43|gluteus maximus~0.62|adductor magnus~0.32\tnone\tnovice\tlight\texercise ball|wall\t\twall sit\tbodyweight squat\t\t',
    'Spanish squat\tband-behind-knee squat|banded Spanish squat\tband\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension\thip extension\thip~85 0|knee~100 0|ankle~0 0\t\tvastus lateralis|vastus medialis|vastus intermedius\tgluteus maximus|adductor magnus\tvastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47|gluteus maximus~0.62|adductor magnus~0.32\tlow\tnovice\tlight\tband|rack\t\twall sit\theel-elevated squat\t\t',
    'sissy squat\tsissy squat machine|sissy squat bench\tbodyweight\tdynamic\tstanding\t\t\t\t\tknee extension\t\thip~0 0|knee~120 0|ankle~25 -10\t\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.74|vastus lateralis~0.55|vastus medialis~0.55|vastus intermedius~0.55\tnone\tadvanced\tlight\tfloor\t\theel-elevated squat|reverse Nordic curl\t\t\t',
    'thruster\tbarbell thruster|squat to press|front squat to press\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\tshoulder flexion|shoulder abduction|elbow extension\thip~100 0|knee~115 0|ankle~25 0|shoulder~60 170|elbow~130 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tanterior deltoid|middle deltoid|triceps long head|triceps lateral head|triceps medial head\tvastus lateralis~0.53|vastus medialis~0.53|vastus intermedius~0.53|gluteus maximus~0.67|adductor magnus~0.4|triceps long head~0.82|triceps lateral head~0.53|triceps medial head~0.53\thigh\tintermediate\tlight\tbarbell\t\tgoblet squat|front squat\t\t\t',
    'dumbbell thruster\tDB thruster|dumbbell squat to press|kettlebell thruster\tdumbbell\tdynamic\tstanding\tneutral\t\tsquat\tsquat\tknee extension|hip extension\tshoulder flexion|shoulder abduction|elbow extension\thip~100 0|knee~110 0|ankle~22 0|shoulder~60 170|elbow~130 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tanterior deltoid|middle deltoid|triceps long head|triceps lateral head|triceps medial head\tvastus lateralis~0.51|vastus medialis~0.51|vastus intermedius~0.51|gluteus maximus~0.67|adductor magnus~0.4|triceps long head~0.82|triceps lateral head~0.53|triceps medial head~0.53\tmoderate\tintermediate\tlight\tdumbbell\t1\tgoblet squat\tthruster\t\t',
    'Cossack squat\tside-to-side squat|Cossack lunge\tbodyweight\tdynamic\tstanding\t\t1\tlunge\tlunge\tknee extension|hip extension\thip adduction|hip abduction\thip~110 0|knee~120 0|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgracilis|gluteus medius|gluteus minimus|adductor longus|adductor brevis|pectineus\tvastus lateralis~0.55|vastus medialis~0.55|vastus intermedius~0.55|gracilis~0.43|gluteus maximus~0.7|adductor magnus~0.45|adductor longus~0.19|adductor brevis~0.19\tnone\tintermediate\tlight\tfloor\t\tlateral lunge\tpistol squat\t\t',
    'pistol squat\tpistol|single-leg pistol squat|one-leg squat\tbodyweight\tdynamic\tsingle leg\t\t1\tsquat\tsquat\tknee extension|hip extension\thip abduction|hip flexion\thip~115 0|knee~120 0|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.55|vastus medialis~0.55|vastus intermedius~0.55|gluteus maximus~0.71|adductor magnus~0.47\tnone\tadvanced\tlight\tfloor\t\tsingle-leg box squat|skater squat\t\t\t',
    'single-leg box squat\tsingle-leg squat to box|single-leg sit-to-stand|one-leg chair squat|single-leg bench squat\tbodyweight\tdynamic\tsingle leg\t\t1\tsquat\tsquat\tknee extension|hip extension\thip abduction\thip~90 0|knee~95 0|ankle~18 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.45|vastus medialis~0.45|vastus intermedius~0.45|gluteus maximus~0.63|adductor magnus~0.35\tnone\tintermediate\tlight\tbox\t\tstep-down|chair squat\tpistol squat\t\t',
    'single-leg squat\tsingle-leg squat off box|SL squat|off-box pistol\tbodyweight\tdynamic\tsingle leg\t\t1\tsquat\tsquat\tknee extension|hip extension\thip abduction\thip~95 0|knee~100 0|ankle~23 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47|gluteus maximus~0.65|adductor magnus~0.37\tnone\tintermediate\tlight\tbox\t\tsingle-leg box squat|step-down\tpistol squat\t\t',
    'skater squat\tairborne lunge|skater lunge\tbodyweight\tdynamic\tsingle leg\t\t1\tsquat\tsquat\tknee extension|hip extension\thip abduction\thip~100 0|knee~105 0|ankle~23 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.49|vastus medialis~0.49|vastus intermedius~0.49|gluteus maximus~0.67|adductor magnus~0.4\tnone\tadvanced\tlight\tfloor\t\tsingle-leg box squat|rear-foot-elevated split squat\tshrimp squat\t\t',
    'shrimp squat\tsingle-leg shrimp squat\tbodyweight\tdynamic\tsingle leg\t\t1\tsquat\tsquat\tknee extension|hip extension\thip abduction\thip~90 0|knee~115 0|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.53|vastus medialis~0.53|vastus intermedius~0.53|gluteus maximus~0.63|adductor magnus~0.35\tnone\tadvanced\tlight\tfloor\t\tskater squat\t\t\t',
    'wall sit\twall squat|wall squat hold|wall sit hold|isometric wall sit\tbodyweight\tisometric\tsupported\t\t\t\t\tknee extension\t\thip~80|knee~90|ankle~0\trectus femoris~indirect~It helps to hold the knee, but with the hip at a right angle it is too short to do much.\tvastus lateralis|vastus medialis|vastus intermedius\trectus femoris\trectus femoris~0.47|vastus lateralis~0.8|vastus medialis~0.8|vastus intermedius~0.8\tnone\tnovice\tlight\twall\t\t\tsingle-leg wall sit|Spanish squat hold\t\t',
    'single-leg wall sit\tone-leg wall sit|single-leg wall squat\tbodyweight\tisometric\tsupported\t\t1\t\t\tknee extension\t\thip~80|knee~90|ankle~0\trectus femoris~indirect~It helps to hold the knee, but with the hip at a right angle it is too short to do much.\tvastus lateralis|vastus medialis|vastus intermedius\trectus femoris\trectus femoris~0.47|vastus lateralis~0.8|vastus medialis~0.8|vastus intermedius~0.8\tnone\tintermediate\tlight\twall\t\twall sit\tsingle-leg squat\t\t',
    'Spanish squat hold\tisometric Spanish squat|Spanish squat isometric\tband\tisometric\tstanding\t\t\tsquat\tsquat\tknee extension\t\thip~75|knee~90|ankle~0\trectus femoris~none~Held as in a squat: it would bend the hip that the hold keeps from bending.\tvastus lateralis|vastus medialis|vastus intermedius\t\tvastus lateralis~0.8|vastus medialis~0.8|vastus intermedius~0.8\tlow\tnovice\tlight\tband|rack\t\twall sit\tSpanish squat\t\t',
    'isometric squat\tisometric back squat|squat isometric|squat against pins|isometric pin squat\tbarbell\tisometric\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~75|knee~90|ankle~18\trectus femoris~none~Held as in a squat: it would bend the hip that the hold keeps from bending.|hamstrings~none~Held as in a squat: they would bend the knee that the hold keeps from bending.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.8|vastus medialis~0.8|vastus intermedius~0.8|gluteus maximus~0.88|adductor magnus~0.64\thigh\tintermediate\theavy\tbarbell|rack\t\twall sit\tpin squat\t\t',
    'squat hold\tdeep squat hold|goblet squat hold|bodyweight squat hold\tbodyweight\tisometric\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~105|knee~115|ankle~25\trectus femoris~none~Held as in a squat: it would bend the hip that the hold keeps from bending.|hamstrings~none~Held as in a squat: they would bend the knee that the hold keeps from bending.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.97|vastus medialis~0.97|vastus intermedius~0.97|gluteus maximus~0.99|adductor magnus~0.95\tnone\tnovice\tlight\tfloor\t\twall sit\tgoblet squat\t\t',
    'split squat hold\tisometric split squat|split squat isometric|lunge hold|isometric lunge\tbodyweight\tisometric\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~75|knee~90|ankle~10\trectus femoris~none~Held as in a squat: it would bend the hip that the hold keeps from bending.|hamstrings~none~Held as in a squat: they would bend the knee that the hold keeps from bending.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.8|vastus medialis~0.8|vastus intermedius~0.8|gluteus maximus~0.88|adductor magnus~0.64\tnone\tnovice\tlight\tfloor\t\twall sit\tsplit squat\t\t',
    'leg press\t45-degree leg press|incline leg press|sled leg press|LP|machine leg press\tmachine\tdynamic\tsupported\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~110 60|knee~100 5|ankle~15 0\trectus femoris~indirect~It shortens little, and would bend the very hip that the press straightens.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\trectus femoris\trectus femoris~0.31|vastus lateralis~0.49|vastus medialis~0.49|vastus intermedius~0.49|gluteus maximus~0.92|adductor magnus~0.74\tlow\tnovice\theavy\tmachine leg press\t\thorizontal leg press\tsingle-leg leg press|hack squat\t\t',
    'horizontal leg press\tseated leg press|selectorised leg press|stack leg press\tmachine\tdynamic\tseated\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~105 60|knee~100 5|ankle~12 0\trectus femoris~indirect~It shortens little, and would bend the very hip that the press straightens.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\trectus femoris\trectus femoris~0.32|vastus lateralis~0.49|vastus medialis~0.49|vastus intermedius~0.49|gluteus maximus~0.91|adductor magnus~0.72\tlow\tnovice\theavy\tmachine leg press\t\tchair squat\tleg press\t\t',
    'single-leg leg press\tone-leg leg press|unilateral leg press|SL leg press\tmachine\tdynamic\tsupported\t\t1\tsquat\tsquat\tknee extension|hip extension\t\thip~110 60|knee~100 5|ankle~15 0\trectus femoris~indirect~It shortens little, and would bend the very hip that the press straightens.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\trectus femoris\trectus femoris~0.31|vastus lateralis~0.49|vastus medialis~0.49|vastus intermedius~0.49|gluteus maximus~0.92|adductor magnus~0.74\tlow\tnovice\theavy\tmachine leg press\t\tleg press\t\t\t',
    'high-foot leg press\thigh and wide leg press|leg press feet high|wide-stance leg press\tmachine\tdynamic\tsupported\t\t\tsquat\tsquat\thip extension|knee extension\t\thip~115 55|knee~90 5|ankle~0 -5\trectus femoris~indirect~It shortens little, and would bend the very hip that the press straightens.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\trectus femoris\trectus femoris~0.3|vastus lateralis~0.45|vastus medialis~0.45|vastus intermedius~0.45|gluteus maximus~0.91|adductor magnus~0.74\tlow\tnovice\theavy\tmachine leg press\t\tleg press\t\t\t',
    'low-foot leg press\tleg press feet low|narrow-stance leg press|quad-focused leg press\tmachine\tdynamic\tsupported\t\t\tsquat\tsquat\tknee extension\thip extension\thip~105 60|knee~110 5|ankle~25 0\trectus femoris~indirect~It shortens little, and would bend the very hip that the press straightens.\tvastus lateralis|vastus medialis|vastus intermedius\trectus femoris|gluteus maximus|adductor magnus\trectus femoris~0.34|vastus lateralis~0.53|vastus medialis~0.53|vastus intermedius~0.53|gluteus maximus~0.91|adductor magnus~0.72\tlow\tnovice\theavy\tmachine leg press\t\tleg press\thack squat\t\t',
    'leg extension\tknee extension|seated leg extension|machine leg extension|seated knee extension|quad extension\tmachine\tdynamic\tseated\t\t\t\t\tknee extension\t\thip~85 85|knee~100 0|ankle~0 0\t\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.3|vastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47\tnone\tnovice\theavy\tmachine leg extension\t\tquad set\tsingle-leg leg extension|reclined leg extension\t\t',
    'single-leg leg extension\tone-leg leg extension|single-leg knee extension|unilateral leg extension\tmachine\tdynamic\tseated\t\t1\t\t\tknee extension\t\thip~85 85|knee~100 0|ankle~0 0\t\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.3|vastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47\tnone\tnovice\theavy\tmachine leg extension\t\tleg extension\t\t\t',
    'reclined leg extension\tleaned-back leg extension|lean-back leg extension|reclined knee extension\tmachine\tdynamic\tseated\t\t\t\t\tknee extension\t\thip~40 40|knee~100 0|ankle~0 0\t\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.53|vastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47\tnone\tnovice\theavy\tmachine leg extension\t\tleg extension\treverse Nordic curl\t\t',
    'reverse Nordic curl\treverse Nordic|kneeling quad lean|reverse Nordic hamstring curl|natural leg extension\tbodyweight\tdynamic\tkneeling\t\t\t\t\tknee extension\t\thip~0 0|knee~120 90|ankle~-30 -30\tquadriceps~direct~The knee bends to about 140; the table of lengths ends at 120 and so shows half the travel.\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.9|vastus lateralis~0.9|vastus medialis~0.9|vastus intermedius~0.9\tnone\tintermediate\tlight\tfloor\t\tband-assisted reverse Nordic curl|leg extension\tsissy squat\t\t',
    'band-assisted reverse Nordic curl\tassisted reverse Nordic\tband\tdynamic\tkneeling\t\t\t\t\tknee extension\t\thip~0 0|knee~120 90|ankle~-30 -30\tquadriceps~direct~The knee bends to about 140; the table of lengths ends at 120 and so shows half the travel.\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.9|vastus lateralis~0.9|vastus medialis~0.9|vastus intermedius~0.9\tnone\tnovice\tlight\tband|rack\t\tleg extension\treverse Nordic curl\t\t',
    'cable leg extension\tstanding cable knee extension|cable knee extension\tcable\tdynamic\tstanding\t\t1\t\t\tknee extension\t\thip~30 30|knee~90 0|ankle~0 0\t\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.56|vastus lateralis~0.43|vastus medialis~0.43|vastus intermedius~0.43\tnone\tnovice\tlight\tcable\t\tterminal knee extension\tleg extension\t\t',
    'band leg extension\tbanded leg extension|seated band knee extension|band knee extension\tband\tdynamic\tseated\t\t1\t\t\tknee extension\t\thip~85 85|knee~95 0|ankle~0 0\t\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.29|vastus lateralis~0.45|vastus medialis~0.45|vastus intermedius~0.45\tnone\tnovice\tlight\tband|box\t\tquad set\tleg extension\t\t',
    'ankle-weight leg extension\tlong-arc quad|seated knee extension with ankle weight|ankle weight knee extension\tplate\tdynamic\tseated\t\t1\t\t\tknee extension\t\thip~85 85|knee~90 0|ankle~0 0\t\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.28|vastus lateralis~0.43|vastus medialis~0.43|vastus intermedius~0.43\tnone\tnovice\tlight\tbench\t\tquad set\tleg extension\t\t',
    'terminal knee extension\tTKE|band TKE|banded terminal knee extension|cable TKE\tband\tdynamic\tstanding\t\t1\t\t\tknee extension\t\thip~5 5|knee~35 0|ankle~5 0\t\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.56|vastus lateralis~0.18|vastus medialis~0.18|vastus intermedius~0.18\tnone\tnovice\tlight\tband|rack\t\tquad set\tSpanish squat\t\t',
    'isometric leg extension\tisometric knee extension|leg extension hold|knee extension isometric\tmachine\tisometric\tseated\t\t\t\t\tknee extension\t\thip~85|knee~60|ankle~0\t\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.34|vastus lateralis~0.57|vastus medialis~0.57|vastus intermedius~0.57\tnone\tnovice\theavy\tmachine leg extension\t\tquad set\tleg extension\t\t',
    'quad set\tquadriceps set|isometric quad set|static quad contraction\tnone\tisometric\tlying\t\t1\t\t\tknee extension\t\thip~0|knee~0|ankle~0\t\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.5|vastus lateralis~0.0|vastus medialis~0.0|vastus intermedius~0.0\tnone\tnovice\tlight\tfloor\t\t\tterminal knee extension|ankle-weight leg extension\t\t',
    'split squat\tbodyweight split squat|static lunge|stationary lunge\tbodyweight\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~85 10|knee~100 10|ankle~15 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.52|vastus medialis~0.52|vastus intermedius~0.52|gluteus maximus~0.66|adductor magnus~0.36\tnone\tnovice\tlight\tfloor\t\tsplit squat hold|suspension lunge\tdumbbell split squat\t\t',
    'dumbbell split squat\tDB split squat|goblet split squat|kettlebell split squat\tdumbbell\tdynamic\tsplit\tneutral\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~85 10|knee~100 10|ankle~15 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.52|vastus medialis~0.52|vastus intermedius~0.52|gluteus maximus~0.66|adductor magnus~0.36\tlow\tnovice\theavy\tdumbbell\t1\tsplit squat\trear-foot-elevated split squat|barbell split squat\t\t',
    'rear-foot-elevated split squat\tBulgarian split squat|RFESS|BSS|dumbbell Bulgarian split squat|dumbbell rear-foot-elevated split squat|rear-foot-raised split squat\tdumbbell\tdynamic\tsplit\tneutral\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~100 15|knee~105 10|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.54|vastus medialis~0.54|vastus intermedius~0.54|gluteus maximus~0.73|adductor magnus~0.46\tlow\tintermediate\theavy\tdumbbell|bench\t1\tdumbbell split squat\tbarbell rear-foot-elevated split squat\t\t',
    'barbell split squat\tBB split squat|barbell static lunge\tbarbell\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~85 10|knee~100 10|ankle~15 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.52|vastus medialis~0.52|vastus intermedius~0.52|gluteus maximus~0.66|adductor magnus~0.36\thigh\tintermediate\theavy\tbarbell|rack\t\tdumbbell split squat\tbarbell rear-foot-elevated split squat\t\t',
    'barbell rear-foot-elevated split squat\tbarbell Bulgarian split squat|barbell RFESS|BB RFESS\tbarbell\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~100 15|knee~105 10|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.54|vastus medialis~0.54|vastus intermedius~0.54|gluteus maximus~0.73|adductor magnus~0.46\thigh\tadvanced\theavy\tbarbell|rack|bench\t\trear-foot-elevated split squat\t\t\t',
    'front-foot-elevated split squat\tFFESS|deficit split squat|front-foot-raised split squat\tdumbbell\tdynamic\tsplit\tneutral\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~105 10|knee~115 10|ankle~23 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.57|vastus medialis~0.57|vastus intermedius~0.57|gluteus maximus~0.73|adductor magnus~0.47\tlow\tintermediate\theavy\tdumbbell|plate\t1\tsplit squat\trear-foot-elevated split squat\t\t',
    'guided-bar split squat\tguided-bar lunge|fixed-track split squat\tguided bar\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\t\thip~90 10|knee~100 10|ankle~10 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.52|vastus medialis~0.52|vastus intermedius~0.52|gluteus maximus~0.68|adductor magnus~0.39\tmoderate\tnovice\theavy\tguided bar\t\tsplit squat\tbarbell split squat\t\t',
    'hand-assisted safety bar split squat\thands-assisted split squat|safety bar split squat\tbarbell\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\t\thip~90 10|knee~105 10|ankle~18 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.54|vastus medialis~0.54|vastus intermedius~0.54|gluteus maximus~0.68|adductor magnus~0.39\thigh\tintermediate\theavy\tbarbell|rack\t\tdumbbell split squat\tbarbell rear-foot-elevated split squat\t\t',
    'forward lunge\tlunge|dumbbell lunge|DB lunge|front lunge|dumbbell forward lunge|goblet lunge|kettlebell lunge\tdumbbell\tdynamic\tsplit\tneutral\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~95 10|knee~90 10|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.48|vastus medialis~0.48|vastus intermedius~0.48|gluteus maximus~0.7|adductor magnus~0.41\tlow\tnovice\theavy\tdumbbell\t1\tbodyweight lunge|reverse lunge\twalking lunge|barbell lunge\t\t',
    'walking lunge\tdumbbell walking lunge|DB walking lunge|lunge walk|travelling lunge\tdumbbell\tdynamic\tsplit\tneutral\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~95 5|knee~95 5|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47|gluteus maximus~0.67|adductor magnus~0.39\tlow\tnovice\theavy\tdumbbell|floor\t1\tforward lunge\tbarbell walking lunge|overhead walking lunge\t\t',
    'reverse lunge\tdumbbell reverse lunge|DB reverse lunge|backward lunge|step-back lunge|rear lunge|goblet reverse lunge|kettlebell reverse lunge\tdumbbell\tdynamic\tsplit\tneutral\t1\tlunge\tlunge\thip extension|knee extension\thip abduction\thip~95 10|knee~95 10|ankle~12 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.5|vastus medialis~0.5|vastus intermedius~0.5|gluteus maximus~0.7|adductor magnus~0.41\tlow\tnovice\theavy\tdumbbell\t1\tsplit squat|slider reverse lunge\tdeficit reverse lunge|barbell reverse lunge\t\t',
    'bodyweight lunge\tBW lunge|bodyweight walking lunge|bodyweight reverse lunge|alternating lunge\tbodyweight\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~95 10|knee~90 10|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.48|vastus medialis~0.48|vastus intermedius~0.48|gluteus maximus~0.7|adductor magnus~0.41\tnone\tnovice\tlight\tfloor\t\tsplit squat|suspension lunge\tforward lunge\t\t',
    'lateral lunge\tside lunge|dumbbell lateral lunge|goblet lateral lunge\tdumbbell\tdynamic\tstanding\t\t1\tlunge\tlunge\tknee extension|hip extension\thip adduction|hip abduction\thip~100 0|knee~95 0|ankle~15 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgracilis|gluteus medius|gluteus minimus|adductor longus|adductor brevis|pectineus\tvastus lateralis~0.45|vastus medialis~0.45|vastus intermedius~0.45|gracilis~0.48|gluteus maximus~0.67|adductor magnus~0.4|adductor longus~0.19|adductor brevis~0.19\tlow\tnovice\tlight\tdumbbell\t1\tslider lateral lunge|sumo squat\tCossack squat\t\t',
    'barbell lunge\tbarbell forward lunge|BB lunge|barbell front lunge\tbarbell\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~95 10|knee~90 10|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.48|vastus medialis~0.48|vastus intermedius~0.48|gluteus maximus~0.7|adductor magnus~0.41\thigh\tintermediate\theavy\tbarbell|rack\t\tforward lunge\tbarbell walking lunge\t\t',
    'barbell reverse lunge\tBB reverse lunge|barbell step-back lunge\tbarbell\tdynamic\tsplit\t\t1\tlunge\tlunge\thip extension|knee extension\thip abduction\thip~95 10|knee~95 10|ankle~12 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.5|vastus medialis~0.5|vastus intermedius~0.5|gluteus maximus~0.7|adductor magnus~0.41\thigh\tintermediate\theavy\tbarbell|rack\t\treverse lunge\tfront-rack reverse lunge\t\t',
    'barbell walking lunge\tBB walking lunge\tbarbell\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~95 5|knee~95 5|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47|gluteus maximus~0.67|adductor magnus~0.39\thigh\tintermediate\theavy\tbarbell|floor\t\twalking lunge\toverhead walking lunge\t\t',
    'deficit reverse lunge\treverse lunge from box|deficit step-back lunge\tdumbbell\tdynamic\tsplit\tneutral\t1\tlunge\tlunge\thip extension|knee extension\thip abduction\thip~110 10|knee~105 10|ankle~15 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.54|vastus medialis~0.54|vastus intermedius~0.54|gluteus maximus~0.74|adductor magnus~0.49\tlow\tintermediate\theavy\tdumbbell|box\t1\treverse lunge\tbarbell reverse lunge\t\t',
    'front-rack reverse lunge\tfront-rack lunge|barbell front-rack lunge|front squat lunge\tbarbell\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~90 10|knee~95 10|ankle~15 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.5|vastus medialis~0.5|vastus intermedius~0.5|gluteus maximus~0.68|adductor magnus~0.39\thigh\tadvanced\theavy\tbarbell|rack\t\tbarbell reverse lunge\t\t\t',
    'overhead walking lunge\toverhead lunge|plate overhead lunge|overhead plate walking lunge\tplate\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~90 5|knee~95 5|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47|gluteus maximus~0.66|adductor magnus~0.37\tmoderate\tintermediate\tlight\tplate|floor\t1\twalking lunge\t\t\t',
    'curtsy lunge\tcrossover lunge|curtsey lunge|cross-behind lunge\tdumbbell\tdynamic\tsplit\tneutral\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction|hip external rotation\thip~95 10|knee~90 10|ankle~18 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus|deep hip rotators\tvastus lateralis~0.48|vastus medialis~0.48|vastus intermedius~0.48|gluteus maximus~0.7|adductor magnus~0.41\tlow\tintermediate\tlight\tdumbbell\t1\treverse lunge\t\t\t',
    'slider reverse lunge\tsliding reverse lunge|slide-board reverse lunge|slide-board lunge\tsliders\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~100 10|knee~95 10|ankle~15 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.5|vastus medialis~0.5|vastus intermedius~0.5|gluteus maximus~0.71|adductor magnus~0.44\tnone\tnovice\tlight\tsliders|floor\t\tsuspension lunge\treverse lunge\t\t',
    'slider lateral lunge\tsliding lateral lunge|slide-board lateral lunge\tsliders\tdynamic\tstanding\t\t1\tlunge\tlunge\tknee extension|hip extension\thip adduction|hip abduction\thip~100 0|knee~95 0|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgracilis|gluteus medius|gluteus minimus|adductor longus|adductor brevis|pectineus\tvastus lateralis~0.45|vastus medialis~0.45|vastus intermedius~0.45|gracilis~0.48|gluteus maximus~0.67|adductor magnus~0.4|adductor longus~0.19|adductor brevis~0.19\tnone\tintermediate\tlight\tsliders|floor\t\tlateral lunge\tCossack squat\t\t',
    'suspension lunge\tsuspension-assisted lunge|assisted lunge|suspension split squat\tsuspension\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~90 10|knee~95 10|ankle~12 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.5|vastus medialis~0.5|vastus intermedius~0.5|gluteus maximus~0.68|adductor magnus~0.39\tnone\tnovice\tlight\tsuspension\t\tsplit squat hold\tbodyweight lunge\t\t',
    'lunge with rotation\trotational lunge|medicine ball lunge with rotation|lunge twist\tmedicine ball\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction|trunk rotation\thip~95 10|knee~90 10|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus|external oblique|internal oblique\tvastus lateralis~0.48|vastus medialis~0.48|vastus intermedius~0.48|gluteus maximus~0.7|adductor magnus~0.41\tlow\tnovice\tlight\tmedicine ball|floor\t1\tbodyweight lunge\twalking lunge\t\t',
    'step-up\tdumbbell step-up|DB step-up|box step-up|forward step-up\tdumbbell\tdynamic\tsingle leg\tneutral\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~90 0|knee~90 0|ankle~18 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.43|vastus medialis~0.43|vastus intermedius~0.43|gluteus maximus~0.63|adductor magnus~0.35\tlow\tnovice\theavy\tdumbbell|box\t1\tbodyweight step-up\tbarbell step-up|high step-up\t\t',
    'bodyweight step-up\tBW step-up|step-up without load|stair step-up\tbodyweight\tdynamic\tsingle leg\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~75 0|knee~80 0|ankle~18 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.39|vastus medialis~0.39|vastus intermedius~0.39|gluteus maximus~0.58|adductor magnus~0.27\tnone\tnovice\tlight\tbox\t\tchair squat\tstep-up\t\t',
    'barbell step-up\tBB step-up\tbarbell\tdynamic\tsingle leg\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~90 0|knee~90 0|ankle~18 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.43|vastus medialis~0.43|vastus intermedius~0.43|gluteus maximus~0.63|adductor magnus~0.35\thigh\tintermediate\theavy\tbarbell|rack|box\t\tstep-up\t\t\t',
    'high step-up\thigh box step-up\tdumbbell\tdynamic\tsingle leg\tneutral\t1\tlunge\tlunge\thip extension|knee extension\thip abduction\thip~115 0|knee~105 0|ankle~18 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.49|vastus medialis~0.49|vastus intermedius~0.49|gluteus maximus~0.71|adductor magnus~0.47\tlow\tintermediate\theavy\tdumbbell|box\t1\tstep-up\t\t\t',
    'lateral step-up\tside step-up|dumbbell lateral step-up\tdumbbell\tdynamic\tsingle leg\tneutral\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~75 0|knee~85 0|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.41|vastus medialis~0.41|vastus intermedius~0.41|gluteus maximus~0.58|adductor magnus~0.27\tlow\tnovice\tlight\tdumbbell|box\t1\tstep-down\tsingle-leg squat\t\t',
    'crossover step-up\t\tdumbbell\tdynamic\tsingle leg\tneutral\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction|hip external rotation\thip~85 0|knee~85 0|ankle~18 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus|deep hip rotators\tvastus lateralis~0.41|vastus medialis~0.41|vastus intermedius~0.41|gluteus maximus~0.62|adductor magnus~0.32\tlow\tintermediate\tlight\tdumbbell|box\t1\tlateral step-up\t\t\t',
    'step-down\tlateral step-down|forward step-down|eccentric step-down|heel tap|box step-down\tbodyweight\tdynamic\tsingle leg\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~50 0|knee~65 0|ankle~23 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.32|vastus medialis~0.32|vastus intermedius~0.32|gluteus maximus~0.47|adductor magnus~0.16\tnone\tnovice\tlight\tbox\t\tbodyweight step-up\tsingle-leg box squat|single-leg squat\t\t',
    'heel-raised step-up\theel-elevated step-up|quad step-up|front-of-box step-up|wedge step-up\tbodyweight\tdynamic\tsingle leg\t\t1\tlunge\tlunge\tknee extension\thip extension\thip~40 0|knee~65 0|ankle~15 -10\trectus femoris~none~As in a squat: what it shortens at the knee it is stretched by at the hip.\tvastus lateralis|vastus medialis|vastus intermedius\tgluteus maximus|adductor magnus\tvastus lateralis~0.32|vastus medialis~0.32|vastus intermedius~0.32|gluteus maximus~0.42|adductor magnus~0.12\tnone\tnovice\tlight\tbox|plate\t\tterminal knee extension\tstep-down\t\t',
    'neck flexion\tlying neck flexion|plate neck flexion|neck curl|plate neck curl|weighted neck flexion|neck crunch\tplate\tdynamic\tlying\t\t\t\t\tneck flexion\t\t\t\tsternocleidomastoid|deep neck flexors\tscalenes\t\tnone\tintermediate\tlight\tplate|bench\t\tisometric neck flexion|chin tuck\tharness neck flexion\tLight and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'neck extension\tprone neck extension|plate neck extension|lying neck extension|weighted neck extension\tplate\tdynamic\tprone\t\t\t\t\tneck extension\t\t\t\tsplenius|semispinalis\tupper trapezius\t\tnone\tintermediate\tlight\tplate|bench\t\tisometric neck extension\tharness neck extension\tLight and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'isometric neck flexion\tneck flexion hold|hand-resisted neck flexion|manual neck flexion|front neck isometric\tnone\tisometric\tseated\t\t\t\t\tneck flexion\t\t\t\tsternocleidomastoid|deep neck flexors\tscalenes\t\tnone\tnovice\tlight\t\t\tchin tuck\tneck flexion\tLight and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'isometric neck extension\tneck extension hold|hand-resisted neck extension|manual neck extension|rear neck isometric\tnone\tisometric\tseated\t\t\t\t\tneck extension\t\t\t\tsplenius|semispinalis\tupper trapezius\t\tnone\tnovice\tlight\t\t\t\tneck extension\tLight and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'isometric neck side bend\tneck side bend hold|hand-resisted neck side bend|lateral neck isometric|isometric lateral neck flexion|side neck isometric\tnone\tisometric\tseated\t\t1\t\t\tneck side bend\t\t\t\tsternocleidomastoid\tupper trapezius|levator scapulae|scalenes|splenius\t\tnone\tnovice\tlight\t\t\t\tneck side bend\tLight and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'isometric neck rotation\tneck rotation hold|hand-resisted neck rotation|manual neck rotation\tnone\tisometric\tseated\t\t1\t\t\tneck rotation\t\t\t\tsternocleidomastoid|splenius\t\t\tnone\tnovice\tlight\t\t\t\tband neck rotation\tLight and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'chin tuck\tdeep neck flexor hold|cranio-cervical flexion|lying chin tuck|neck nod\tbodyweight\tisometric\tlying\t\t\t\t\tneck flexion\t\t\tsternocleidomastoid~indirect~The small nod is chosen so that the deep flexors hold and the big one in front stays quiet.\tdeep neck flexors\tsternocleidomastoid|scalenes\t\tnone\tnovice\tlight\tfloor\t\t\tlying head lift hold|isometric neck flexion\tLight and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'lying head lift hold\tsupine head hold|head lift|supine neck hold|neck flexor endurance hold\tbodyweight\tisometric\tlying\t\t\t\t\tneck flexion\t\t\t\tsternocleidomastoid|deep neck flexors\tscalenes\t\tnone\tnovice\tlight\tfloor\t\tchin tuck\tneck flexion\tLight and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'neck side bend\tlateral neck flexion|side neck raise|lying neck side bend|plate neck side bend|lateral neck raise\tplate\tdynamic\tside-lying\t\t1\t\t\tneck side bend\t\t\t\tsternocleidomastoid\tupper trapezius|levator scapulae|scalenes|splenius\t\tnone\tintermediate\tlight\tplate|bench\t\tisometric neck side bend\t\tLight and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'harness neck extension\tneck harness|neck harness extension|head harness extension|head harness\tplate\tdynamic\tseated\t\t\t\t\tneck extension\t\t\t\tsplenius|semispinalis\tupper trapezius\t\tnone\tintermediate\theavy\tneck harness|plate\t\tneck extension\t\tLight and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'harness neck flexion\tneck harness flexion|head harness flexion\tcable\tdynamic\tseated\t\t\t\t\tneck flexion\t\t\t\tsternocleidomastoid|deep neck flexors\tscalenes\t\tnone\tintermediate\tlight\tneck harness|cable\t\tneck flexion\t\tLight and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'machine neck extension\tneck machine extension|four-way neck machine extension\tmachine\tdynamic\tseated\t\t\t\t\tneck extension\t\t\t\tsplenius|semispinalis\tupper trapezius\t\tnone\tnovice\theavy\tmachine neck\t\tisometric neck extension\tharness neck extension\tLight and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'machine neck flexion\tneck machine|neck machine flexion|four-way neck|four-way neck machine flexion\tmachine\tdynamic\tseated\t\t\t\t\tneck flexion\t\t\t\tsternocleidomastoid|deep neck flexors\tscalenes\t\tnone\tnovice\theavy\tmachine neck\t\tisometric neck flexion\t\tLight and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'machine neck side bend\tneck machine side bend|machine lateral neck flexion\tmachine\tdynamic\tseated\t\t1\t\t\tneck side bend\t\t\t\tsternocleidomastoid\tupper trapezius|levator scapulae|scalenes|splenius\t\tnone\tnovice\theavy\tmachine neck\t\tisometric neck side bend\t\tLight and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'band neck extension\tbanded neck extension|resistance band neck extension\tband\tdynamic\tstanding\t\t\t\t\tneck extension\t\t\t\tsplenius|semispinalis\tupper trapezius\t\tnone\tnovice\tlight\tband\t\tisometric neck extension\tneck extension\tLight and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'band neck flexion\tbanded neck flexion|resistance band neck flexion\tband\tdynamic\tstanding\t\t\t\t\tneck flexion\t\t\t\tsternocleidomastoid|deep neck flexors\tscalenes\t\tnone\tnovice\tlight\tband\t\tisometric neck flexion\tneck flexion\tLight and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'band neck side bend\tbanded neck side bend|resistance band lateral neck flexion\tband\tdynamic\tstanding\t\t1\t\t\tneck side bend\t\t\t\tsternocleidomastoid\tupper trapezius|levator scapulae|scalenes|splenius\t\tnone\tnovice\tlight\tband\t\tisometric neck side bend\tneck side bend\tLight and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'band neck rotation\tbanded neck rotation|cable neck rotation\tband\tdynamic\tstanding\t\t1\t\t\tneck rotation\t\t\t\tsternocleidomastoid|splenius\t\t\tnone\tnovice\tlight\tband\t\tisometric neck rotation\t\tLight and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'quadruped neck hold\tall-fours neck hold|four-point neck hold|quadruped head retraction\tbodyweight\tisometric\tquadruped\t\t\t\t\tneck extension\t\t\t\tsplenius|semispinalis\tupper trapezius\t\tnone\tnovice\tlight\tfloor\t\tchin tuck\tisometric neck extension\tLight and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'stability-ball neck hold\tball neck isometric|wall ball neck hold|neck ball press\tbodyweight\tisometric\tstanding\t\t\t\t\tneck extension\t\t\t\tsplenius|semispinalis\tupper trapezius\t\tnone\tnovice\tlight\texercise ball|wall\t\tisometric neck extension\tneck bridge\tLight and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'neck bridge\tback neck bridge|rear neck bridge|wrestling bridge|head bridge\tbodyweight\tisometric\tsupported\t\t\t\t\tneck extension\t\t\t\tsplenius|semispinalis\tupper trapezius\t\tnone\tadvanced\theavy\tfloor\t\tstability-ball neck hold|harness neck extension\t\tBody weight on the bent neck: only for trained wrestlers who need it, never as general neck work. Light and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'bent-over row\tbarbell row|bent-over barbell row|BB row|bent row|barbell bent-over row|BOR\tbarbell\tdynamic\tstanding\toverhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk extension\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\terector spinae|multifidus|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tmoderate\tintermediate\theavy\tbarbell\t1\tchest-supported dumbbell row|seated cable row\tdead-stop row\t\t',
    'pull-up\toverhand pull-up|strict pull-up|bodyweight pull-up|pronated pull-up\tbodyweight\tdynamic\thanging\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 115\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.6\tnone\tintermediate\theavy\tpull-up bar\t1\tassisted pull-up|lat pulldown\tweighted pull-up\t\t',
    'lat pulldown\tpulldown|LPD|cable pulldown|front pulldown|overhand pulldown|overhand lat pulldown|machine pulldown\tmachine\tdynamic\tseated\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 110\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.62\tnone\tnovice\theavy\tmachine pulldown\t1\tband pulldown\tassisted pull-up|pull-up\t\t',
    'seated cable row\tcable row|seated row|low row|seated cable pull|close-grip seated row|close-grip cable row\tcable\tdynamic\tseated\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tlow\tnovice\theavy\tmachine cable row\t1\tmachine row\tone-arm dumbbell row|bent-over row\t\t',
    'one-arm dumbbell row\tdumbbell row|DB row|single-arm dumbbell row|one-arm DB row|single-arm DB row|supported dumbbell row|one-arm row|single-arm row|three-point row\tdumbbell\tdynamic\tsupported\tneutral\t1\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tlow\tnovice\theavy\tdumbbell|bench\t1\tseated cable row\tbent-over row\t\t',
    'chin-up\tunderhand pull-up|chin|supinated pull-up|bodyweight chin-up\tbodyweight\tdynamic\thanging\tunderhand\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 10|elbow~10 120\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.48|brachialis~0.58\tnone\tintermediate\theavy\tpull-up bar\t1\tassisted chin-up|underhand lat pulldown\tweighted chin-up\t\t',
    'inverted row\tbody row|bodyweight row|horizontal pull-up|Australian pull-up|supine row\tbodyweight\tdynamic\tsupported\toverhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~80 -5|elbow~5 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.68\tnone\tnovice\tlight\track|barbell\t1\tinverted row with bent knees|suspension row\tfeet-elevated inverted row\t\t',
    'face pull\tcable face pull|rope face pull\tcable\tdynamic\tstanding\tneutral\t\thorizontal pull\thorizontal pull\tshoulder horizontal abduction|scapular retraction\tshoulder external rotation\telbow~20 100\t\tmiddle trapezius|rhomboids|posterior deltoid\tlower trapezius|middle deltoid|infraspinatus|teres minor\t\tnone\tnovice\tlight\tcable\t\tband face pull|band pull-apart\tdumbbell reverse fly\t\t',
    'chest-supported dumbbell row\tchest-supported row|incline dumbbell row|chest-supported DB row|incline row|incline bench row|CSR\tdumbbell\tdynamic\tsupported\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tnone\tnovice\theavy\tdumbbell|bench\t1\tmachine row\tbent-over dumbbell row\t\t',
    'machine row\tseated machine row|row machine|chest-supported machine row|plate-loaded row|seated row machine\tmachine\tdynamic\tsupported\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tnone\tnovice\theavy\tmachine row\t1\t\tseated cable row|chest-supported dumbbell row\t\t',
    'T-bar row\tlandmine row|T-bar|corner bar row|standing T-bar row\tbarbell\tdynamic\tstanding\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk extension\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\terector spinae|multifidus|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tmoderate\tintermediate\theavy\tlandmine|barbell\t1\tchest-supported T-bar row\t\t\t',
    'chest-supported T-bar row\tsupported T-bar row|lying T-bar row|machine T-bar row\tmachine\tdynamic\tsupported\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tnone\tnovice\theavy\tmachine T-bar row\t1\tmachine row\tT-bar row\t\t',
    'neutral-grip lat pulldown\tneutral-grip pulldown|parallel-grip pulldown|hammer-grip pulldown\tmachine\tdynamic\tseated\tneutral\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 15|elbow~10 110\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.51|brachialis~0.62\tnone\tnovice\theavy\tmachine pulldown\t1\tband pulldown\tneutral-grip pull-up\t\t',
    'close-grip lat pulldown\tclose-grip pulldown|V-bar pulldown|narrow-grip pulldown|narrow-grip lat pulldown\tmachine\tdynamic\tseated\tclose\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 15|elbow~10 110\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.51|brachialis~0.62\tnone\tnovice\theavy\tmachine pulldown\t1\t\tneutral-grip pull-up\t\t',
    'underhand lat pulldown\tunderhand pulldown|reverse-grip pulldown|supinated pulldown|reverse-grip lat pulldown|supinated lat pulldown\tmachine\tdynamic\tseated\tunderhand\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 15|elbow~10 110\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.51|brachialis~0.62\tnone\tnovice\theavy\tmachine pulldown\t1\t\tchin-up\t\t',
    'wide-grip lat pulldown\twide-grip pulldown|wide pulldown|wide lat pulldown\tmachine\tdynamic\tseated\twide\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 95\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.69\tnone\tnovice\theavy\tmachine pulldown\t1\t\twide-grip pull-up\t\t',
    'one-arm lat pulldown\tsingle-arm lat pulldown|single-arm pulldown|one-arm pulldown|single-arm cable pulldown|half-kneeling one-arm pulldown\tcable\tdynamic\tkneeling\tneutral\t1\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 15|elbow~10 110\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.51|brachialis~0.62\tnone\tnovice\theavy\tcable\t1\tlat pulldown\t\t\t',
    'behind-the-neck pulldown\tpulldown behind the neck|BTN pulldown|rear pulldown\tmachine\tdynamic\tseated\twide\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 95\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.69\tnone\tintermediate\theavy\tmachine pulldown\t1\tlat pulldown\t\tAsks for a shoulder that reaches the position freely and without pain; the front pulldown trains the same muscles.\t',
    'band pulldown\tband lat pulldown|banded pulldown|resistance band pulldown\tband\tdynamic\tkneeling\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 110\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.62\tnone\tnovice\tlight\tband\t\t\tlat pulldown\t\t',
    'plate-loaded pulldown\tlever pulldown|converging pulldown|converging lat pulldown\tmachine\tdynamic\tseated\tneutral\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 110\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.62\tnone\tnovice\theavy\tmachine lever pulldown\t1\t\tlat pulldown\t\t',
    'assisted pull-up\tmachine-assisted pull-up|pull-up machine|assisted pull-up machine\tmachine\tdynamic\thanging\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 115\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.6\tnone\tnovice\theavy\tmachine assisted pull-up\t1\tlat pulldown\tpull-up\t\t',
    'assisted chin-up\tmachine-assisted chin-up|assisted chin-up machine\tmachine\tdynamic\thanging\tunderhand\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 10|elbow~10 120\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.48|brachialis~0.58\tnone\tnovice\theavy\tmachine assisted pull-up\t1\tunderhand lat pulldown\tchin-up\t\t',
    'band-assisted pull-up\tbanded pull-up|band pull-up|pull-up with band\tband\tdynamic\thanging\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 115\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.6\tnone\tnovice\theavy\tpull-up bar|band\t1\tlat pulldown\tpull-up\t\t',
    'negative pull-up\teccentric pull-up|pull-up lowering|slow-lowering pull-up|jumping negative pull-up\tbodyweight\tdynamic\thanging\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 115\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.6\tnone\tnovice\theavy\tpull-up bar\t1\tassisted pull-up\tpull-up\t\t',
    'weighted pull-up\tloaded pull-up|pull-up with added weight\tplate\tdynamic\thanging\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 115\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.6\tnone\tadvanced\theavy\tpull-up bar|plate\t1\tpull-up\t\t\t',
    'weighted chin-up\tloaded chin-up|chin-up with added weight|weighted chin\tplate\tdynamic\thanging\tunderhand\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 10|elbow~10 120\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.48|brachialis~0.58\tnone\tadvanced\theavy\tpull-up bar|plate\t1\tchin-up\t\t\t',
    'neutral-grip pull-up\tparallel-grip pull-up|hammer-grip pull-up|neutral-grip chin-up|neutral pull-up\tbodyweight\tdynamic\thanging\tneutral\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 10|elbow~10 120\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.48|brachialis~0.58\tnone\tintermediate\theavy\tpull-up bar\t1\tneutral-grip lat pulldown|assisted pull-up\tweighted neutral-grip pull-up\t\t',
    'weighted neutral-grip pull-up\tloaded neutral-grip pull-up\tplate\tdynamic\thanging\tneutral\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 10|elbow~10 120\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.48|brachialis~0.58\tnone\tadvanced\theavy\tpull-up bar|plate\t1\tneutral-grip pull-up\t\t\t',
    'wide-grip pull-up\twide pull-up|wide-hands pull-up\tbodyweight\tdynamic\thanging\twide\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 95\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.69\tnone\tadvanced\theavy\tpull-up bar\t1\twide-grip lat pulldown|pull-up\t\t\t',
    'close-grip pull-up\tnarrow-grip pull-up|close-grip chin-up|narrow pull-up\tbodyweight\tdynamic\thanging\tclose\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 10|elbow~10 120\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.48|brachialis~0.58\tnone\tintermediate\theavy\tpull-up bar\t1\tclose-grip lat pulldown\t\t\t',
    'mixed-grip pull-up\talternating-grip pull-up|commando pull-up|mixed-grip chin-up\tbodyweight\tdynamic\thanging\tmixed\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 10|elbow~10 120\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.48|brachialis~0.58\tnone\tintermediate\theavy\tpull-up bar\t1\tpull-up\t\t\t',
    'chest-to-bar pull-up\tC2B pull-up|high pull-up|chest-to-bar\tbodyweight\tdynamic\thanging\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 130\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.53\tnone\tadvanced\theavy\tpull-up bar\t1\tpull-up\tmuscle-up\t\t',
    'ring pull-up\tgymnastic ring pull-up|suspension pull-up\tsuspension\tdynamic\thanging\tneutral\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 10|elbow~10 120\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.48|brachialis~0.58\tnone\tintermediate\theavy\tsuspension\t1\tpull-up\tmuscle-up\t\t',
    'towel pull-up\ttowel-grip pull-up|rope pull-up\tbodyweight\tdynamic\thanging\tneutral\t\tvertical pull\tvertical pull\tshoulder extension|grip\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 10|elbow~10 120\t\tlatissimus dorsi|teres major|finger flexors\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis|wrist flexors|wrist extensors\tbiceps long head~0.48|brachialis~0.58\tnone\tadvanced\theavy\tpull-up bar\t1\tneutral-grip pull-up|towel hang\t\t\t',
    'L-sit pull-up\tL pull-up\tbodyweight\tdynamic\thanging\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction|hip flexion|trunk flexion\telbow~10 115|hip~85 85|knee~0 0|ankle~0 0\t\tlatissimus dorsi|teres major\trectus abdominis|middle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.6\tnone\tadvanced\theavy\tpull-up bar\t1\tpull-up|hanging leg raise\t\t\t',
    'archer pull-up\tside-to-side pull-up|typewriter pull-up\tbodyweight\tdynamic\thanging\twide\t1\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 115\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.6\tnone\tadvanced\theavy\tpull-up bar\t1\tweighted pull-up\tone-arm chin-up\t\t',
    'one-arm chin-up\tsingle-arm chin-up|one-arm pull-up|single-arm pull-up\tbodyweight\tdynamic\thanging\tunderhand\t1\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 10|elbow~10 120\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.48|brachialis~0.58\tnone\tadvanced\theavy\tpull-up bar\t1\tarcher pull-up|weighted chin-up\t\t\t',
    'muscle-up\tbar muscle-up|strict muscle-up\tbodyweight\tdynamic\thanging\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction|elbow extension\tshoulder extension|shoulder horizontal adduction|scapular depression\telbow~115 5\t\tlatissimus dorsi|teres major|triceps long head|triceps lateral head|triceps medial head\tlower trapezius|sternocostal chest\ttriceps lateral head~0.49|triceps medial head~0.49\tnone\tadvanced\theavy\tpull-up bar\t1\tchest-to-bar pull-up|straight-bar dip\tring muscle-up\tA pull over into a dip; the path is that of the dip, in which most attempts fail.\t',
    'ring muscle-up\tstrict ring muscle-up\tsuspension\tdynamic\thanging\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction|elbow extension\tshoulder extension|shoulder horizontal adduction|scapular depression\telbow~115 5\t\tlatissimus dorsi|teres major|triceps long head|triceps lateral head|triceps medial head\tlower trapezius|sternocostal chest\ttriceps lateral head~0.49|triceps medial head~0.49\tnone\tadvanced\theavy\tsuspension\t1\tring dip|chest-to-bar pull-up\t\t\t',
    'pull-up hold\tisometric pull-up|top pull-up hold|pull-up isometric hold\tbodyweight\tisometric\thanging\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~110\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.18\tnone\tnovice\theavy\tpull-up bar\t1\tlat pulldown\tnegative pull-up\t\t',
    'chin-up hold\tflexed-arm hang|bent-arm hang|isometric chin-up|chin-over-bar hold\tbodyweight\tisometric\thanging\tunderhand\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular retraction\tshoulder~20|elbow~120\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.15|brachialis~0.06\tnone\tnovice\theavy\tpull-up bar\t1\tunderhand lat pulldown\tchin-up\t\t',
    'scapular pull-up\tscap pull-up|active hang|hanging shoulder-blade pull|shoulder shrug-down hang\tbodyweight\tdynamic\thanging\toverhand\t\tvertical pull\tvertical pull\tscapular depression\tscapular downward rotation|scapular retraction\telbow~5\t\tlower trapezius\tmiddle trapezius|rhomboids|pectoralis minor\t\tnone\tnovice\tlight\tpull-up bar\t1\tdead hang\tpull-up\t\t',
    'front lever hold\tfront lever|tuck front lever|front lever row hold\tbodyweight\tisometric\thanging\toverhand\t\tvertical pull\tvertical pull\tshoulder extension|trunk flexion\tscapular retraction\tshoulder~70|elbow~0|hip~0|knee~0|ankle~0\t\trectus abdominis|latissimus dorsi|teres major\texternal oblique|internal oblique|middle trapezius|rhomboids|posterior deltoid|triceps long head\ttriceps long head~0.54\tnone\tadvanced\theavy\tpull-up bar\t1\tstraight-arm pulldown|L-sit pull-up\t\t\t',
    'dead-stop row\tdead-stop barbell row|row from the floor|strict floor row|explosive barbell row\tbarbell\tdynamic\tstanding\toverhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk extension\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\terector spinae|multifidus|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tmoderate\tintermediate\theavy\tbarbell\t1\tbent-over row\t\t\t',
    'underhand barbell row\treverse-grip row|underhand row|supinated barbell row|reverse-grip barbell row|underhand bent-over row\tbarbell\tdynamic\tstanding\tunderhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk extension\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\terector spinae|multifidus|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tmoderate\tintermediate\theavy\tbarbell\t1\tbent-over row\t\t\t',
    'wide-grip bent-over row\twide-grip barbell row|elbows-out barbell row\tbarbell\tdynamic\tstanding\twide\t\thorizontal pull\thorizontal pull\tshoulder horizontal abduction|scapular retraction\telbow flexion|shoulder extension|trunk extension\telbow~10 95\t\tmiddle trapezius|rhomboids|posterior deltoid\terector spinae|multifidus|latissimus dorsi|teres major|lower trapezius|middle deltoid|infraspinatus|teres minor|biceps long head|biceps short head|brachialis\tbrachialis~0.69\tmoderate\tintermediate\theavy\tbarbell\t1\tchest-supported rear-shoulder row\t\t\t',
    'snatch-grip row\tsnatch-grip barbell row|snatch-grip bent-over row\tbarbell\tdynamic\tstanding\twide\t\thorizontal pull\thorizontal pull\tshoulder horizontal abduction|scapular retraction\tshoulder extension|elbow flexion|trunk extension\telbow~10 85\t\tmiddle trapezius|rhomboids|posterior deltoid\terector spinae|multifidus|latissimus dorsi|teres major|lower trapezius|middle deltoid|infraspinatus|teres minor|biceps long head|biceps short head|brachialis\tbrachialis~0.73\tmoderate\tintermediate\theavy\tbarbell\t1\tbent-over row\t\t\t',
    'seal row\tbench pull|lying bench row|prone row|prone barbell row|high bench row\tbarbell\tdynamic\tprone\toverhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tnone\tintermediate\theavy\tbarbell|bench\t1\tchest-supported dumbbell row\t\t\t',
    'guided-bar row\tguided-bar bent-over row|fixed-track row\tguided bar\tdynamic\tstanding\toverhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk extension\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\terector spinae|multifidus|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tmoderate\tnovice\theavy\tguided bar\t1\t\tbent-over row\t\t',
    'trap bar row\thex bar row|trap bar bent-over row\ttrap bar\tdynamic\tstanding\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk extension\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\terector spinae|multifidus|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tmoderate\tintermediate\theavy\ttrap bar\t1\tbent-over dumbbell row\t\t\t',
    'tempo bent-over row\tpaused barbell row|slow barbell row|pause row\tbarbell\tdynamic\tstanding\toverhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk extension\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\terector spinae|multifidus|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tmoderate\tintermediate\theavy\tbarbell\t1\tbent-over row\t\t\t',
    'bent-over dumbbell row\ttwo-arm dumbbell row|double dumbbell row|bent-over DB row|dumbbell bent-over row\tdumbbell\tdynamic\tstanding\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk extension\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\terector spinae|multifidus|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tlow\tintermediate\theavy\tdumbbell\t1\tchest-supported dumbbell row\tbent-over row\t\t',
    'kettlebell row\tKB row|bent-over kettlebell row|double kettlebell row\tkettlebell\tdynamic\tstanding\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk extension\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\terector spinae|multifidus|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tlow\tintermediate\theavy\tkettlebell\t1\tone-arm dumbbell row\talternating kettlebell row\t\t',
    'alternating kettlebell row\tgorilla row|wide-stance kettlebell row\tkettlebell\tdynamic\tstanding\tneutral\t1\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk extension\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\terector spinae|multifidus|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tlow\tintermediate\theavy\tkettlebell\t1\tkettlebell row\t\t\t',
    'one-arm kettlebell row\tsingle-arm kettlebell row|one-arm KB row|split-stance kettlebell row\tkettlebell\tdynamic\tsplit\tneutral\t1\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tlow\tnovice\theavy\tkettlebell\t1\tone-arm dumbbell row\t\t\t',
    'one-arm landmine row\tsingle-arm landmine row|side-on landmine row|one-arm T-bar row|angled bar row\tbarbell\tdynamic\tsplit\toverhand\t1\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction|shoulder horizontal abduction\telbow flexion\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids|posterior deltoid\tlower trapezius|middle deltoid|infraspinatus|teres minor|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tlow\tintermediate\theavy\tlandmine|barbell\t1\tone-arm dumbbell row\t\t\t',
    'plank row\trenegade row|push-up position row|dumbbell plank row\tdumbbell\tdynamic\tprone\tneutral\t1\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk flexion|trunk rotation\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\trectus abdominis|external oblique|internal oblique|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tnone\tintermediate\tlight\tdumbbell|floor\t1\tplank shoulder tap|one-arm dumbbell row\t\t\t',
    'one-arm machine row\tsingle-arm machine row|unilateral machine row\tmachine\tdynamic\tsupported\tneutral\t1\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tnone\tnovice\theavy\tmachine row\t1\tmachine row\t\t\t',
    'one-arm cable row\tsingle-arm cable row|one-arm seated cable row|single-arm seated row|standing one-arm cable row\tcable\tdynamic\tseated\tneutral\t1\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk rotation\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\texternal oblique|internal oblique|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tnone\tnovice\theavy\tcable\t1\tseated cable row\t\t\t',
    'wide-grip seated row\twide-grip cable row|wide seated row|wide-grip seated cable row\tcable\tdynamic\tseated\twide\t\thorizontal pull\thorizontal pull\tshoulder horizontal abduction|scapular retraction\tshoulder extension|elbow flexion\telbow~10 95\t\tmiddle trapezius|rhomboids|posterior deltoid\tlatissimus dorsi|teres major|lower trapezius|middle deltoid|infraspinatus|teres minor|biceps long head|biceps short head|brachialis\tbrachialis~0.69\tlow\tnovice\theavy\tmachine cable row\t1\tmachine row\t\t\t',
    'underhand cable row\tunderhand seated row|reverse-grip cable row|supinated cable row\tcable\tdynamic\tseated\tunderhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tlow\tnovice\theavy\tmachine cable row\t1\tseated cable row\t\t\t',
    'standing cable row\tstanding row|split-stance cable row\tcable\tdynamic\tstanding\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tlow\tnovice\tlight\tcable\t1\tband row\tseated cable row\t\t',
    'high row\thigh cable row|kneeling high row|machine high row|half-kneeling cable row|high-to-low row\tcable\tdynamic\tkneeling\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|scapular depression\tshoulder~125 0|elbow~10 110\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.48|brachialis~0.62\tnone\tnovice\theavy\tcable\t1\tlat pulldown\tneutral-grip pull-up\t\t',
    'band row\tresistance band row|banded row|seated band row|standing band row\tband\tdynamic\tseated\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~75 -10|elbow~10 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tnone\tnovice\tlight\tband\t\t\tseated cable row\t\t',
    'inverted row with bent knees\tbent-knee inverted row|bent-knee body row|easy inverted row\tbodyweight\tdynamic\tsupported\toverhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~80 -5|elbow~5 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.68\tnone\tnovice\tlight\track|barbell\t1\tsuspension row\tinverted row\t\t',
    'feet-elevated inverted row\televated inverted row|decline inverted row\tbodyweight\tdynamic\tsupported\toverhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~80 -5|elbow~5 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.68\tnone\tintermediate\tlight\track|barbell|bench\t1\tinverted row\tweighted inverted row\t\t',
    'weighted inverted row\tloaded inverted row\tplate\tdynamic\tsupported\toverhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~80 -5|elbow~5 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.68\tnone\tintermediate\theavy\track|barbell|plate\t1\tfeet-elevated inverted row\t\t\t',
    'underhand inverted row\treverse-grip inverted row|supinated inverted row\tbodyweight\tdynamic\tsupported\tunderhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~80 -5|elbow~5 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.68\tnone\tnovice\tlight\track|barbell\t1\tinverted row with bent knees\tchin-up\t\t',
    'suspension row\tsuspended row|sling row|ring row|strap row\tsuspension\tdynamic\tsupported\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~80 -5|elbow~5 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.68\tnone\tnovice\tlight\tsuspension\t1\tband row\tinverted row\t\t',
    'one-arm suspension row\tsingle-arm suspension row|single-arm ring row|one-arm inverted row\tsuspension\tdynamic\tsupported\tneutral\t1\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk rotation\tshoulder~80 -5|elbow~5 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\texternal oblique|internal oblique|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.68\tnone\tintermediate\tlight\tsuspension\t1\tsuspension row\t\t\t',
    'inverted row hold\tisometric inverted row|top inverted row hold\tbodyweight\tisometric\tsupported\toverhand\t\thorizontal pull\thorizontal pull\tscapular retraction|shoulder extension\tshoulder horizontal abduction|elbow flexion\tshoulder~0|elbow~95\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.4|brachialis~0.34\tnone\tnovice\tlight\track|barbell\t1\tinverted row with bent knees\t\t\t',
    'chest-supported rear-shoulder row\trear delt row|rear-shoulder row|wide chest-supported row|elbows-out dumbbell row|dumbbell rear delt row\tdumbbell\tdynamic\tsupported\toverhand\t\thorizontal pull\thorizontal pull\tshoulder horizontal abduction|scapular retraction\telbow flexion\telbow~10 90\t\tmiddle trapezius|rhomboids|posterior deltoid\tlower trapezius|middle deltoid|infraspinatus|teres minor|biceps long head|biceps short head|brachialis\tbrachialis~0.71\tnone\tnovice\tlight\tdumbbell|bench\t1\tmachine reverse fly\twide-grip bent-over row\t\t',
    'straight-arm pulldown\tstraight-arm cable pulldown|lat pushdown|stiff-arm pulldown|cable pullover|standing cable pullover|rope straight-arm pulldown\tcable\tdynamic\tstanding\toverhand\t\t\t\tshoulder extension\t\tshoulder~150 10|elbow~10 10\t\tlatissimus dorsi|teres major\tposterior deltoid|triceps long head\ttriceps long head~0.56\tnone\tnovice\tlight\tcable\t\tband straight-arm pulldown\tlat pulldown\t\t',
    'band straight-arm pulldown\tbanded straight-arm pulldown|band lat pushdown\tband\tdynamic\tstanding\t\t\t\t\tshoulder extension\t\tshoulder~150 10|elbow~10 10\t\tlatissimus dorsi|teres major\tposterior deltoid|triceps long head\ttriceps long head~0.56\tnone\tnovice\tlight\tband\t\t\tstraight-arm pulldown\t\t',
    'dumbbell pullover\tDB pullover|pullover|bent-arm pullover|cross-bench pullover\tdumbbell\tdynamic\tlying\tneutral\t\t\t\tshoulder extension\t\tshoulder~170 80|elbow~25 25\tsternocostal chest~indirect~From overhead the lower part of the chest helps to pull the raised arm down.\tlatissimus dorsi|teres major\tsternocostal chest|posterior deltoid|triceps long head\ttriceps long head~0.71\tnone\tintermediate\tlight\tdumbbell|bench\t\tstraight-arm pulldown\tbarbell pullover\t\t',
    'barbell pullover\tbent-bar pullover\tbarbell\tdynamic\tlying\tclose\t\t\t\tshoulder extension\t\tshoulder~170 80|elbow~30 30\tsternocostal chest~indirect~From overhead the lower part of the chest helps to pull the raised arm down.\tlatissimus dorsi|teres major\tsternocostal chest|posterior deltoid|triceps long head\ttriceps long head~0.73\tnone\tintermediate\tlight\tbarbell|bench\t\tdumbbell pullover\t\t\t',
    'machine pullover\tpullover machine|seated pullover\tmachine\tdynamic\tseated\t\t\t\t\tshoulder extension\t\tshoulder~165 15|elbow~90 90\t\tlatissimus dorsi|teres major\tposterior deltoid\t\tnone\tnovice\theavy\tmachine pullover\t\tstraight-arm pulldown\t\t\t',
    'one-arm straight-arm pulldown\tsingle-arm straight-arm pulldown|single-arm cable pullover\tcable\tdynamic\tstanding\t\t1\t\t\tshoulder extension\t\tshoulder~150 10|elbow~10 10\t\tlatissimus dorsi|teres major\tposterior deltoid|triceps long head\ttriceps long head~0.56\tnone\tnovice\tlight\tcable\t\tstraight-arm pulldown\t\t\t',
    'lying cable pullover\tcable bench pullover|floor cable pullover\tcable\tdynamic\tlying\t\t\t\t\tshoulder extension\t\tshoulder~170 60|elbow~20 20\t\tlatissimus dorsi|teres major\tposterior deltoid|triceps long head\ttriceps long head~0.68\tnone\tnovice\tlight\tcable|bench\t\tstraight-arm pulldown\t\t\t',
    'dumbbell reverse fly\treverse fly|rear delt fly|rear delt raise|bent-over reverse fly|bent-over lateral raise|bent-over fly|rear lateral raise|DB reverse fly|rear-shoulder fly|reverse flye\tdumbbell\tdynamic\tstanding\tneutral\t\t\t\tshoulder horizontal abduction\tscapular retraction\telbow~20\t\tposterior deltoid\tmiddle trapezius|rhomboids|middle deltoid|infraspinatus|teres minor\t\tlow\tnovice\tlight\tdumbbell\t\tmachine reverse fly|chest-supported reverse fly\t\t\tbotton-2013',
    'machine reverse fly\treverse pec deck|rear delt machine|machine rear delt fly|reverse machine fly|rear-shoulder machine\tmachine\tdynamic\tseated\t\t\t\t\tshoulder horizontal abduction\tscapular retraction\telbow~20\t\tposterior deltoid\tmiddle trapezius|rhomboids|middle deltoid|infraspinatus|teres minor\t\tnone\tnovice\tlight\tmachine fly\t\t\tdumbbell reverse fly\t\tbotton-2013',
    'chest-supported reverse fly\tincline reverse fly|chest-supported rear delt fly|incline rear delt raise|incline bench reverse fly\tdumbbell\tdynamic\tsupported\t\t\t\t\tshoulder horizontal abduction\tscapular retraction\telbow~20\t\tposterior deltoid\tmiddle trapezius|rhomboids|middle deltoid|infraspinatus|teres minor\t\tnone\tnovice\tlight\tdumbbell|bench\t\t\tdumbbell reverse fly\t\tbotton-2013',
    'cable reverse fly\tcable rear delt fly|rear delt cable fly|reverse cable crossover|cable reverse crossover\tcable\tdynamic\tstanding\t\t\t\t\tshoulder horizontal abduction\tscapular retraction\telbow~20\t\tposterior deltoid\tmiddle trapezius|rhomboids|middle deltoid|infraspinatus|teres minor\t\tnone\tnovice\tlight\tcable\t\tmachine reverse fly\t\t\tbotton-2013',
    'one-arm cable reverse fly\tsingle-arm cable rear delt fly|single-arm cable reverse fly|one-arm rear delt cable fly\tcable\tdynamic\tstanding\t\t1\t\t\tshoulder horizontal abduction\tscapular retraction\telbow~20\t\tposterior deltoid\tmiddle trapezius|rhomboids|middle deltoid|infraspinatus|teres minor\t\tnone\tnovice\tlight\tcable\t\tmachine reverse fly\t\t\tbotton-2013',
    'band pull-apart\tpull-apart|band reverse fly|banded pull-apart\tband\tdynamic\tstanding\t\t\t\t\tshoulder horizontal abduction|scapular retraction\t\telbow~20\t\tmiddle trapezius|rhomboids|posterior deltoid\tlower trapezius|middle deltoid|infraspinatus|teres minor\t\tnone\tnovice\tlight\tband\t\t\tface pull|cable reverse fly\t\tbotton-2013',
    'suspension reverse fly\tring reverse fly|suspended reverse fly|suspension T fly\tsuspension\tdynamic\tstanding\t\t\t\t\tshoulder horizontal abduction\tscapular retraction\telbow~20\t\tposterior deltoid\tmiddle trapezius|rhomboids|middle deltoid|infraspinatus|teres minor\t\tnone\tintermediate\tlight\tsuspension\t\tband pull-apart\t\t\tbotton-2013',
    'side-lying reverse fly\tside-lying rear delt raise|lying rear delt raise|side-lying rear-shoulder fly\tdumbbell\tdynamic\tside-lying\t\t1\t\t\tshoulder horizontal abduction\t\telbow~20\t\tposterior deltoid\tmiddle deltoid|infraspinatus|teres minor\t\tnone\tnovice\tlight\tdumbbell|bench\t\tband pull-apart\tdumbbell reverse fly\t\tbotton-2013',
    'band face pull\tbanded face pull|resistance band face pull\tband\tdynamic\tstanding\t\t\thorizontal pull\thorizontal pull\tshoulder horizontal abduction|scapular retraction\tshoulder external rotation\telbow~20 100\t\tmiddle trapezius|rhomboids|posterior deltoid\tlower trapezius|middle deltoid|infraspinatus|teres minor\t\tnone\tnovice\tlight\tband\t\t\tface pull\t\t',
    'suspension face pull\tring face pull|suspended face pull\tsuspension\tdynamic\tstanding\t\t\thorizontal pull\thorizontal pull\tshoulder horizontal abduction|scapular retraction\tshoulder external rotation\telbow~10 100\t\tmiddle trapezius|rhomboids|posterior deltoid\tlower trapezius|middle deltoid|infraspinatus|teres minor\t\tnone\tintermediate\tlight\tsuspension\t1\tband face pull\t\t\t',
    'face pull with external rotation\tface pull to external rotation|face pull with rotation|high face pull\tcable\tdynamic\tstanding\t\t\thorizontal pull\thorizontal pull\tshoulder horizontal abduction|shoulder external rotation\tscapular retraction\telbow~20 95\t\tposterior deltoid|infraspinatus|teres minor\tmiddle trapezius|rhomboids|middle deltoid\t\tnone\tnovice\tlight\tcable\t\tface pull\t\t\t',
    'barbell shrug\tBB shrug|shrug|barbell shoulder shrug\tbarbell\tdynamic\tstanding\toverhand\t\t\t\tscapular elevation\tscapular upward rotation\t\t\tupper trapezius\tlevator scapulae|serratus anterior\t\thigh\tnovice\theavy\tbarbell|rack\t1\tdumbbell shrug\t\t\t',
    'dumbbell shrug\tDB shrug|dumbbell shoulder shrug|standing dumbbell shrug\tdumbbell\tdynamic\tstanding\tneutral\t\t\t\tscapular elevation\tscapular upward rotation\t\t\tupper trapezius\tlevator scapulae|serratus anterior\t\tmoderate\tnovice\theavy\tdumbbell\t1\t\tbarbell shrug|trap bar shrug\t\t',
    'trap bar shrug\thex bar shrug\ttrap bar\tdynamic\tstanding\tneutral\t\t\t\tscapular elevation\tscapular upward rotation\t\t\tupper trapezius\tlevator scapulae|serratus anterior\t\thigh\tnovice\theavy\ttrap bar\t1\tdumbbell shrug\t\t\t',
    'machine shrug\tshrug machine|calf-machine shrug|lever shrug\tmachine\tdynamic\tstanding\t\t\t\t\tscapular elevation\tscapular upward rotation\t\t\tupper trapezius\tlevator scapulae|serratus anterior\t\tmoderate\tnovice\theavy\tmachine shrug\t1\t\tbarbell shrug\t\t',
    'cable shrug\tlow cable shrug\tcable\tdynamic\tstanding\t\t\t\t\tscapular elevation\tscapular upward rotation\t\t\tupper trapezius\tlevator scapulae|serratus anterior\t\tlow\tnovice\tlight\tcable\t1\t\tdumbbell shrug\t\t',
    'guided-bar shrug\tfixed-track shrug\tguided bar\tdynamic\tstanding\toverhand\t\t\t\tscapular elevation\tscapular upward rotation\t\t\tupper trapezius\tlevator scapulae|serratus anterior\t\tmoderate\tnovice\theavy\tguided bar\t1\t\tbarbell shrug\t\t',
    'kettlebell shrug\tKB shrug\tkettlebell\tdynamic\tstanding\tneutral\t\t\t\tscapular elevation\tscapular upward rotation\t\t\tupper trapezius\tlevator scapulae|serratus anterior\t\tmoderate\tnovice\theavy\tkettlebell\t1\t\tbarbell shrug\t\t',
    'snatch-grip shrug\twide-grip shrug|snatch shrug\tbarbell\tdynamic\tstanding\twide\t\t\t\tscapular elevation\tscapular upward rotation\t\t\tupper trapezius\tlevator scapulae|serratus anterior\t\thigh\tintermediate\theavy\tbarbell|rack\t1\tbarbell shrug\t\t\t',
    'behind-the-back shrug\tbehind-back barbell shrug|rear shrug\tbarbell\tdynamic\tstanding\toverhand\t\t\t\tscapular elevation\tscapular upward rotation\t\t\tupper trapezius\tlevator scapulae|serratus anterior\t\thigh\tintermediate\theavy\tbarbell|rack\t1\tbarbell shrug\t\t\t',
    'power shrug\tbarbell power shrug|jump shrug from the hang|explosive shrug\tbarbell\tballistic\tstanding\toverhand\t\t\t\tscapular elevation\tscapular upward rotation\t\t\tupper trapezius\tlevator scapulae|serratus anterior\t\thigh\tintermediate\theavy\tbarbell|rack\t1\tbarbell shrug\t\t\t',
    'chest-supported shrug\tincline shrug|prone shrug|chest-supported dumbbell shrug|retraction shrug|incline dumbbell shrug\tdumbbell\tdynamic\tsupported\tneutral\t\t\t\tscapular retraction\tscapular elevation\t\t\tmiddle trapezius|rhomboids\tupper trapezius|lower trapezius\t\tnone\tnovice\theavy\tdumbbell|bench\t1\tchest-supported dumbbell row\t\t\t',
    'shrug hold\tisometric shrug|top shrug hold\tdumbbell\tisometric\tstanding\tneutral\t\t\t\tscapular elevation\tscapular upward rotation\t\t\tupper trapezius\tlevator scapulae|serratus anterior\t\tmoderate\tnovice\theavy\tdumbbell\t1\tdumbbell shrug\t\t\t',
    'bench press\tbarbell bench press|flat bench press|flat barbell bench press|bench|BP|BB bench press\tbarbell\tdynamic\tlying\toverhand\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\theavy\tbarbell|bench|rack\t\tdumbbell bench press|machine chest press\tpaused bench press\t\t',
    'push-up\tpress-up|full push-up|floor push-up\tbodyweight\tdynamic\tprone\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction\telbow~100 5\t\tsternocostal chest\tserratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\tlight\tfloor\t\tincline push-up|knee push-up\tweighted push-up|decline push-up\t\t',
    'dumbbell bench press\tDB bench press|DB bench|flat dumbbell press|flat DB press|dumbbell chest press|DB press|dumbbell press\tdumbbell\tdynamic\tlying\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\theavy\tdumbbell|bench\t\tmachine chest press|dumbbell floor press\tbench press\t\t',
    'overhead press\tOHP|military press|strict press|standing press|barbell overhead press|standing barbell press|barbell shoulder press|standing overhead press|shoulder press|overhead barbell press|press overhead\tbarbell\tdynamic\tstanding\toverhand\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tmoderate\tintermediate\theavy\tbarbell|rack\t\tseated dumbbell shoulder press|landmine press\tpush press\t\t',
    'incline bench press\tincline barbell press|incline barbell bench press|incline press|incline bench|BB incline press\tbarbell\tdynamic\tincline\toverhand\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\tclavicular chest~direct~The upper part of the chest worked hardest with the bench raised to between 30 and 56 degrees.|sternocostal chest~indirect~The middle and lower parts of the chest worked hardest on the flat bench.\tclavicular chest\tsternocostal chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\theavy\tbarbell|bench|rack\t\tincline dumbbell press\t\tBench set at about 30 degrees.\tridao-2020|trebs-2010',
    'incline dumbbell press\tincline DB press|incline dumbbell bench press|incline DB bench press\tdumbbell\tdynamic\tincline\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\tclavicular chest~direct~The upper part of the chest worked hardest with the bench raised to between 30 and 56 degrees.|sternocostal chest~indirect~The middle and lower parts of the chest worked hardest on the flat bench.\tclavicular chest\tsternocostal chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\theavy\tdumbbell|bench\t\tincline machine press\tincline bench press\tBench set at about 30 degrees.\tridao-2020|trebs-2010',
    'seated dumbbell shoulder press\tseated dumbbell press|seated DB press|seated DB shoulder press|dumbbell shoulder press|DB shoulder press|seated dumbbell overhead press|DBSP\tdumbbell\tdynamic\tseated\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tlow\tnovice\theavy\tdumbbell|bench\t\tmachine shoulder press\tstanding dumbbell shoulder press|overhead press\t\t',
    'dip\tparallel bar dip|chest dip|bar dip|triceps dip|bodyweight dip\tbodyweight\tdynamic\tsupported\tneutral\t\thorizontal push\thorizontal push\tshoulder horizontal adduction|elbow extension\tshoulder flexion\tshoulder~-40 10|elbow~95 5\t\tsternocostal chest|triceps lateral head|triceps medial head\tclavicular chest|anterior deltoid|coracobrachialis\ttriceps lateral head~0.41|triceps medial head~0.41\tnone\tintermediate\theavy\tdip bars\t\tassisted dip|bench dip\tweighted dip\tCounted with the horizontal pushes: the muscles are those of a decline press, not of an overhead press.\t',
    'machine chest press\tchest press|seated chest press|chest press machine|seated machine press|vertical chest press\tmachine\tdynamic\tseated\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\theavy\tmachine chest press\t\t\tdumbbell bench press\t\t',
    'close-grip bench press\tCGBP|close-grip bench|narrow-grip bench press|close-grip barbell bench press\tbarbell\tdynamic\tlying\tclose\t\thorizontal push\thorizontal push\telbow extension|shoulder horizontal adduction\tshoulder flexion\tshoulder~-25 70|elbow~110 5\ttriceps long head~indirect~The straightening elbow shortens it while the shoulder, moving from extension into flexion, lengthens it by about as much: loaded, but hardly moving, so less than the two short heads.\tsternocostal chest|triceps lateral head|triceps medial head\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head\ttriceps long head~0.49|triceps lateral head~0.47|triceps medial head~0.47\tnone\tintermediate\theavy\tbarbell|bench|rack\t\tclose-grip push-up|cable pushdown\t\t\t',
    'machine shoulder press\tshoulder press machine|machine overhead press|seated machine shoulder press|overhead press machine\tmachine\tdynamic\tseated\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tlow\tnovice\theavy\tmachine shoulder press\t\t\tseated dumbbell shoulder press\t\t',
    'dumbbell fly\tDB fly|dumbbell flye|flat dumbbell fly|chest fly|dumbbell chest fly|pec fly|flat fly\tdumbbell\tdynamic\tlying\tneutral\t\t\t\tshoulder horizontal adduction\tshoulder flexion\telbow~20\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis\t\tnone\tnovice\tlight\tdumbbell|bench\t\tmachine fly\t\t\t',
    'cable fly\tcable crossover|cable chest fly|standing cable fly|cable flye|crossover\tcable\tdynamic\tstanding\tneutral\t\t\t\tshoulder horizontal adduction\tshoulder flexion\telbow~20\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis\t\tnone\tnovice\tlight\tcable\t\tmachine fly\tone-arm cable fly\t\t',
    'machine fly\tpec deck|machine chest fly|pec deck fly|seated fly machine|butterfly machine|pec fly machine\tmachine\tdynamic\tseated\t\t\t\t\tshoulder horizontal adduction\tshoulder flexion\telbow~20\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis\t\tnone\tnovice\tlight\tmachine fly\t\t\tcable fly|dumbbell fly\t\t',
    'standing dumbbell shoulder press\tstanding dumbbell press|standing DB press|dumbbell overhead press|DB overhead press|standing dumbbell overhead press\tdumbbell\tdynamic\tstanding\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tmoderate\tnovice\theavy\tdumbbell\t\tseated dumbbell shoulder press\tone-arm dumbbell overhead press\t\t',
    'weighted dip\tloaded dip|dip with added weight|weighted parallel bar dip\tplate\tdynamic\tsupported\tneutral\t\thorizontal push\thorizontal push\tshoulder horizontal adduction|elbow extension\tshoulder flexion\tshoulder~-40 10|elbow~95 5\t\tsternocostal chest|triceps lateral head|triceps medial head\tclavicular chest|anterior deltoid|coracobrachialis\ttriceps lateral head~0.41|triceps medial head~0.41\tnone\tadvanced\theavy\tdip bars|plate\t\tdip\t\tCounted with the horizontal pushes: the muscles are those of a decline press, not of an overhead press.\t',
    'assisted dip\tmachine-assisted dip|assisted dip machine\tmachine\tdynamic\tsupported\tneutral\t\thorizontal push\thorizontal push\tshoulder horizontal adduction|elbow extension\tshoulder flexion\tshoulder~-40 10|elbow~95 5\t\tsternocostal chest|triceps lateral head|triceps medial head\tclavicular chest|anterior deltoid|coracobrachialis\ttriceps lateral head~0.41|triceps medial head~0.41\tnone\tnovice\theavy\tmachine assisted dip\t\t\tdip\tCounted with the horizontal pushes: the muscles are those of a decline press, not of an overhead press.\t',
    'decline bench press\tdecline barbell press|decline barbell bench press|decline press|decline bench\tbarbell\tdynamic\tlying\toverhand\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tintermediate\theavy\tbarbell|bench|rack\t\tdecline dumbbell press\t\t\tridao-2020',
    'decline dumbbell press\tdecline DB press|decline dumbbell bench press\tdumbbell\tdynamic\tlying\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\theavy\tdumbbell|bench\t\tdumbbell bench press\tdecline bench press\t\t',
    'paused bench press\tpause bench|pause bench press|competition bench press|comp bench\tbarbell\tdynamic\tlying\toverhand\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tintermediate\theavy\tbarbell|bench|rack\t\tbench press\tbench press with a long pause\t\t',
    'bench press with a long pause\tlong-pause bench press|3-second pause bench press\tbarbell\tdynamic\tlying\toverhand\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tadvanced\theavy\tbarbell|bench|rack\t\tpaused bench press\t\t\t',
    'wide-grip bench press\twide bench press|wide-grip bench\tbarbell\tdynamic\tlying\twide\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~90 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.39|triceps medial head~0.39\tnone\tintermediate\theavy\tbarbell|bench|rack\t\tbench press\t\t\t',
    'bench press stopped above the chest\tshort-stop bench press|hover bench press\tbarbell\tdynamic\tlying\toverhand\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~90 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.39|triceps medial head~0.39\tnone\tadvanced\theavy\tbarbell|bench|rack\t\tpaused bench press\t\t\t',
    'pin bench press\tpin press|bench press off pins|dead-start bench press|rack bench press\tbarbell\tdynamic\tlying\toverhand\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~90 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.39|triceps medial head~0.39\tnone\tintermediate\theavy\tbarbell|bench|rack\t\tbench press\t\t\t',
    'board bench press\tboard press|partial bench press\tbarbell\tdynamic\tlying\toverhand\t\thorizontal push\thorizontal push\tshoulder horizontal adduction|elbow extension\tshoulder flexion\telbow~75 5\ttriceps long head~indirect~The straightening elbow shortens it while the shoulder, moving from extension into flexion, lengthens it by about as much: loaded, but hardly moving, so less than the two short heads.\tsternocostal chest|triceps lateral head|triceps medial head\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head\ttriceps lateral head~0.32|triceps medial head~0.32\tnone\tintermediate\theavy\tbarbell|bench|rack\t\tbench press\t\t\t',
    'floor press\tbarbell floor press\tbarbell\tdynamic\tlying\toverhand\t\thorizontal push\thorizontal push\tshoulder horizontal adduction|elbow extension\tshoulder flexion\telbow~90 5\ttriceps long head~indirect~The straightening elbow shortens it while the shoulder, moving from extension into flexion, lengthens it by about as much: loaded, but hardly moving, so less than the two short heads.\tsternocostal chest|triceps lateral head|triceps medial head\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head\ttriceps lateral head~0.39|triceps medial head~0.39\tnone\tintermediate\theavy\tbarbell|rack|floor\t\tdumbbell floor press\tbench press\t\t',
    'underhand-grip bench press\treverse-grip bench press|supinated bench press\tbarbell\tdynamic\tlying\tunderhand\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\tshoulder~-20 75|elbow~105 5\ttriceps long head~indirect~The straightening elbow shortens it while the shoulder, moving from extension into flexion, lengthens it by about as much: loaded, but hardly moving, so less than the two short heads.\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.51|triceps lateral head~0.45|triceps medial head~0.45\tnone\tadvanced\theavy\tbarbell|bench|rack\t\tbench press\t\t\t',
    'speed bench press\tdynamic-effort bench press|DE bench press|fast bench press\tbarbell\tdynamic\tlying\toverhand\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tintermediate\theavy\tbarbell|bench|rack\t\tbench press\t\t\t',
    'bench press with bands\tbanded bench press|bench press against bands\tbarbell\tdynamic\tlying\toverhand\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tadvanced\theavy\tbarbell|bench|rack|band\t\tbench press\t\t\t',
    'bench press with chains\tchain bench press|bench press against chains\tbarbell\tdynamic\tlying\toverhand\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tadvanced\theavy\tbarbell|bench|rack\t\tbench press\t\t\t',
    'tempo bench press\tslow bench press|slow-lowering bench press\tbarbell\tdynamic\tlying\toverhand\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tintermediate\theavy\tbarbell|bench|rack\t\tbench press\t\t\t',
    'guided-bar bench press\tguided bench press|fixed-track bench press\tguided bar\tdynamic\tlying\toverhand\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\theavy\tguided bar|bench\t\tmachine chest press\tbench press\t\t',
    'guided-bar incline press\tguided incline press|fixed-track incline press\tguided bar\tdynamic\tincline\toverhand\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\tclavicular chest~direct~The upper part of the chest worked hardest with the bench raised to between 30 and 56 degrees.|sternocostal chest~indirect~The middle and lower parts of the chest worked hardest on the flat bench.\tclavicular chest\tsternocostal chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\theavy\tguided bar|bench\t\tincline machine press\tincline bench press\t\tridao-2020|trebs-2010',
    'bench press throw\tbench throw|ballistic bench press\tguided bar\tballistic\tlying\toverhand\t\tthrow\tthrow\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tadvanced\tlight\tguided bar|bench\t\tmedicine ball chest pass|speed bench press\t\t\t',
    'neutral-grip dumbbell bench press\tneutral-grip dumbbell press|hammer-grip dumbbell press|neutral-grip DB press|parallel-grip dumbbell press\tdumbbell\tdynamic\tlying\tneutral\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\tshoulder~-20 75|elbow~105 5\ttriceps long head~indirect~The straightening elbow shortens it while the shoulder, moving from extension into flexion, lengthens it by about as much: loaded, but hardly moving, so less than the two short heads.\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.51|triceps lateral head~0.45|triceps medial head~0.45\tnone\tnovice\theavy\tdumbbell|bench\t\tdumbbell floor press\t\t\t',
    'one-arm dumbbell bench press\tsingle-arm dumbbell bench press|one-arm DB press|single-arm DB bench press\tdumbbell\tdynamic\tlying\t\t1\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|trunk rotation\telbow~100 5\t\tsternocostal chest\texternal oblique|internal oblique|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tintermediate\theavy\tdumbbell|bench\t\tdumbbell bench press\t\t\t',
    'alternating dumbbell bench press\talternating DB bench press|alternating dumbbell press\tdumbbell\tdynamic\tlying\t\t1\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tintermediate\theavy\tdumbbell|bench\t\tdumbbell bench press\t\t\t',
    'dumbbell floor press\tDB floor press\tdumbbell\tdynamic\tlying\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction|elbow extension\tshoulder flexion\telbow~90 5\ttriceps long head~indirect~The straightening elbow shortens it while the shoulder, moving from extension into flexion, lengthens it by about as much: loaded, but hardly moving, so less than the two short heads.\tsternocostal chest|triceps lateral head|triceps medial head\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head\ttriceps lateral head~0.39|triceps medial head~0.39\tnone\tnovice\theavy\tdumbbell|floor\t\t\tdumbbell bench press|floor press\t\t',
    'kettlebell floor press\tKB floor press|one-arm kettlebell floor press\tkettlebell\tdynamic\tlying\t\t1\thorizontal push\thorizontal push\tshoulder horizontal adduction|elbow extension\tshoulder flexion\telbow~90 5\ttriceps long head~indirect~The straightening elbow shortens it while the shoulder, moving from extension into flexion, lengthens it by about as much: loaded, but hardly moving, so less than the two short heads.\tsternocostal chest|triceps lateral head|triceps medial head\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head\ttriceps lateral head~0.39|triceps medial head~0.39\tnone\tnovice\theavy\tkettlebell|floor\t\t\tdumbbell bench press\t\t',
    'dumbbell squeeze press\tsqueeze press|DB squeeze press|hex press|crush press\tdumbbell\tdynamic\tlying\tneutral\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\tshoulder~-10 80|elbow~105 5\ttriceps long head~indirect~The straightening elbow shortens it while the shoulder, moving from extension into flexion, lengthens it by about as much: loaded, but hardly moving, so less than the two short heads.\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.55|triceps lateral head~0.45|triceps medial head~0.45\tnone\tnovice\tlight\tdumbbell|bench\t\t\t\t\t',
    'plate squeeze press\tplate press-out|standing plate press\tplate\tdynamic\tstanding\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\tshoulder~40 85|elbow~115 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.7|triceps lateral head~0.49|triceps medial head~0.49\tnone\tnovice\tlight\tplate\t\tmachine fly\t\t\t',
    'steep incline dumbbell press\thigh incline dumbbell press|high incline DB press|60-degree incline press\tdumbbell\tdynamic\tincline\t\t\thorizontal push\thorizontal push\tshoulder flexion\tshoulder horizontal adduction|elbow extension|scapular upward rotation\telbow~115 5\t\tanterior deltoid\tupper trapezius|serratus anterior|clavicular chest|sternocostal chest|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.49|triceps medial head~0.49\tnone\tnovice\theavy\tdumbbell|bench\t\tincline dumbbell press\tseated dumbbell shoulder press\tBench at 50 to 60 degrees: the front of the shoulder leads.\tridao-2020',
    'incline machine press\tmachine incline press|incline chest press machine|incline machine chest press\tmachine\tdynamic\tseated\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\tclavicular chest~direct~The upper part of the chest worked hardest with the bench raised to between 30 and 56 degrees.|sternocostal chest~indirect~The middle and lower parts of the chest worked hardest on the flat bench.\tclavicular chest\tsternocostal chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\theavy\tmachine incline press\t\t\tincline dumbbell press\t\tridao-2020|trebs-2010',
    'decline machine press\tdecline chest press machine|machine decline press\tmachine\tdynamic\tseated\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\theavy\tmachine decline press\t\t\tdecline dumbbell press\t\t',
    'one-arm machine chest press\tsingle-arm machine chest press|unilateral chest press\tmachine\tdynamic\tseated\t\t1\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\theavy\tmachine chest press\t\tmachine chest press\t\t\t',
    'standing cable chest press\tcable chest press|cable press\tcable\tdynamic\tsplit\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction\telbow~100 5\t\tsternocostal chest\tserratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\tlight\tcable\t\tband chest press\tone-arm cable press\t\t',
    'one-arm cable press\tsingle-arm cable press|single-arm cable chest press|split-stance cable press\tcable\tdynamic\tsplit\t\t1\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction|trunk rotation\telbow~100 5\t\tsternocostal chest\texternal oblique|internal oblique|serratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tintermediate\tlight\tcable\t\tstanding cable chest press\t\t\t',
    'band chest press\tbanded chest press|resistance band chest press\tband\tdynamic\tstanding\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction\telbow~100 5\t\tsternocostal chest\tserratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\tlight\tband\t\t\tstanding cable chest press|push-up\t\t',
    'incline dumbbell fly\tincline fly|incline DB fly|incline chest fly\tdumbbell\tdynamic\tincline\tneutral\t\t\t\tshoulder horizontal adduction\tshoulder flexion\telbow~20\tclavicular chest~direct~The upper part of the chest worked hardest with the bench raised to between 30 and 56 degrees.|sternocostal chest~indirect~The middle and lower parts of the chest worked hardest on the flat bench.\tclavicular chest\tsternocostal chest|anterior deltoid|coracobrachialis\t\tnone\tnovice\tlight\tdumbbell|bench\t\tmachine fly\t\t\tridao-2020|trebs-2010',
    'decline dumbbell fly\tdecline fly|decline DB fly\tdumbbell\tdynamic\tlying\tneutral\t\t\t\tshoulder horizontal adduction\tshoulder flexion\telbow~20\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis\t\tnone\tnovice\tlight\tdumbbell|bench\t\tdumbbell fly\t\t\t',
    'low-to-high cable fly\tlow cable fly|low-to-high crossover|upward cable fly\tcable\tdynamic\tstanding\tneutral\t\t\t\tshoulder horizontal adduction\tshoulder flexion\telbow~20\tclavicular chest~direct~The arm sweeps upwards, which is what the upper part of the chest does: it flexes the shoulder and draws the arm across.|sternocostal chest~indirect~The lower part of the chest draws the arm across, but has no share in lifting it.\tclavicular chest\tsternocostal chest|anterior deltoid|coracobrachialis\t\tnone\tnovice\tlight\tcable\t\tcable fly\t\t\t',
    'high-to-low cable fly\thigh cable fly|high-to-low crossover|downward cable fly\tcable\tdynamic\tstanding\tneutral\t\t\t\tshoulder horizontal adduction\t\telbow~20\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis\t\tnone\tnovice\tlight\tcable\t\tcable fly\t\t\t',
    'one-arm cable fly\tsingle-arm cable fly|single-arm cable crossover\tcable\tdynamic\tstanding\tneutral\t1\t\t\tshoulder horizontal adduction\tshoulder flexion|trunk rotation\telbow~20\t\tsternocostal chest\texternal oblique|internal oblique|clavicular chest|anterior deltoid|coracobrachialis\t\tnone\tintermediate\tlight\tcable\t\tcable fly\t\t\t',
    'lying cable fly\tcable bench fly|flat-bench cable fly\tcable\tdynamic\tlying\tneutral\t\t\t\tshoulder horizontal adduction\tshoulder flexion\telbow~20\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis\t\tnone\tnovice\tlight\tcable|bench\t\tmachine fly\tcable fly\t\t',
    'incline cable fly\tincline-bench cable fly\tcable\tdynamic\tincline\tneutral\t\t\t\tshoulder horizontal adduction\tshoulder flexion\telbow~20\tclavicular chest~direct~The upper part of the chest worked hardest with the bench raised to between 30 and 56 degrees.|sternocostal chest~indirect~The middle and lower parts of the chest worked hardest on the flat bench.\tclavicular chest\tsternocostal chest|anterior deltoid|coracobrachialis\t\tnone\tnovice\tlight\tcable|bench\t\tmachine fly\t\t\tridao-2020|trebs-2010',
    'band fly\tband chest fly|resistance band fly\tband\tdynamic\tstanding\tneutral\t\t\t\tshoulder horizontal adduction\tshoulder flexion\telbow~20\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis\t\tnone\tnovice\tlight\tband\t\t\tcable fly\t\t',
    'suspension fly\tring fly|suspended chest fly|sling fly\tsuspension\tdynamic\tprone\t\t\t\t\tshoulder horizontal adduction\tshoulder flexion|trunk flexion\telbow~20\t\tsternocostal chest\trectus abdominis|clavicular chest|anterior deltoid|coracobrachialis\t\tnone\tadvanced\theavy\tsuspension\t\tdumbbell fly|suspension push-up\t\t\t',
    'incline push-up\thands-elevated push-up|elevated push-up|push-up on a bench|box push-up\tbodyweight\tdynamic\tprone\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction\telbow~100 5\t\tsternocostal chest\tserratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\tlight\tbench\t\twall push-up\tpush-up\t\t',
    'knee push-up\tkneeling push-up|modified push-up\tbodyweight\tdynamic\tkneeling\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction\telbow~100 5\t\tsternocostal chest\tserratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\tlight\tfloor\t\twall push-up|incline push-up\tpush-up\t\t',
    'wall push-up\twall press-up|standing wall push-up\tbodyweight\tdynamic\tstanding\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction\telbow~100 5\t\tsternocostal chest\tserratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\tlight\twall\t\t\tincline push-up|knee push-up\t\t',
    'decline push-up\tfeet-elevated push-up|feet-up push-up\tbodyweight\tdynamic\tprone\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction\telbow~100 5\t\tsternocostal chest\tserratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tintermediate\tlight\tfloor|bench\t\tpush-up\tweighted push-up\t\t',
    'close-grip push-up\tnarrow push-up|close-hands push-up|triceps push-up\tbodyweight\tdynamic\tprone\tclose\t\thorizontal push\thorizontal push\telbow extension|shoulder horizontal adduction\tshoulder flexion|scapular protraction\tshoulder~-15 75|elbow~105 5\ttriceps long head~indirect~The straightening elbow shortens it while the shoulder, moving from extension into flexion, lengthens it by about as much: loaded, but hardly moving, so less than the two short heads.\tsternocostal chest|triceps lateral head|triceps medial head\tserratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head\ttriceps long head~0.52|triceps lateral head~0.45|triceps medial head~0.45\tnone\tnovice\tlight\tfloor\t\tknee push-up|push-up\tdiamond push-up\t\t',
    'diamond push-up\ttriangle push-up\tbodyweight\tdynamic\tprone\tclose\t\thorizontal push\thorizontal push\telbow extension|shoulder horizontal adduction\tshoulder flexion|scapular protraction\tshoulder~-15 75|elbow~115 5\ttriceps long head~indirect~The straightening elbow shortens it while the shoulder, moving from extension into flexion, lengthens it by about as much: loaded, but hardly moving, so less than the two short heads.\tsternocostal chest|triceps lateral head|triceps medial head\tserratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head\ttriceps long head~0.54|triceps lateral head~0.49|triceps medial head~0.49\tnone\tintermediate\tlight\tfloor\t\tclose-grip push-up\tweighted push-up\t\t',
    'wide push-up\twide-grip push-up|wide-hands push-up\tbodyweight\tdynamic\tprone\twide\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction\telbow~85 5\t\tsternocostal chest\tserratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.37|triceps medial head~0.37\tnone\tnovice\tlight\tfloor\t\tknee push-up\t\t\t',
    'weighted push-up\tloaded push-up|push-up with plate|weighted press-up\tplate\tdynamic\tprone\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction\telbow~100 5\t\tsternocostal chest\tserratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tintermediate\theavy\tfloor|plate\t\tpush-up\tone-arm push-up\t\t',
    'deficit push-up\tdeep push-up|push-up on handles|push-up between blocks\tbodyweight\tdynamic\tprone\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction\telbow~115 5\t\tsternocostal chest\tserratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.49|triceps medial head~0.49\tnone\tintermediate\tlight\tfloor\t\tpush-up\tweighted push-up\t\t',
    'suspension push-up\tsuspended push-up|sling push-up\tsuspension\tdynamic\tprone\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction|trunk flexion\telbow~100 5\t\tsternocostal chest\trectus abdominis|serratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tintermediate\tlight\tsuspension\t\tpush-up\tring push-up\t\t',
    'ring push-up\tgymnastic ring push-up\tsuspension\tdynamic\tprone\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction|trunk flexion\telbow~100 5\t\tsternocostal chest\trectus abdominis|serratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tadvanced\tlight\tsuspension\t\tsuspension push-up\tring dip\t\t',
    'band-resisted push-up\tbanded push-up|push-up with band\tband\tdynamic\tprone\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction\telbow~100 5\t\tsternocostal chest\tserratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tintermediate\theavy\tfloor|band\t\tpush-up\t\t\t',
    'hand-release push-up\tdead-stop push-up|release push-up\tbodyweight\tdynamic\tprone\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction\telbow~100 5\t\tsternocostal chest\tserratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\tlight\tfloor\t\tknee push-up\tdeficit push-up\t\t',
    'tempo push-up\tslow push-up|slow-lowering push-up|eccentric push-up|negative push-up\tbodyweight\tdynamic\tprone\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction\telbow~100 5\t\tsternocostal chest\tserratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\tlight\tfloor\t\tincline push-up\tpaused push-up\t\t',
    'paused push-up\tpause push-up\tbodyweight\tdynamic\tprone\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction\telbow~100 5\t\tsternocostal chest\tserratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\tlight\tfloor\t\tpush-up\tdeficit push-up\t\t',
    'push-up hold\tisometric push-up|low push-up hold|mid-push-up hold\tbodyweight\tisometric\tprone\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction\telbow~90\t\tsternocostal chest\tserratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.74|triceps medial head~0.74\tnone\tnovice\tlight\tfloor\t\tplank\tpush-up\t\t',
    'push-up with rotation\tT push-up|rotating push-up\tbodyweight\tdynamic\tprone\t\t1\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction|trunk rotation\telbow~100 5\t\tsternocostal chest\texternal oblique|internal oblique|serratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tintermediate\tlight\tfloor\t\tpush-up\t\t\t',
    'plyometric push-up\tplyo push-up|clap push-up|clapping push-up|explosive push-up\tbodyweight\tplyometric\tprone\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction\telbow~100 5\t\tsternocostal chest\tserratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tintermediate\tlight\tfloor\t\tpush-up|medicine ball chest pass\tdepth push-up\t\t',
    'depth push-up\tdrop push-up|depth-drop push-up\tbodyweight\tplyometric\tprone\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction\telbow~100 5\t\tsternocostal chest\tserratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tadvanced\tlight\tfloor|box\t\tplyometric push-up\t\t\t',
    'archer push-up\tside-to-side push-up|typewriter push-up\tbodyweight\tdynamic\tprone\t\t1\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction\telbow~100 5\t\tsternocostal chest\tserratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tadvanced\theavy\tfloor\t\tweighted push-up\tone-arm push-up\t\t',
    'one-arm push-up\tsingle-arm push-up\tbodyweight\tdynamic\tprone\t\t1\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction|trunk rotation\telbow~100 5\t\tsternocostal chest\texternal oblique|internal oblique|serratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tadvanced\theavy\tfloor\t\tarcher push-up\t\t\t',
    'forward-lean push-up\tpseudo planche push-up|planche lean push-up\tbodyweight\tdynamic\tprone\t\t\thorizontal push\thorizontal push\tshoulder flexion|shoulder horizontal adduction\telbow extension|scapular protraction|trunk flexion\telbow~100 5\t\tsternocostal chest|anterior deltoid\trectus abdominis|serratus anterior|clavicular chest|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tadvanced\theavy\tfloor\t\tdecline push-up\t\t\t',
    'swooping push-up\tHindu push-up|dive-bomber push-up\tbodyweight\tdynamic\tprone\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension|scapular protraction\telbow~100 5\t\tsternocostal chest\tserratus anterior|clavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tintermediate\tlight\tfloor\t\tpush-up|pike push-up\t\t\t',
    'pike push-up\tpike press|shoulder push-up\tbodyweight\tdynamic\tprone\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~70 160|elbow~110 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.82|triceps lateral head~0.47|triceps medial head~0.47\tnone\tintermediate\tlight\tfloor\t\tdecline push-up|push-up\tfeet-elevated pike push-up\t\t',
    'feet-elevated pike push-up\televated pike push-up|box pike push-up\tbodyweight\tdynamic\tprone\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~70 160|elbow~110 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.82|triceps lateral head~0.47|triceps medial head~0.47\tnone\tintermediate\theavy\tfloor|box\t\tpike push-up\thandstand push-up\t\t',
    'handstand push-up\tHSPU|wall handstand push-up|vertical push-up\tbodyweight\tdynamic\tsupported\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~70 160|elbow~110 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.82|triceps lateral head~0.47|triceps medial head~0.47\tnone\tadvanced\theavy\twall|floor\t\tfeet-elevated pike push-up\t\t\t',
    'ring dip\tgymnastic ring dip\tsuspension\tdynamic\tsupported\tneutral\t\thorizontal push\thorizontal push\tshoulder horizontal adduction|elbow extension\tshoulder flexion\tshoulder~-40 10|elbow~95 5\t\tsternocostal chest|triceps lateral head|triceps medial head\tclavicular chest|anterior deltoid|coracobrachialis\ttriceps lateral head~0.41|triceps medial head~0.41\tnone\tadvanced\theavy\tsuspension\t\tdip|ring push-up\t\tCounted with the horizontal pushes: the muscles are those of a decline press, not of an overhead press.\t',
    'straight-bar dip\tbar support dip|single-bar dip\tbodyweight\tdynamic\tsupported\toverhand\t\thorizontal push\thorizontal push\tshoulder horizontal adduction|elbow extension\tshoulder flexion\tshoulder~-40 10|elbow~95 5\t\tsternocostal chest|triceps lateral head|triceps medial head\tclavicular chest|anterior deltoid|coracobrachialis\ttriceps lateral head~0.41|triceps medial head~0.41\tnone\tadvanced\theavy\tpull-up bar\t\tdip\tmuscle-up\tCounted with the horizontal pushes: the muscles are those of a decline press, not of an overhead press.\t',
    'machine dip\tseated dip machine|dip machine|seated machine dip\tmachine\tdynamic\tseated\tneutral\t\thorizontal push\thorizontal push\tshoulder horizontal adduction|elbow extension\tshoulder flexion\tshoulder~-40 10|elbow~95 5\t\tsternocostal chest|triceps lateral head|triceps medial head\tclavicular chest|anterior deltoid|coracobrachialis\ttriceps lateral head~0.41|triceps medial head~0.41\tnone\tnovice\theavy\tmachine dip\t\t\tdip\tCounted with the horizontal pushes: the muscles are those of a decline press, not of an overhead press.\t',
    'bench dip\tchair dip|box dip|feet-supported dip\tbodyweight\tdynamic\tsupported\toverhand\t\thorizontal push\thorizontal push\telbow extension\tshoulder horizontal adduction|shoulder flexion\tshoulder~-55 -10|elbow~95 5\t\ttriceps lateral head|triceps medial head\tsternocostal chest|anterior deltoid\ttriceps lateral head~0.41|triceps medial head~0.41\tnone\tnovice\tlight\tbench\t\tcable pushdown\tdip\tDeep positions stretch the front of the shoulder; stop where the upper arm is level.\t',
    'band-assisted dip\tbanded dip|assisted dip with band\tbodyweight\tdynamic\tsupported\tneutral\t\thorizontal push\thorizontal push\tshoulder horizontal adduction|elbow extension\tshoulder flexion\tshoulder~-40 10|elbow~95 5\t\tsternocostal chest|triceps lateral head|triceps medial head\tclavicular chest|anterior deltoid|coracobrachialis\ttriceps lateral head~0.41|triceps medial head~0.41\tnone\tnovice\theavy\tdip bars|band\t\t\tdip\tCounted with the horizontal pushes: the muscles are those of a decline press, not of an overhead press.\t',
    'negative dip\teccentric dip|dip lowering|slow-lowering dip\tbodyweight\tdynamic\tsupported\tneutral\t\thorizontal push\thorizontal push\tshoulder horizontal adduction|elbow extension\tshoulder flexion\tshoulder~-40 10|elbow~95 5\t\tsternocostal chest|triceps lateral head|triceps medial head\tclavicular chest|anterior deltoid|coracobrachialis\ttriceps lateral head~0.41|triceps medial head~0.41\tnone\tintermediate\theavy\tdip bars\t\tassisted dip\tdip\tCounted with the horizontal pushes: the muscles are those of a decline press, not of an overhead press.\t',
    'dip support hold\tsupport hold|top dip hold|parallel bar hold\tbodyweight\tisometric\tsupported\tneutral\t\t\t\tscapular depression\telbow extension\tshoulder~0|elbow~5\t\tlower trapezius\tpectoralis minor|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.2|triceps lateral head~0.01|triceps medial head~0.01\tnone\tnovice\tlight\tdip bars\t\t\tdip\t\t',
    'push press\tbarbell push press\tbarbell\tdynamic\tstanding\toverhand\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation|knee extension\tshoulder~60 165|elbow~120 5|hip~25 0|knee~40 0|ankle~15 0\tvastus lateralis~none~The short dip and drive is far from taxing for the thigh; the arms finish the lift.|vastus medialis~none~The short dip and drive is far from taxing for the thigh; the arms finish the lift.|vastus intermedius~none~The short dip and drive is far from taxing for the thigh; the arms finish the lift.\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.82|triceps lateral head~0.51|triceps medial head~0.51\tmoderate\tintermediate\theavy\tbarbell|rack\t\toverhead press\t\t\t',
    'seated barbell shoulder press\tseated barbell press|seated military press|seated overhead press|seated barbell overhead press\tbarbell\tdynamic\tseated\toverhand\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tmoderate\tnovice\theavy\tbarbell|rack|bench\t\tseated dumbbell shoulder press|machine shoulder press\toverhead press\t\t',
    'behind-the-neck press\tBTN press|press behind the neck|behind-neck press\tbarbell\tdynamic\tstanding\twide\t\tvertical push\tvertical push\tshoulder abduction\tshoulder flexion|elbow extension|scapular upward rotation\telbow~110 5\t\tmiddle deltoid\tupper trapezius|serratus anterior|anterior deltoid|supraspinatus|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.47|triceps medial head~0.47\tmoderate\tadvanced\theavy\tbarbell|rack\t\toverhead press\t\tAsks for a shoulder that reaches the position freely and without pain.\t',
    'seated floor overhead press\tfloor-seated press|straight-leg seated press\tbarbell\tdynamic\tseated\toverhand\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation|trunk extension\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\terector spinae|multifidus|upper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tmoderate\tadvanced\theavy\tbarbell|rack|floor\t\tseated barbell shoulder press\t\t\t',
    'pin overhead press\toverhead pin press|dead-start overhead press|partial overhead press\tbarbell\tdynamic\tstanding\toverhand\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~85 165|elbow~90 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.79|triceps lateral head~0.39|triceps medial head~0.39\tmoderate\tintermediate\theavy\tbarbell|rack\t\toverhead press\t\t\t',
    'paused overhead press\tpause overhead press\tbarbell\tdynamic\tstanding\toverhand\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tmoderate\tintermediate\theavy\tbarbell|rack\t\toverhead press\t\t\t',
    'landmine press\tone-arm landmine press|single-arm landmine press|angled bar press|corner press\tbarbell\tdynamic\tstanding\t\t1\tvertical push\tvertical push\tshoulder flexion\telbow extension|scapular upward rotation|scapular protraction\tshoulder~25 130|elbow~120 5\t\tanterior deltoid\tupper trapezius|serratus anterior|clavicular chest|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.75|triceps lateral head~0.51|triceps medial head~0.51\tlow\tnovice\theavy\tlandmine|barbell\t\thalf-kneeling landmine press\tone-arm dumbbell overhead press|overhead press\t\t',
    'half-kneeling landmine press\tkneeling landmine press|half-kneeling angled bar press\tbarbell\tdynamic\tkneeling\t\t1\tvertical push\tvertical push\tshoulder flexion\telbow extension|scapular upward rotation|scapular protraction\tshoulder~25 130|elbow~120 5\t\tanterior deltoid\tupper trapezius|serratus anterior|clavicular chest|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.75|triceps lateral head~0.51|triceps medial head~0.51\tlow\tnovice\theavy\tlandmine|barbell\t\t\tlandmine press\t\t',
    'two-arm landmine press\ttwo-hand landmine press|double-arm landmine press\tbarbell\tdynamic\tstanding\tclose\t\tvertical push\tvertical push\tshoulder flexion\telbow extension|scapular upward rotation|scapular protraction\tshoulder~25 130|elbow~120 5\t\tanterior deltoid\tupper trapezius|serratus anterior|clavicular chest|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.75|triceps lateral head~0.51|triceps medial head~0.51\tlow\tnovice\theavy\tlandmine|barbell\t\t\toverhead press\t\t',
    'one-arm dumbbell overhead press\tsingle-arm dumbbell press|single-arm DB overhead press|one-arm dumbbell press|one-arm DB shoulder press|single-arm dumbbell shoulder press\tdumbbell\tdynamic\tstanding\t\t1\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation|trunk side bend\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\texternal oblique|internal oblique|quadratus lumborum|upper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tlow\tintermediate\theavy\tdumbbell\t\tstanding dumbbell shoulder press\t\t\t',
    'half-kneeling overhead press\thalf-kneeling dumbbell press|half-kneeling dumbbell overhead press|half-kneeling kettlebell press\tdumbbell\tdynamic\tkneeling\t\t1\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation|trunk side bend\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\texternal oblique|internal oblique|quadratus lumborum|upper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tlow\tintermediate\theavy\tdumbbell\t\thalf-kneeling landmine press\tone-arm dumbbell overhead press\t\t',
    'alternating dumbbell shoulder press\talternating DB shoulder press|alternating dumbbell overhead press\tdumbbell\tdynamic\tstanding\t\t1\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tlow\tintermediate\theavy\tdumbbell\t\tstanding dumbbell shoulder press\t\t\t',
    'kettlebell overhead press\tkettlebell press|KB press|one-arm kettlebell press|kettlebell strict press|single-arm kettlebell press\tkettlebell\tdynamic\tstanding\t\t1\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation|trunk side bend\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\texternal oblique|internal oblique|quadratus lumborum|upper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tlow\tintermediate\theavy\tkettlebell\t\tone-arm dumbbell overhead press\tbottoms-up kettlebell press|double kettlebell overhead press\t\t',
    'bottoms-up kettlebell press\tbottoms-up press|upside-down kettlebell press\tkettlebell\tdynamic\tstanding\t\t1\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation|grip\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head|finger flexors\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tlow\tadvanced\tlight\tkettlebell\t1\tkettlebell overhead press\t\t\t',
    'double kettlebell overhead press\tdouble kettlebell press|double KB press|two-kettlebell press\tkettlebell\tdynamic\tstanding\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tmoderate\tintermediate\theavy\tkettlebell\t\tkettlebell overhead press\t\t\t',
    'rotating dumbbell shoulder press\trotational dumbbell press|twisting dumbbell press|palms-turning press\tdumbbell\tdynamic\tseated\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tlow\tintermediate\theavy\tdumbbell|bench\t\tseated dumbbell shoulder press\t\t\t',
    'neutral-grip dumbbell shoulder press\tneutral-grip shoulder press|hammer-grip shoulder press|palms-in shoulder press|neutral-grip overhead press\tdumbbell\tdynamic\tseated\tneutral\t\tvertical push\tvertical push\tshoulder flexion\tshoulder abduction|elbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid\tupper trapezius|serratus anterior|clavicular chest|middle deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tlow\tnovice\theavy\tdumbbell|bench\t\tmachine shoulder press\t\t\t',
    'dumbbell push press\tDB push press\tdumbbell\tdynamic\tstanding\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation|knee extension\tshoulder~60 165|elbow~120 5|hip~25 0|knee~40 0|ankle~15 0\tvastus lateralis~none~The short dip and drive is far from taxing for the thigh; the arms finish the lift.|vastus medialis~none~The short dip and drive is far from taxing for the thigh; the arms finish the lift.|vastus intermedius~none~The short dip and drive is far from taxing for the thigh; the arms finish the lift.\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.82|triceps lateral head~0.51|triceps medial head~0.51\tmoderate\tintermediate\theavy\tdumbbell\t\tstanding dumbbell shoulder press\tpush press\t\t',
    'guided-bar shoulder press\tguided-bar overhead press|fixed-track shoulder press\tguided bar\tdynamic\tseated\toverhand\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tlow\tnovice\theavy\tguided bar|bench\t\tmachine shoulder press\tseated barbell shoulder press\t\t',
    'cable shoulder press\tcable overhead press|standing cable shoulder press\tcable\tdynamic\tstanding\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tlow\tnovice\tlight\tcable\t\tmachine shoulder press\t\t\t',
    'band overhead press\tband shoulder press|banded overhead press|resistance band shoulder press\tband\tdynamic\tstanding\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tlow\tnovice\tlight\tband\t\t\tstanding dumbbell shoulder press\t\t',
    'sandbag overhead press\tsandbag shoulder press|sandbag press\tsandbag\tdynamic\tstanding\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tmoderate\tintermediate\theavy\tsandbag\t\tstanding dumbbell shoulder press\t\t\t',
    'lateral raise\tdumbbell lateral raise|side raise|DB lateral raise|side lateral raise|lat raise|dumbbell side raise|standing lateral raise|side delt raise\tdumbbell\tdynamic\tstanding\tneutral\t\t\t\tshoulder abduction\tscapular upward rotation\telbow~10\t\tmiddle deltoid\tupper trapezius|serratus anterior|anterior deltoid|supraspinatus\t\tnone\tnovice\tlight\tdumbbell\t\tmachine lateral raise\tleaning lateral raise\t\tcampos-2020',
    'front raise\tdumbbell front raise|DB front raise|standing front raise|front delt raise\tdumbbell\tdynamic\tstanding\toverhand\t\t\t\tshoulder flexion\tscapular upward rotation\tshoulder~5 90|elbow~10 10\t\tanterior deltoid\tupper trapezius|serratus anterior|clavicular chest|coracobrachialis\t\tnone\tnovice\tlight\tdumbbell\t\tband front raise\tplate front raise\t\t',
    'cable lateral raise\tone-arm cable lateral raise|single-arm cable lateral raise|cable side raise|low cable lateral raise\tcable\tdynamic\tstanding\tneutral\t1\t\t\tshoulder abduction\tscapular upward rotation\telbow~10\t\tmiddle deltoid\tupper trapezius|serratus anterior|anterior deltoid|supraspinatus\t\tnone\tnovice\tlight\tcable\t\tmachine lateral raise\t\t\tcampos-2020',
    'machine lateral raise\tlateral raise machine|machine side raise\tmachine\tdynamic\tseated\tneutral\t\t\t\tshoulder abduction\tscapular upward rotation\telbow~90\t\tmiddle deltoid\tupper trapezius|serratus anterior|anterior deltoid|supraspinatus\t\tnone\tnovice\tlight\tmachine lateral raise\t\t\tlateral raise\t\tcampos-2020',
    'cable external rotation\texternal rotation|external shoulder rotation|standing external rotation|standing cable external rotation|cable ER\tcable\tdynamic\tstanding\t\t1\t\t\tshoulder external rotation\t\telbow~90\t\tinfraspinatus|teres minor\tposterior deltoid\t\tnone\tnovice\tlight\tcable\t\tband external rotation\texternal rotation at 90 degrees\t\t',
    'band external rotation\tbanded external rotation|resistance band external rotation|band ER|rotator cuff band work\tband\tdynamic\tstanding\t\t1\t\t\tshoulder external rotation\t\telbow~90\t\tinfraspinatus|teres minor\tposterior deltoid\t\tnone\tnovice\tlight\tband\t\tisometric external rotation\tcable external rotation\t\t',
    'side-lying external rotation\tside-lying dumbbell external rotation|lying external rotation|side-lying ER|dumbbell external rotation\tdumbbell\tdynamic\tside-lying\t\t1\t\t\tshoulder external rotation\t\telbow~90\t\tinfraspinatus|teres minor\tposterior deltoid\t\tnone\tnovice\tlight\tdumbbell|floor\t\tisometric external rotation\tseated external rotation on the knee\t\t',
    'cable internal rotation\tinternal rotation|internal shoulder rotation|standing internal rotation|cable IR\tcable\tdynamic\tstanding\t\t1\t\t\tshoulder internal rotation\t\telbow~90\t\tsubscapularis\t\t\tnone\tnovice\tlight\tcable\t\tband internal rotation\tinternal rotation at 90 degrees\t\t',
    'band internal rotation\tbanded internal rotation|resistance band internal rotation|band IR\tband\tdynamic\tstanding\t\t1\t\t\tshoulder internal rotation\t\telbow~90\t\tsubscapularis\t\t\tnone\tnovice\tlight\tband\t\tisometric internal rotation\tcable internal rotation\t\t',
    'upright row\tbarbell upright row|bent-bar upright row|BB upright row\tbarbell\tdynamic\tstanding\toverhand\t\t\t\tshoulder abduction|scapular elevation\telbow flexion|scapular upward rotation\telbow~10 110\t\tupper trapezius|middle deltoid\tlevator scapulae|serratus anterior|anterior deltoid|supraspinatus|biceps long head|biceps short head|brachialis\tbrachialis~0.62\tlow\tintermediate\theavy\tbarbell\t1\tdumbbell upright row\t\tTurned in and raised the shoulder has little room: stop with the elbows no higher than the shoulders, and leave it out where it hurts.\t',
    'dumbbell upright row\tDB upright row\tdumbbell\tdynamic\tstanding\toverhand\t\t\t\tshoulder abduction|scapular elevation\telbow flexion|scapular upward rotation\telbow~10 110\t\tupper trapezius|middle deltoid\tlevator scapulae|serratus anterior|anterior deltoid|supraspinatus|biceps long head|biceps short head|brachialis\tbrachialis~0.62\tlow\tintermediate\tlight\tdumbbell\t1\tlateral raise\tupright row\tTurned in and raised the shoulder has little room: stop with the elbows no higher than the shoulders, and leave it out where it hurts.\t',
    'cable upright row\trope upright row|low cable upright row\tcable\tdynamic\tstanding\toverhand\t\t\t\tshoulder abduction|scapular elevation\telbow flexion|scapular upward rotation\telbow~10 110\t\tupper trapezius|middle deltoid\tlevator scapulae|serratus anterior|anterior deltoid|supraspinatus|biceps long head|biceps short head|brachialis\tbrachialis~0.62\tlow\tintermediate\tlight\tcable\t1\tlateral raise\tupright row\tTurned in and raised the shoulder has little room: stop with the elbows no higher than the shoulders, and leave it out where it hurts.\t',
    'kettlebell upright row\tKB upright row\tkettlebell\tdynamic\tstanding\toverhand\t\t\t\tshoulder abduction|scapular elevation\telbow flexion|scapular upward rotation\telbow~10 110\t\tupper trapezius|middle deltoid\tlevator scapulae|serratus anterior|anterior deltoid|supraspinatus|biceps long head|biceps short head|brachialis\tbrachialis~0.62\tlow\tintermediate\theavy\tkettlebell\t1\tdumbbell upright row\t\tTurned in and raised the shoulder has little room: stop with the elbows no higher than the shoulders, and leave it out where it hurts.\t',
    'scapular push-up\tpush-up plus|scap push-up|serratus push-up|shoulder-blade push-up\tbodyweight\tdynamic\tprone\t\t\t\t\tscapular protraction\t\telbow~5\t\tserratus anterior\tpectoralis minor\t\tnone\tnovice\tlight\tfloor\t\twall scapular push-up|kneeling scapular push-up\tfeet-elevated scapular push-up\t\t',
    'seated lateral raise\tseated dumbbell lateral raise|seated side raise|seated DB lateral raise\tdumbbell\tdynamic\tseated\tneutral\t\t\t\tshoulder abduction\tscapular upward rotation\telbow~10\t\tmiddle deltoid\tupper trapezius|serratus anterior|anterior deltoid|supraspinatus\t\tnone\tnovice\tlight\tdumbbell|bench\t\tmachine lateral raise\t\t\tcampos-2020',
    'leaning lateral raise\tlean-away lateral raise|leaning cable lateral raise|lean-away cable lateral raise\tcable\tdynamic\tstanding\tneutral\t1\t\t\tshoulder abduction\tscapular upward rotation\telbow~10\t\tmiddle deltoid\tupper trapezius|serratus anterior|anterior deltoid|supraspinatus\t\tnone\tintermediate\tlight\tcable\t\tcable lateral raise\t\t\tcampos-2020',
    'band lateral raise\tbanded lateral raise|resistance band lateral raise\tband\tdynamic\tstanding\tneutral\t\t\t\tshoulder abduction\tscapular upward rotation\telbow~10\t\tmiddle deltoid\tupper trapezius|serratus anterior|anterior deltoid|supraspinatus\t\tnone\tnovice\tlight\tband\t\t\tlateral raise\t\tcampos-2020',
    'one-arm dumbbell lateral raise\tsingle-arm lateral raise|single-arm dumbbell lateral raise|one-arm lateral raise\tdumbbell\tdynamic\tstanding\tneutral\t1\t\t\tshoulder abduction\tscapular upward rotation\telbow~10\t\tmiddle deltoid\tupper trapezius|serratus anterior|anterior deltoid|supraspinatus\t\tnone\tnovice\tlight\tdumbbell\t\tlateral raise\t\t\tcampos-2020',
    'side-lying lateral raise\tlying lateral raise|incline side-lying lateral raise|side-lying abduction raise\tdumbbell\tdynamic\tside-lying\tneutral\t1\t\t\tshoulder abduction\tscapular upward rotation\telbow~10\t\tmiddle deltoid\tupper trapezius|serratus anterior|anterior deltoid|supraspinatus\t\tnone\tnovice\tlight\tdumbbell|bench\t\tlateral raise\t\t\tcampos-2020',
    'bent-arm lateral raise\tbent-elbow lateral raise|short-lever lateral raise\tdumbbell\tdynamic\tstanding\tneutral\t\t\t\tshoulder abduction\tscapular upward rotation\telbow~90\t\tmiddle deltoid\tupper trapezius|serratus anterior|anterior deltoid|supraspinatus\t\tnone\tnovice\tlight\tdumbbell\t\t\tlateral raise\t\tcampos-2020',
    'partial lateral raise\tlateral raise partials|bottom-half lateral raise\tdumbbell\tdynamic\tstanding\tneutral\t\t\t\tshoulder abduction\tscapular upward rotation\telbow~10\t\tmiddle deltoid\tupper trapezius|serratus anterior|anterior deltoid|supraspinatus\t\tnone\tintermediate\tlight\tdumbbell\t\tlateral raise\t\t\tcampos-2020',
    'full-range lateral raise\toverhead lateral raise|thumbs-up lateral raise to overhead\tdumbbell\tdynamic\tstanding\tneutral\t\t\t\tshoulder abduction\tscapular upward rotation\telbow~10\t\tmiddle deltoid\tupper trapezius|serratus anterior|anterior deltoid|supraspinatus\t\tnone\tintermediate\tlight\tdumbbell\t\tlateral raise\t\t\tcampos-2020',
    'kettlebell lateral raise\tKB lateral raise\tkettlebell\tdynamic\tstanding\tneutral\t\t\t\tshoulder abduction\tscapular upward rotation\telbow~10\t\tmiddle deltoid\tupper trapezius|serratus anterior|anterior deltoid|supraspinatus\t\tnone\tintermediate\tlight\tkettlebell\t\tlateral raise\t\t\tcampos-2020',
    'lateral raise hold\tisometric lateral raise|static lateral raise\tdumbbell\tisometric\tstanding\tneutral\t\t\t\tshoulder abduction\tscapular upward rotation\telbow~10\t\tmiddle deltoid\tupper trapezius|serratus anterior|anterior deltoid|supraspinatus\t\tnone\tnovice\tlight\tdumbbell\t\t\tlateral raise\t\t',
    'plate front raise\tweight plate front raise|two-hand plate raise\tplate\tdynamic\tstanding\tneutral\t\t\t\tshoulder flexion\tscapular upward rotation\tshoulder~5 90|elbow~10 10\t\tanterior deltoid\tupper trapezius|serratus anterior|clavicular chest|coracobrachialis\t\tnone\tnovice\tlight\tplate\t\tfront raise\t\t\t',
    'barbell front raise\tBB front raise\tbarbell\tdynamic\tstanding\toverhand\t\t\t\tshoulder flexion\tscapular upward rotation\tshoulder~5 90|elbow~10 10\t\tanterior deltoid\tupper trapezius|serratus anterior|clavicular chest|coracobrachialis\t\tnone\tnovice\tlight\tbarbell\t\tfront raise\t\t\t',
    'cable front raise\trope front raise|low cable front raise\tcable\tdynamic\tstanding\toverhand\t\t\t\tshoulder flexion\tscapular upward rotation\tshoulder~-10 90|elbow~10 10\t\tanterior deltoid\tupper trapezius|serratus anterior|clavicular chest|coracobrachialis\t\tnone\tnovice\tlight\tcable\t\tfront raise\t\t\t',
    'band front raise\tbanded front raise|resistance band front raise\tband\tdynamic\tstanding\toverhand\t\t\t\tshoulder flexion\tscapular upward rotation\tshoulder~5 90|elbow~10 10\t\tanterior deltoid\tupper trapezius|serratus anterior|clavicular chest|coracobrachialis\t\tnone\tnovice\tlight\tband\t\t\tfront raise\t\t',
    'incline front raise\tincline bench front raise|seated incline front raise\tdumbbell\tdynamic\tincline\toverhand\t\t\t\tshoulder flexion\tscapular upward rotation\tshoulder~-30 90|elbow~10 10\t\tanterior deltoid\tupper trapezius|serratus anterior|clavicular chest|coracobrachialis\t\tnone\tintermediate\tlight\tdumbbell|bench\t\tfront raise\t\t\t',
    'alternating front raise\talternating dumbbell front raise|one-arm front raise|single-arm front raise\tdumbbell\tdynamic\tstanding\toverhand\t1\t\t\tshoulder flexion\tscapular upward rotation\tshoulder~5 90|elbow~10 10\t\tanterior deltoid\tupper trapezius|serratus anterior|clavicular chest|coracobrachialis\t\tnone\tnovice\tlight\tdumbbell\t\tband front raise\t\t\t',
    'scaption raise\tscaption|full-can raise|thumbs-up raise|scapular-plane raise|dumbbell scaption\tdumbbell\tdynamic\tstanding\tneutral\t\t\t\tshoulder abduction|shoulder flexion\tscapular upward rotation\telbow~5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis\t\tnone\tnovice\tlight\tdumbbell\t\twall slide\tlateral raise\t\t',
    'external rotation at 90 degrees\t90/90 external rotation|90-90 external rotation|abducted external rotation|high external rotation\tcable\tdynamic\tstanding\t\t1\t\t\tshoulder external rotation\tshoulder abduction\telbow~90\t\tinfraspinatus|teres minor\tmiddle deltoid|posterior deltoid\t\tnone\tintermediate\tlight\tcable\t\tcable external rotation\t\t\t',
    'seated external rotation on the knee\tknee-supported external rotation|elbow-on-knee external rotation|seated dumbbell external rotation\tdumbbell\tdynamic\tseated\t\t1\t\t\tshoulder external rotation\t\telbow~90\t\tinfraspinatus|teres minor\tposterior deltoid\t\tnone\tintermediate\tlight\tdumbbell|bench\t\tside-lying external rotation\t\t\t',
    'prone external rotation\tprone 90/90 external rotation|face-down external rotation\tdumbbell\tdynamic\tprone\t\t1\t\t\tshoulder external rotation\tshoulder horizontal abduction\telbow~90\t\tinfraspinatus|teres minor\tposterior deltoid\t\tnone\tintermediate\tlight\tdumbbell|bench\t\tside-lying external rotation\t\t\t',
    'isometric external rotation\texternal rotation hold|wall external rotation|isometric ER\tbodyweight\tisometric\tstanding\t\t1\t\t\tshoulder external rotation\t\telbow~90\t\tinfraspinatus|teres minor\tposterior deltoid\t\tnone\tnovice\tlight\twall\t\t\tband external rotation\t\t',
    'double band external rotation\ttwo-arm band external rotation|bilateral band external rotation\tband\tdynamic\tstanding\t\t\t\t\tshoulder external rotation\tscapular retraction\telbow~90\t\tinfraspinatus|teres minor\tmiddle trapezius|rhomboids|posterior deltoid\t\tnone\tnovice\tlight\tband\t\t\tcable external rotation\t\t',
    'internal rotation at 90 degrees\t90/90 internal rotation|90-90 internal rotation|abducted internal rotation\tcable\tdynamic\tstanding\t\t1\t\t\tshoulder internal rotation\tshoulder abduction\telbow~90\t\tsubscapularis\tmiddle deltoid\t\tnone\tintermediate\tlight\tcable\t\tcable internal rotation\t\t\t',
    'isometric internal rotation\tinternal rotation hold|wall internal rotation|isometric IR\tbodyweight\tisometric\tstanding\t\t1\t\t\tshoulder internal rotation\t\telbow~90\t\tsubscapularis\t\t\tnone\tnovice\tlight\twall\t\t\tband internal rotation\t\t',
    'high pull with external rotation\tCuban rotation|Cuban press|muscle rotation|dumbbell scarecrow\tdumbbell\tdynamic\tstanding\t\t\t\t\tshoulder external rotation\tshoulder abduction|scapular upward rotation\telbow~90\t\tinfraspinatus|teres minor\tupper trapezius|serratus anterior|middle deltoid|posterior deltoid\t\tnone\tintermediate\tlight\tdumbbell\t\texternal rotation at 90 degrees\t\t\t',
    'Y raise\tprone Y raise|incline Y raise|prone Y|lower trap raise|dumbbell Y raise|chest-supported Y raise\tdumbbell\tdynamic\tprone\t\t\t\t\tscapular upward rotation\tscapular retraction|shoulder abduction\telbow~5\tlower trapezius~direct~The arm is raised in line with its fibres, with the blade tilted back against gravity.|serratus anterior~indirect~Lying face down the blade is drawn back as it turns up; the serratus turns it but does not lead.\tupper trapezius|lower trapezius\tmiddle trapezius|rhomboids|serratus anterior|middle deltoid\t\tnone\tnovice\tlight\tdumbbell|bench\t\twall slide\tcable Y raise\t\t',
    'cable Y raise\tstanding cable Y raise|low cable Y raise\tcable\tdynamic\tstanding\t\t\t\t\tscapular upward rotation\tscapular retraction|shoulder abduction\telbow~5\tlower trapezius~direct~The arm is raised in line with its fibres, with the blade tilted back against gravity.\tupper trapezius|lower trapezius|serratus anterior\tmiddle trapezius|rhomboids|middle deltoid\t\tnone\tintermediate\tlight\tcable\t\tY raise\t\t\t',
    'suspension Y raise\tring Y raise|suspension Y fly\tsuspension\tdynamic\tstanding\t\t\t\t\tscapular upward rotation\tscapular retraction|shoulder abduction\telbow~5\tlower trapezius~direct~The arm is raised in line with its fibres, with the blade tilted back against gravity.\tupper trapezius|lower trapezius|serratus anterior\tmiddle trapezius|rhomboids|middle deltoid\t\tnone\tintermediate\tlight\tsuspension\t\tY raise\t\t\t',
    'T raise\tprone T raise|prone T|incline T raise|prone horizontal abduction\tdumbbell\tdynamic\tprone\t\t\t\t\tshoulder horizontal abduction|scapular retraction\t\telbow~5\t\tmiddle trapezius|rhomboids|posterior deltoid\tlower trapezius|middle deltoid|infraspinatus|teres minor\t\tnone\tnovice\tlight\tdumbbell|bench\t\tband pull-apart\tchest-supported reverse fly\t\t',
    'W raise\tprone W raise|prone W|incline W raise\tdumbbell\tdynamic\tprone\t\t\t\t\tshoulder external rotation|scapular retraction\t\telbow~90\t\tmiddle trapezius|rhomboids|infraspinatus|teres minor\tlower trapezius|posterior deltoid\t\tnone\tnovice\tlight\tdumbbell|bench\t\tdouble band external rotation\tprone external rotation\t\t',
    'I-Y-T raise\tIYT|YTW|YTWL|prone IYT|Y-T-W raise|ITYW\tdumbbell\tdynamic\tprone\t\t\t\t\tscapular retraction|shoulder horizontal abduction|scapular upward rotation\t\telbow~5\tlower trapezius~direct~The arm is raised in line with its fibres, with the blade tilted back against gravity.|serratus anterior~indirect~Lying face down the blade is drawn back as it turns up; the serratus turns it but does not lead.\tupper trapezius|middle trapezius|lower trapezius|rhomboids|posterior deltoid\tserratus anterior|middle deltoid|infraspinatus|teres minor\t\tnone\tnovice\tlight\tdumbbell|bench\t\tT raise\t\t\t',
    'kneeling scapular push-up\tquadruped scapular push-up|hands-and-knees scapular push-up|knee push-up plus\tbodyweight\tdynamic\tquadruped\t\t\t\t\tscapular protraction\t\telbow~5\t\tserratus anterior\tpectoralis minor\t\tnone\tnovice\tlight\tfloor\t\twall scapular push-up\tscapular push-up\t\t',
    'wall scapular push-up\twall push-up plus|standing scapular push-up\tbodyweight\tdynamic\tstanding\t\t\t\t\tscapular protraction\t\telbow~5\t\tserratus anterior\tpectoralis minor\t\tnone\tnovice\tlight\twall\t\t\tkneeling scapular push-up|scapular push-up\t\t',
    'feet-elevated scapular push-up\televated push-up plus|decline scapular push-up\tbodyweight\tdynamic\tprone\t\t\t\t\tscapular protraction\t\telbow~5\t\tserratus anterior\tpectoralis minor\t\tnone\tintermediate\tlight\tfloor|bench\t\tscapular push-up\t\t\t',
    'forearm scapular push-up\tplank scapular push-up|elbow push-up plus|forearm push-up plus\tbodyweight\tdynamic\tprone\t\t\t\t\tscapular protraction\ttrunk flexion\telbow~90\t\tserratus anterior\trectus abdominis|pectoralis minor\t\tnone\tnovice\tlight\tfloor\t\tkneeling scapular push-up\tfeet-elevated scapular push-up\t\t',
    'serratus punch\tdumbbell serratus punch|supine protraction|lying punch|supine serratus press|dumbbell protraction\tdumbbell\tdynamic\tlying\t\t\t\t\tscapular protraction\t\tshoulder~90|elbow~5\t\tserratus anterior\tpectoralis minor\t\tnone\tnovice\tlight\tdumbbell|floor\t\twall scapular push-up\tcable serratus punch\t\t',
    'cable serratus punch\tstanding cable punch|cable protraction|band serratus punch\tcable\tdynamic\tstanding\t\t1\t\t\tscapular protraction\t\tshoulder~90|elbow~5\t\tserratus anterior\tpectoralis minor\t\tnone\tnovice\tlight\tcable\t\tserratus punch\tscapular push-up\t\t',
    'wall slide\tscapular wall slide|forearm wall slide|wall angel|floor slide\tbodyweight\tdynamic\tstanding\t\t\t\t\tscapular upward rotation\tshoulder flexion\tshoulder~60 150|elbow~100 30\t\tupper trapezius|serratus anterior\tmiddle trapezius|lower trapezius|anterior deltoid\t\tnone\tnovice\tlight\twall\t\t\tscaption raise|Y raise\t\t',
    'wall slide with band\tbanded wall slide|band wall slide\tband\tdynamic\tstanding\t\t\t\t\tscapular upward rotation\tshoulder flexion|shoulder external rotation\tshoulder~60 150|elbow~100 30\t\tupper trapezius|serratus anterior\tmiddle trapezius|lower trapezius|anterior deltoid|infraspinatus|teres minor\t\tnone\tnovice\tlight\twall|band\t\twall slide\tY raise\t\t',
    "overhead shrug\toverhead barbell shrug|snatch-grip overhead shrug|press-position shrug\tbarbell\tdynamic\tstanding\twide\t\t\t\tscapular elevation|scapular upward rotation\t\tshoulder~170|elbow~5\t\tupper trapezius|serratus anterior\tmiddle trapezius|lower trapezius|levator scapulae\t\tmoderate\tintermediate\tlight\tbarbell\t\tdumbbell shrug\twaiter's walk\t\t",
    'scapular dip\tdip shrug|straight-arm dip|support shrug|shoulder depression on bars\tbodyweight\tdynamic\tsupported\tneutral\t\t\t\tscapular depression\t\tshoulder~0|elbow~5\t\tlower trapezius\tpectoralis minor\t\tnone\tnovice\tlight\tdip bars\t\tmachine shoulder depression\tdip\t\t',
    'machine shoulder depression\tscapular pulldown|straight-arm scapular pulldown|pulldown shrug|lat pulldown shrug\tcable\tdynamic\tseated\t\t\t\t\tscapular depression\tscapular downward rotation\tshoulder~170|elbow~5\t\tlower trapezius\trhomboids|pectoralis minor\t\tnone\tnovice\tlight\tmachine pulldown\t1\t\tscapular pull-up|scapular dip\t\t',
    'straight-arm row\tscapular row|scapular retraction|seated scapular retraction|row shrug|cable scapular retraction\tcable\tdynamic\tseated\tneutral\t\t\t\tscapular retraction\t\tshoulder~80|elbow~5\t\tmiddle trapezius|rhomboids\tlower trapezius\t\tnone\tnovice\tlight\tmachine cable row\t1\t\tseated cable row|chest-supported shrug\t\t',
    'band scapular retraction\tband retraction|banded retraction|shoulder-blade squeeze|scapular squeeze\tband\tdynamic\tstanding\t\t\t\t\tscapular retraction\t\telbow~5\t\tmiddle trapezius|rhomboids\tlower trapezius\t\tnone\tnovice\tlight\tband\t\t\tstraight-arm row|band pull-apart\t\t',
    'handstand hold\twall handstand|wall handstand hold|handstand|chest-to-wall handstand\tbodyweight\tisometric\tsupported\t\t\t\t\tscapular upward rotation\tshoulder flexion|scapular elevation|elbow extension\tshoulder~175|elbow~5\t\tupper trapezius|serratus anterior\tmiddle trapezius|lower trapezius|anterior deltoid|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.51|triceps lateral head~0.01|triceps medial head~0.01\tnone\tintermediate\theavy\twall|floor\t\tpike hold\thandstand push-up\t\t',
    'pike hold\tpike handstand hold|box pike hold|feet-on-box handstand hold\tbodyweight\tisometric\tsupported\t\t\t\t\tscapular upward rotation\tshoulder flexion|scapular elevation|elbow extension\tshoulder~165|elbow~5|hip~90|knee~0|ankle~0\t\tupper trapezius|serratus anterior\tmiddle trapezius|lower trapezius|anterior deltoid|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.57|triceps lateral head~0.01|triceps medial head~0.01\tnone\tnovice\theavy\tbox|floor\t\tplank\thandstand hold\t\t',
    'overhead hold\tbarbell overhead hold|isometric overhead hold|overhead lockout hold\tbarbell\tisometric\tstanding\t\t\t\t\tscapular upward rotation\tshoulder flexion|scapular elevation|elbow extension\tshoulder~175|elbow~5\t\tupper trapezius|serratus anterior\tmiddle trapezius|lower trapezius|anterior deltoid|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.51|triceps lateral head~0.01|triceps medial head~0.01\thigh\tintermediate\theavy\tbarbell|rack\t\toverhead press\t\t\t',
    'kettlebell halo\thalo|KB halo|plate halo|head circle\tkettlebell\tdynamic\tstanding\t\t\t\t\tshoulder flexion\tshoulder external rotation|scapular upward rotation|elbow extension\tshoulder~90 165|elbow~110 110\t\tanterior deltoid\tupper trapezius|serratus anterior|clavicular chest|infraspinatus|teres minor|coracobrachialis|triceps long head\ttriceps long head~0.98\tlow\tnovice\tlight\tkettlebell\t\twall slide\t\t\t',
    'plank\tfront plank|forearm plank|elbow plank|prone plank|plank hold|low plank\tbodyweight\tisometric\tprone\t\t\t\t\ttrunk flexion\t\thip~0|knee~0|ankle~0|shoulder~90|elbow~90\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tnovice\tlight\tfloor\t\tknee plank\tlong-lever plank|weighted plank\t\t',
    'side plank\tside bridge|lateral plank|forearm side plank|side plank hold\tbodyweight\tisometric\tside-lying\t\t1\t\t\ttrunk side bend\thip abduction\thip~0|knee~0|ankle~0\t\texternal oblique|internal oblique|quadratus lumborum\tgluteus medius|gluteus minimus|rectus abdominis|erector spinae\t\tnone\tnovice\tlight\tfloor\t\tknee side plank\tside plank with leg raise|weighted side plank\t\t',
    'dead bug\talternating dead bug|dying bug\tbodyweight\tisometric\tlying\t\t\t\t\ttrunk flexion\thip flexion\thip~90|knee~90|ankle~0\t\trectus abdominis\tiliacus|psoas major|external oblique|internal oblique\tiliacus~0.16|psoas major~0.16\tnone\tnovice\tlight\tfloor\t\tdead bug heel tap\tband dead bug|hollow hold\t\t',
    'crunch\tab crunch|floor crunch|abdominal crunch|curl-up to the shoulder blades|basic crunch\tbodyweight\tdynamic\tlying\t\t\t\t\ttrunk flexion\t\t\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tnovice\tlight\tfloor\t\tcurl-up\tweighted crunch|stability-ball crunch\t\t',
    'hanging leg raise\thanging straight-leg raise|straight-leg hanging raise|HLR|leg raise on the bar\tbodyweight\tdynamic\thanging\toverhand\t\t\t\thip flexion|trunk flexion\t\thip~0 90|knee~0 0|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.29|sartorius~0.76|tensor fasciae latae~0.61|iliacus~0.55|psoas major~0.55\tnone\tadvanced\theavy\tpull-up bar\t1\thanging knee raise|lying leg raise\ttoes to bar\tThe last part, where the pelvis curls up, is what loads the abdominals; without it the hip flexors do the work.\t',
    'hanging knee raise\tHKR|hanging knee tuck|knee raise on the bar|hanging bent-leg raise\tbodyweight\tdynamic\thanging\toverhand\t\t\t\thip flexion|trunk flexion\t\thip~0 110|knee~0 110|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\tsartorius|tensor fasciae latae|external oblique|internal oblique\tsartorius~0.54|tensor fasciae latae~0.56|iliacus~0.46|psoas major~0.46\tnone\tintermediate\theavy\tpull-up bar\t1\tsupported knee raise|reverse crunch\thanging leg raise\tThe last part, where the pelvis curls up, is what loads the abdominals; without it the hip flexors do the work.\t',
    'bird dog\tquadruped arm and leg raise|alternating bird dog|all-fours arm and leg reach\tbodyweight\tisometric\tquadruped\t\t1\t\t\ttrunk extension\ttrunk rotation\thip~0|knee~0|ankle~0\t\terector spinae|multifidus\texternal oblique|internal oblique\t\tnone\tnovice\tlight\tfloor\t\tquadruped leg reach\tbird dog row|prone back extension hold\t\t',
    'ab wheel rollout\trollout|ab rollout|kneeling rollout|wheel rollout|ab wheel|kneeling ab wheel rollout\tab wheel\tdynamic\tkneeling\t\t\t\t\ttrunk flexion\tshoulder extension\thip~0 50|knee~90 90|ankle~0 0|shoulder~165 80|elbow~5 5\t\trectus abdominis\texternal oblique|internal oblique|latissimus dorsi|teres major\t\tnone\tintermediate\theavy\tab wheel\t\tstability-ball rollout|long-lever plank\tstanding ab wheel rollout\t\t',
    'anti-rotation press\tcable anti-rotation press|press-out|cable press-out|standing anti-rotation press|anti-rotation hold\tcable\tisometric\tstanding\t\t1\trotation\trotation\ttrunk rotation\t\t\t\texternal oblique|internal oblique\ttransversus abdominis\t\tnone\tnovice\tlight\tcable\t\tband anti-rotation press\tanti-rotation press overhead|half-kneeling anti-rotation press\t\t',
    'cable woodchop\twoodchop|high-to-low chop|cable chop|high-to-low woodchop|cable wood chopper|woodchopper\tcable\tdynamic\tstanding\t\t1\trotation\trotation\ttrunk rotation\ttrunk flexion\t\t\texternal oblique|internal oblique\trectus abdominis|transversus abdominis\t\tnone\tnovice\tlight\tcable\t\tband rotation\thalf-kneeling chop\t\t',
    'cable crunch\tkneeling cable crunch|rope crunch|cable ab crunch|weighted cable crunch\tcable\tdynamic\tkneeling\t\t\t\t\ttrunk flexion\t\t\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tnovice\theavy\tcable\t\tmachine crunch\tab wheel rollout\t\t',
    'sit-up\tbent-knee sit-up|floor sit-up|full sit-up\tbodyweight\tdynamic\tlying\t\t\t\t\ttrunk flexion|hip flexion\t\thip~50 105|knee~90 90|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.49|sartorius~0.3|tensor fasciae latae~0.41|iliacus~0.27|psoas major~0.27\tnone\tnovice\tlight\tfloor\t\tcrunch\tdecline sit-up|weighted sit-up\t\t',
    'Russian twist\tseated twist|seated rotation|medicine ball twist|plate twist\tplate\tdynamic\tseated\t\t1\trotation\trotation\ttrunk rotation\ttrunk flexion\t\t\texternal oblique|internal oblique\trectus abdominis|transversus abdominis\t\tnone\tnovice\tlight\tplate|floor\t\tband rotation\tcable rotation\t\t',
    'prone back extension\tfloor back extension|prone back raise|prone trunk raise|prone extension|floor back raise\tbodyweight\tdynamic\tprone\t\t\t\t\ttrunk extension\t\t\t\terector spinae|multifidus\t\t\tnone\tnovice\tlight\tfloor\t\tbird dog\tback extension\t\t',
    'knee plank\tkneeling plank|half plank|short plank\tbodyweight\tisometric\tprone\t\t\t\t\ttrunk flexion\t\thip~0|knee~90|ankle~0|shoulder~90|elbow~90\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tnovice\tlight\tfloor\t\t\tplank\t\t',
    'high plank\tstraight-arm plank|push-up position plank|push-up plank|hand plank\tbodyweight\tisometric\tprone\t\t\t\t\ttrunk flexion\tscapular protraction\thip~0|knee~0|ankle~0|shoulder~85|elbow~5\t\trectus abdominis\texternal oblique|internal oblique|serratus anterior\t\tnone\tnovice\tlight\tfloor\t\tincline plank\tplank shoulder tap\t\t',
    'incline plank\televated plank|hands-elevated plank|bench plank\tbodyweight\tisometric\tprone\t\t\t\t\ttrunk flexion\t\thip~0|knee~0|ankle~0|shoulder~90|elbow~90\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tnovice\tlight\tbench\t\tknee plank\tplank\t\t',
    'long-lever plank\thard-style plank|extended plank|body-tension plank|hard plank\tbodyweight\tisometric\tprone\t\t\t\t\ttrunk flexion\t\thip~0|knee~0|ankle~0|shoulder~115|elbow~90\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tintermediate\tlight\tfloor\t\tplank\tab wheel rollout|body saw\t\t',
    'weighted plank\tloaded plank|plate plank\tplate\tisometric\tprone\t\t\t\t\ttrunk flexion\t\thip~0|knee~0|ankle~0|shoulder~90|elbow~90\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tintermediate\theavy\tfloor|plate\t\tplank\tab wheel rollout\t\t',
    'feet-elevated plank\tdecline plank\tbodyweight\tisometric\tprone\t\t\t\t\ttrunk flexion\t\thip~0|knee~0|ankle~0|shoulder~90|elbow~90\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tintermediate\tlight\tfloor|bench\t\tplank\t\t\t',
    'plank shoulder tap\tshoulder tap|plank tap\tbodyweight\tisometric\tprone\t\t1\t\t\ttrunk flexion|trunk rotation\tscapular protraction\thip~0|knee~0|ankle~0|shoulder~85|elbow~5\t\trectus abdominis|external oblique|internal oblique\ttransversus abdominis|serratus anterior\t\tnone\tnovice\tlight\tfloor\t\thigh plank\tplank row\t\t',
    'plank with leg lift\tsingle-leg plank|three-point plank|plank leg raise\tbodyweight\tisometric\tprone\t\t1\t\t\ttrunk flexion\ttrunk rotation\thip~0|knee~0|ankle~0|shoulder~90|elbow~90\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tnovice\tlight\tfloor\t\tplank\t\t\t',
    'plank with arm reach\tplank reach|plank arm lift|two-point plank\tbodyweight\tisometric\tprone\t\t1\t\t\ttrunk flexion|trunk rotation\t\thip~0|knee~0|ankle~0|shoulder~90|elbow~90\t\trectus abdominis|external oblique|internal oblique\ttransversus abdominis\t\tnone\tintermediate\tlight\tfloor\t\tplank shoulder tap\t\t\t',
    'plank drag\tplank pull-through|dumbbell drag|kettlebell drag|plank dumbbell pull-through\tdumbbell\tisometric\tprone\t\t1\t\t\ttrunk flexion|trunk rotation\t\thip~0|knee~0|ankle~0|shoulder~85|elbow~5\t\trectus abdominis|external oblique|internal oblique\ttransversus abdominis\t\tnone\tintermediate\tlight\tdumbbell|floor\t\tplank shoulder tap\t\t\t',
    'stability-ball plank\tSwiss ball plank|exercise ball plank|ball plank\tbodyweight\tisometric\tprone\t\t\t\t\ttrunk flexion\t\thip~0|knee~0|ankle~0|shoulder~90|elbow~90\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tintermediate\tlight\texercise ball\t\tplank\tstability-ball circle plank\t\t',
    'stability-ball circle plank\tstir the pot|ball circles|plank circles on the ball\tbodyweight\tisometric\tprone\t\t\t\t\ttrunk flexion|trunk rotation\t\thip~0|knee~0|ankle~0|shoulder~90|elbow~90\t\trectus abdominis|external oblique|internal oblique\ttransversus abdominis\t\tnone\tadvanced\theavy\texercise ball\t\tstability-ball plank\t\t\t',
    'body saw\tplank saw|sliding plank saw|suspension body saw\tsliders\tdynamic\tprone\t\t\t\t\ttrunk flexion\tshoulder extension\thip~0 0|knee~0 0|ankle~0 0|shoulder~125 80|elbow~90 90\t\trectus abdominis\texternal oblique|internal oblique|latissimus dorsi|teres major\t\tnone\tadvanced\theavy\tsliders|floor\t\tlong-lever plank\tab wheel rollout\t\t',
    'suspension plank\tfeet-suspended plank|sling plank\tsuspension\tisometric\tprone\t\t\t\t\ttrunk flexion\t\thip~0|knee~0|ankle~0|shoulder~90|elbow~90\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tintermediate\tlight\tsuspension\t\tplank\tsuspension fallout\t\t',
    'plank up-down\tup-down plank|plank to push-up|walking plank|commando plank\tbodyweight\tdynamic\tprone\t\t1\t\t\ttrunk flexion\telbow extension|trunk rotation\thip~0 0|knee~0 0|ankle~0 0|elbow~90 5\t\trectus abdominis\texternal oblique|internal oblique|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.39|triceps medial head~0.39\tnone\tnovice\tlight\tfloor\t\tplank\t\t\t',
    'plank with hip dips\tplank hip dip|plank twist|rotating plank\tbodyweight\tdynamic\tprone\t\t1\trotation\trotation\ttrunk rotation|trunk flexion\t\thip~0|knee~0|ankle~0|shoulder~90|elbow~90\t\trectus abdominis|external oblique|internal oblique\ttransversus abdominis\t\tnone\tnovice\tlight\tfloor\t\tplank\t\t\t',
    'bear hold\tbear plank|hovering quadruped hold|beast hold|quadruped hover\tbodyweight\tisometric\tquadruped\t\t\t\t\ttrunk flexion\tscapular protraction\thip~90|knee~90|ankle~15|shoulder~90|elbow~5\t\trectus abdominis\texternal oblique|internal oblique|serratus anterior\t\tnone\tnovice\tlight\tfloor\t\tbird dog\tbear crawl\t\t',
    'reverse plank\tback plank|supine plank|reverse bridge hold|Chinese plank\tbodyweight\tisometric\tsupported\t\t\t\t\ttrunk extension\thip extension|shoulder extension\thip~0|knee~0|ankle~0\t\terector spinae|multifidus\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus|latissimus dorsi|teres major\tbiceps femoris long head~0.53|semitendinosus~0.53|semimembranosus~0.53|gluteus maximus~0.21|adductor magnus~0.02\tnone\tnovice\tlight\tfloor\t\t\tback extension hold\t\t',
    'knee side plank\tkneeling side plank|short side plank|bent-knee side plank|half side plank\tbodyweight\tisometric\tside-lying\t\t1\t\t\ttrunk side bend\thip abduction\thip~0|knee~90|ankle~0\t\texternal oblique|internal oblique|quadratus lumborum\tgluteus medius|gluteus minimus|rectus abdominis|erector spinae\t\tnone\tnovice\tlight\tfloor\t\t\tside plank\t\t',
    'straight-arm side plank\thigh side plank|hand side plank\tbodyweight\tisometric\tside-lying\t\t1\t\t\ttrunk side bend\thip abduction\thip~0|knee~0|ankle~0\t\texternal oblique|internal oblique|quadratus lumborum\tgluteus medius|gluteus minimus|rectus abdominis|erector spinae\t\tnone\tintermediate\tlight\tfloor\t\tside plank\t\t\t',
    'side plank with leg raise\tside plank leg lift|star plank\tbodyweight\tisometric\tside-lying\t\t1\t\t\ttrunk side bend|hip abduction\t\thip~0|knee~0|ankle~0\t\tgluteus medius|gluteus minimus|external oblique|internal oblique|quadratus lumborum\tgluteus maximus|tensor fasciae latae|rectus abdominis|erector spinae\tgluteus maximus~0.21|tensor fasciae latae~0.88\tnone\tintermediate\tlight\tfloor\t\tside plank\t\t\t',
    'weighted side plank\tloaded side plank|dumbbell side plank\tdumbbell\tisometric\tside-lying\t\t1\t\t\ttrunk side bend\thip abduction\thip~0|knee~0|ankle~0\t\texternal oblique|internal oblique|quadratus lumborum\tgluteus medius|gluteus minimus|rectus abdominis|erector spinae\t\tnone\tintermediate\theavy\tdumbbell|floor\t\tside plank\tsuitcase carry\t\t',
    'feet-elevated side plank\tdecline side plank\tbodyweight\tisometric\tside-lying\t\t1\t\t\ttrunk side bend\thip abduction\thip~0|knee~0|ankle~0\t\texternal oblique|internal oblique|quadratus lumborum\tgluteus medius|gluteus minimus|rectus abdominis|erector spinae\t\tnone\tintermediate\tlight\tfloor|bench\t\tside plank\t\t\t',
    'side plank dip\tside plank hip lift|side plank raise|side bridge raise\tbodyweight\tdynamic\tside-lying\t\t1\t\t\ttrunk side bend\thip abduction\thip~0|knee~0|ankle~0\t\texternal oblique|internal oblique|quadratus lumborum\tgluteus medius|gluteus minimus|rectus abdominis|erector spinae\t\tnone\tnovice\tlight\tfloor\t\tside plank\t\t\t',
    'side plank with rotation\tside plank thread-through|side plank reach-under|thread the needle plank\tbodyweight\tdynamic\tside-lying\t\t1\t\t\ttrunk side bend|trunk rotation\thip abduction\thip~0|knee~0|ankle~0\t\texternal oblique|internal oblique|quadratus lumborum\tgluteus medius|gluteus minimus|rectus abdominis|transversus abdominis|erector spinae\t\tnone\tintermediate\tlight\tfloor\t\tside plank\t\t\t',
    'side plank row\tside plank cable row|side plank band row\tcable\tisometric\tside-lying\t\t1\t\t\ttrunk side bend\thip abduction|shoulder extension|scapular retraction\thip~0|knee~0|ankle~0\t\texternal oblique|internal oblique|quadratus lumborum\tgluteus medius|gluteus minimus|rectus abdominis|erector spinae|latissimus dorsi|teres major|middle trapezius|rhomboids\t\tnone\tintermediate\tlight\tcable\t\tside plank|seated cable row\t\t\t',
    'side lean hold\tback-extension-bench side hold|horizontal side hold|side hold on the bench\tbodyweight\tisometric\tside-lying\t\t1\t\t\ttrunk side bend\thip abduction\thip~0|knee~0|ankle~0\t\texternal oblique|internal oblique|quadratus lumborum\tgluteus medius|gluteus minimus|rectus abdominis|erector spinae\t\tnone\tintermediate\theavy\t45-degree bench\t\tside plank\tside bend on the back extension bench\t\t',
    'dumbbell side bend\tside bend|DB side bend|standing side bend|weighted side bend\tdumbbell\tdynamic\tstanding\t\t1\t\t\ttrunk side bend\t\t\t\texternal oblique|internal oblique|quadratus lumborum\trectus abdominis|erector spinae\t\tlow\tnovice\tlight\tdumbbell\t\tside plank\tside bend on the back extension bench\t\t',
    'cable side bend\tlow cable side bend\tcable\tdynamic\tstanding\t\t1\t\t\ttrunk side bend\t\t\t\texternal oblique|internal oblique|quadratus lumborum\trectus abdominis|erector spinae\t\tlow\tnovice\tlight\tcable\t\tside plank\t\t\t',
    'side bend on the back extension bench\tlateral back extension|side raise on the bench|oblique raise|45-degree side bend\tbodyweight\tdynamic\tside-lying\t\t1\t\t\ttrunk side bend\t\t\t\texternal oblique|internal oblique|quadratus lumborum\trectus abdominis|erector spinae\t\tnone\tintermediate\theavy\t45-degree bench\t\tside lean hold\t\t\t',
    'side crunch\toblique crunch|side-lying crunch|lying side crunch\tbodyweight\tdynamic\tside-lying\t\t1\t\t\ttrunk side bend\t\t\t\texternal oblique|internal oblique|quadratus lumborum\trectus abdominis|erector spinae\t\tnone\tnovice\tlight\tfloor\t\tcrunch\t\t\t',
    'kettlebell windmill\twindmill|KB windmill|overhead windmill\tkettlebell\tdynamic\tstanding\t\t1\t\t\ttrunk side bend|trunk rotation\thip extension|scapular upward rotation\thip~80 0|knee~5 5|ankle~0 0\t\texternal oblique|internal oblique|quadratus lumborum\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus|rectus abdominis|transversus abdominis|erector spinae|upper trapezius|serratus anterior\tbiceps femoris long head~0.7|semitendinosus~0.7|semimembranosus~0.7|gluteus maximus~0.6|adductor magnus~0.3\tlow\tadvanced\tlight\tkettlebell\t\tdumbbell side bend|side plank with rotation\tTurkish get-up\t\t',
    'overhead side bend\twaiter side bend|single-arm overhead side bend|band side bend\tdumbbell\tdynamic\tstanding\t\t1\t\t\ttrunk side bend\tscapular upward rotation\t\t\texternal oblique|internal oblique|quadratus lumborum\trectus abdominis|erector spinae|upper trapezius|serratus anterior\t\tlow\tintermediate\tlight\tdumbbell\t\tdumbbell side bend\t\t\t',
    'curl-up\tone-knee curl-up|partial curl-up|curl-up with hands under the back\tbodyweight\tisometric\tlying\t\t\t\t\ttrunk flexion\t\t\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tnovice\tlight\tfloor\t\t\tcrunch|dead bug\t\t',
    'weighted crunch\tplate crunch|dumbbell crunch|loaded crunch\tplate\tdynamic\tlying\t\t\t\t\ttrunk flexion\t\t\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tnovice\theavy\tplate|floor\t\tcrunch\tcable crunch\t\t',
    'machine crunch\tab machine|ab crunch machine|abdominal machine|seated crunch machine|trunk flexion machine\tmachine\tdynamic\tseated\t\t\t\t\ttrunk flexion\t\t\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tnovice\theavy\tmachine crunch\t\t\tcable crunch\t\t',
    'standing cable crunch\tstanding rope crunch\tcable\tdynamic\tstanding\t\t\t\t\ttrunk flexion\t\t\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tnovice\tlight\tcable\t\tcable crunch\t\t\t',
    'stability-ball crunch\tSwiss ball crunch|exercise ball crunch|ball crunch\tbodyweight\tdynamic\tlying\t\t\t\t\ttrunk flexion\t\t\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tnovice\tlight\texercise ball\t\tcrunch\tweighted stability-ball crunch\t\t',
    'weighted stability-ball crunch\tweighted ball crunch|weighted Swiss ball crunch\tplate\tdynamic\tlying\t\t\t\t\ttrunk flexion\t\t\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tintermediate\theavy\texercise ball|plate\t\tstability-ball crunch\t\t\t',
    'long-arm crunch\tstraight-arm crunch|long-lever crunch|arms-overhead crunch\tbodyweight\tdynamic\tlying\t\t\t\t\ttrunk flexion\t\t\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tnovice\tlight\tfloor\t\tcrunch\t\t\t',
    'bicycle crunch\tbicycle|elbow to knee crunch|alternating elbow-to-knee crunch|cross-body crunch|twisting crunch\tbodyweight\tdynamic\tlying\t\t1\t\t\ttrunk flexion|trunk rotation\thip flexion\thip~20 100|knee~10 110|ankle~0 0\t\trectus abdominis|external oblique|internal oblique\tiliacus|psoas major|transversus abdominis\tiliacus~0.42|psoas major~0.42\tnone\tnovice\tlight\tfloor\t\tcrunch\t\t\t',
    'heel touch crunch\theel touch|alternating heel touch|side-to-side crunch|penguin crunch\tbodyweight\tdynamic\tlying\t\t1\t\t\ttrunk flexion|trunk side bend\t\t\t\trectus abdominis|external oblique|internal oblique|quadratus lumborum\terector spinae\t\tnone\tnovice\tlight\tfloor\t\tcurl-up\t\t\t',
    'reverse crunch\treverse curl-up|pelvic curl|lying hip raise|floor reverse crunch\tbodyweight\tdynamic\tlying\t\t\t\t\ttrunk flexion\thip flexion\thip~90 105|knee~90 90|ankle~0 0\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tnovice\tlight\tfloor\t\tdead bug\tincline reverse crunch|hanging knee raise\t\t',
    'incline reverse crunch\tdecline-bench reverse crunch|slant-board reverse crunch\tbodyweight\tdynamic\tincline\t\t\t\t\ttrunk flexion\thip flexion\thip~90 105|knee~90 90|ankle~0 0\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tintermediate\theavy\tbench\t\treverse crunch\thanging leg raise\t\t',
    'cable reverse crunch\tlow cable reverse crunch|weighted reverse crunch\tcable\tdynamic\tlying\t\t\t\t\ttrunk flexion\thip flexion\thip~90 105|knee~90 90|ankle~0 0\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tnovice\theavy\tcable|floor\t\treverse crunch\t\t\t',
    'decline sit-up\tdecline bench sit-up|slant-board sit-up|decline crunch\tbodyweight\tdynamic\tincline\t\t\t\t\ttrunk flexion|hip flexion\t\thip~50 105|knee~90 90|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.49|sartorius~0.3|tensor fasciae latae~0.41|iliacus~0.27|psoas major~0.27\tnone\tintermediate\theavy\tbench\t\tsit-up\tweighted decline sit-up\t\t',
    'weighted sit-up\tloaded sit-up|plate sit-up|sit-up with weight\tplate\tdynamic\tlying\t\t\t\t\ttrunk flexion|hip flexion\t\thip~50 105|knee~90 90|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.49|sartorius~0.3|tensor fasciae latae~0.41|iliacus~0.27|psoas major~0.27\tnone\tintermediate\theavy\tplate|floor\t\tsit-up\tweighted decline sit-up\t\t',
    'weighted decline sit-up\tloaded decline sit-up|decline sit-up with plate\tplate\tdynamic\tincline\t\t\t\t\ttrunk flexion|hip flexion\t\thip~50 105|knee~90 90|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.49|sartorius~0.3|tensor fasciae latae~0.41|iliacus~0.27|psoas major~0.27\tnone\tadvanced\theavy\tbench|plate\t\tdecline sit-up\t\t\t',
    'sit-up with rotation\ttwisting sit-up|sit-up with twist|oblique sit-up\tbodyweight\tdynamic\tlying\t\t1\t\t\ttrunk flexion|hip flexion|trunk rotation\t\thip~50 105|knee~90 90|ankle~0 0\t\tiliacus|psoas major|rectus abdominis|external oblique|internal oblique\trectus femoris|sartorius|tensor fasciae latae|transversus abdominis\trectus femoris~0.49|sartorius~0.3|tensor fasciae latae~0.41|iliacus~0.27|psoas major~0.27\tnone\tnovice\tlight\tfloor\t\tsit-up\t\t\t',
    'glute-ham bench sit-up\thyperextension bench sit-up|horizontal bench sit-up|GHD sit-up\tbodyweight\tdynamic\tsupported\t\t\t\t\ttrunk flexion|hip flexion\t\thip~-20 85|knee~25 10|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.42|sartorius~0.78|tensor fasciae latae~0.7|iliacus~0.64|psoas major~0.64\tnone\tadvanced\theavy\tglute-ham bench\t\tsit-up\t\tThe range behind the hips is long and the first days make very sore: begin with few.\t',
    'butterfly sit-up\tsoles-together sit-up\tbodyweight\tdynamic\tlying\t\t\t\t\ttrunk flexion|hip flexion\t\thip~45 95|knee~100 100|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.56|sartorius~0.3|tensor fasciae latae~0.48|iliacus~0.34|psoas major~0.34\tnone\tnovice\tlight\tfloor\t\tcrunch\t\t\t',
    'V-up\tjackknife|V sit-up|jackknife sit-up|pike-up on the floor\tbodyweight\tdynamic\tlying\t\t\t\t\ttrunk flexion|hip flexion\t\thip~0 95|knee~0 0|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.27|sartorius~0.75|tensor fasciae latae~0.59|iliacus~0.52|psoas major~0.52\tnone\tintermediate\theavy\tfloor\t\ttuck-up\thanging leg raise\t\t',
    'tuck-up\tknee tuck sit-up|tuck crunch|seated knee tuck|in-and-out\tbodyweight\tdynamic\tlying\t\t\t\t\ttrunk flexion|hip flexion\t\thip~10 110|knee~10 110|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\tsartorius|tensor fasciae latae|external oblique|internal oblique\tsartorius~0.5|tensor fasciae latae~0.53|iliacus~0.42|psoas major~0.42\tnone\tnovice\tlight\tfloor\t\tcrunch\tV-up\t\t',
    'Turkish sit-up\tget-up sit-up|kettlebell sit-up|straight-arm sit-up\tkettlebell\tdynamic\tlying\t\t1\t\t\ttrunk flexion|hip flexion\tscapular upward rotation\thip~0 85|knee~10 10|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique|upper trapezius|serratus anterior\trectus femoris~0.34|sartorius~0.76|tensor fasciae latae~0.64|iliacus~0.57|psoas major~0.57\tnone\tintermediate\tlight\tkettlebell|floor\t\tsit-up\tTurkish get-up\t\t',
    'hollow hold\thollow body hold|hollow body|dish hold|hollow position\tbodyweight\tisometric\tlying\t\t\t\t\ttrunk flexion\thip flexion\thip~25|knee~0|ankle~0\t\trectus abdominis\tiliacus|psoas major|external oblique|internal oblique\tiliacus~0.72|psoas major~0.72\tnone\tintermediate\tlight\tfloor\t\tdead bug\thollow rock|V-up\t\t',
    'hollow rock\thollow body rock\tbodyweight\tisometric\tlying\t\t\t\t\ttrunk flexion\thip flexion\thip~25|knee~0|ankle~0\t\trectus abdominis\tiliacus|psoas major|external oblique|internal oblique\tiliacus~0.72|psoas major~0.72\tnone\tintermediate\tlight\tfloor\t\thollow hold\t\t\t',
    'dead bug heel tap\tlying heel tap|supine toe tap|toe tap|bent-knee dead bug|supine march\tbodyweight\tisometric\tlying\t\t\t\t\ttrunk flexion\thip flexion\thip~90|knee~90|ankle~0\t\trectus abdominis\tiliacus|psoas major|external oblique|internal oblique\tiliacus~0.16|psoas major~0.16\tnone\tnovice\tlight\tfloor\t\t\tdead bug\t\t',
    'band dead bug\tbanded dead bug|dead bug with pullover|dead bug with band\tband\tisometric\tlying\t\t\t\t\ttrunk flexion\thip flexion|shoulder extension\thip~90|knee~90|ankle~0\t\trectus abdominis\tiliacus|psoas major|external oblique|internal oblique|latissimus dorsi|teres major\tiliacus~0.16|psoas major~0.16\tnone\tintermediate\tlight\tband|floor\t\tdead bug\t\t\t',
    'weighted dead bug\tloaded dead bug|dumbbell dead bug|kettlebell dead bug\tdumbbell\tisometric\tlying\t\t\t\t\ttrunk flexion\thip flexion\thip~90|knee~90|ankle~0\t\trectus abdominis\tiliacus|psoas major|external oblique|internal oblique\tiliacus~0.16|psoas major~0.16\tnone\tintermediate\tlight\tdumbbell|floor\t\tdead bug\t\t\t',
    'stability-ball dead bug\tball dead bug|Swiss ball dead bug|dead bug ball squeeze\tbodyweight\tisometric\tlying\t\t\t\t\ttrunk flexion\thip flexion\thip~90|knee~90|ankle~0\t\trectus abdominis\tiliacus|psoas major|external oblique|internal oblique\tiliacus~0.16|psoas major~0.16\tnone\tnovice\tlight\texercise ball|floor\t\tdead bug heel tap\tdead bug\t\t',
    '90-90 breathing\tninety-ninety breathing|supine breathing brace|abdominal brace|abdominal bracing\tbodyweight\tisometric\tlying\t\t\t\t\ttrunk flexion\t\thip~90|knee~90|ankle~0\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tnovice\tlight\tfloor\t\t\tdead bug heel tap\t\t',
    'L-sit\tL-sit hold|L-sit on bars|parallel bar L-sit\tbodyweight\tisometric\tsupported\t\t\t\t\thip flexion|trunk flexion\tscapular depression|elbow extension\thip~90|knee~0|ankle~0|shoulder~0|elbow~0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique|lower trapezius|triceps long head|triceps lateral head|triceps medial head\trectus femoris~0.07|sartorius~0.5|tensor fasciae latae~0.22|iliacus~0.16|psoas major~0.16|triceps long head~0.18|triceps lateral head~-0.04|triceps medial head~-0.04\tnone\tadvanced\theavy\tdip bars\t\ttuck hold on bars\tL-sit pull-up\t\t',
    'tuck hold on bars\ttuck hold|tucked L-sit|bent-knee L-sit\tbodyweight\tisometric\tsupported\t\t\t\t\thip flexion|trunk flexion\tscapular depression|elbow extension\thip~100|knee~110|ankle~0|shoulder~0|elbow~0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique|lower trapezius|triceps long head|triceps lateral head|triceps medial head\trectus femoris~0.45|sartorius~0.09|tensor fasciae latae~0.18|iliacus~0.07|psoas major~0.07|triceps long head~0.18|triceps lateral head~-0.04|triceps medial head~-0.04\tnone\tintermediate\tlight\tdip bars\t\tdip support hold\tL-sit\t\t',
    'V-sit hold\tboat hold|boat pose|seated V hold\tbodyweight\tisometric\tseated\t\t\t\t\ttrunk flexion|hip flexion\t\thip~85|knee~10|ankle~0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.13|sartorius~0.52|tensor fasciae latae~0.29|iliacus~0.21|psoas major~0.21\tnone\tnovice\tlight\tfloor\t\thollow hold\tL-sit\t\t',
    'lying leg raise\tleg raise|floor leg raise|supine leg raise|lying double leg raise\tbodyweight\tdynamic\tlying\t\t\t\t\thip flexion|trunk flexion\t\thip~0 90|knee~0 0|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.29|sartorius~0.76|tensor fasciae latae~0.61|iliacus~0.55|psoas major~0.55\tnone\tnovice\tlight\tfloor\t\treverse crunch\tlying leg raise with hip lift|hanging leg raise\t\t',
    'lying leg raise with hip lift\tleg raise with hip lift|leg raise to candle|lying leg and hip raise\tbodyweight\tdynamic\tlying\t\t\t\t\thip flexion|trunk flexion\t\thip~0 100|knee~0 0|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.26|sartorius~0.73|tensor fasciae latae~0.56|iliacus~0.5|psoas major~0.5\tnone\tintermediate\tlight\tfloor\t\tlying leg raise\tbody-length leg lowering\t\t',
    'bent-knee lying leg raise\tlying knee raise|lying knee tuck|floor knee raise\tbodyweight\tdynamic\tlying\t\t\t\t\thip flexion|trunk flexion\t\thip~10 110|knee~20 110|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.48|sartorius~0.49|tensor fasciae latae~0.53|iliacus~0.42|psoas major~0.42\tnone\tnovice\tlight\tfloor\t\tdead bug heel tap\tlying leg raise\t\t',
    'leg lowering\tdouble leg lowering|leg lower|eccentric leg raise|straight-leg lowering\tbodyweight\tdynamic\tlying\t\t\t\t\thip flexion|trunk flexion\t\thip~0 90|knee~0 0|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.29|sartorius~0.76|tensor fasciae latae~0.61|iliacus~0.55|psoas major~0.55\tnone\tnovice\tlight\tfloor\t\tdead bug\tlying leg raise\t\t',
    'flutter kick\tscissor kick|leg scissors\tbodyweight\tdynamic\tlying\t\t1\t\t\thip flexion\ttrunk flexion\thip~5 35|knee~0 0|ankle~0 0\t\tiliacus|psoas major\trectus femoris|sartorius|tensor fasciae latae|rectus abdominis\trectus femoris~0.41|sartorius~0.89|tensor fasciae latae~0.79|iliacus~0.75|psoas major~0.75\tnone\tnovice\tlight\tfloor\t\tdead bug\t\t\t',
    'body-length leg lowering\tdragon flag|dragon flag lowering|whole-body leg lowering\tbodyweight\tdynamic\tlying\t\t\t\t\ttrunk flexion\tshoulder extension\thip~0|knee~0|ankle~0\t\trectus abdominis\texternal oblique|internal oblique|latissimus dorsi|teres major\t\tnone\tadvanced\theavy\tbench\t\tlying leg raise with hip lift\tfront lever hold\t\t',
    'incline leg raise\tincline bench leg raise|slant-board leg raise\tbodyweight\tdynamic\tincline\t\t\t\t\thip flexion|trunk flexion\t\thip~0 90|knee~0 0|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.29|sartorius~0.76|tensor fasciae latae~0.61|iliacus~0.55|psoas major~0.55\tnone\tintermediate\theavy\tbench\t\tlying leg raise\thanging leg raise\t\t',
    "supported knee raise\tcaptain's chair knee raise|vertical knee raise|chair knee raise|dip-station knee raise|captain's chair\tbodyweight\tdynamic\tsupported\t\t\t\t\thip flexion|trunk flexion\t\thip~0 110|knee~0 110|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\tsartorius|tensor fasciae latae|external oblique|internal oblique\tsartorius~0.54|tensor fasciae latae~0.56|iliacus~0.46|psoas major~0.46\tnone\tnovice\theavy\tknee raise stand\t\treverse crunch\tsupported leg raise|hanging knee raise\t\t",
    "supported leg raise\tcaptain's chair leg raise|vertical leg raise|dip-station leg raise\tbodyweight\tdynamic\tsupported\t\t\t\t\thip flexion|trunk flexion\t\thip~0 90|knee~0 0|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.29|sartorius~0.76|tensor fasciae latae~0.61|iliacus~0.55|psoas major~0.55\tnone\tintermediate\theavy\tknee raise stand\t\tsupported knee raise\thanging leg raise\t\t",
    'toes to bar\tT2B|TTB|strict toes to bar\tbodyweight\tdynamic\thanging\toverhand\t\t\t\thip flexion|trunk flexion\t\thip~-10 115|knee~0 0|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.25|sartorius~0.71|tensor fasciae latae~0.53|iliacus~0.48|psoas major~0.48\tnone\tadvanced\theavy\tpull-up bar\t1\thanging leg raise\t\tThe last part, where the pelvis curls up, is what loads the abdominals; without it the hip flexors do the work.\t',
    'hanging oblique raise\thanging oblique knee raise|hanging twisting knee raise|side-to-side knee raise|hanging side knee raise\tbodyweight\tdynamic\thanging\toverhand\t1\t\t\thip flexion|trunk flexion|trunk rotation\t\thip~0 105|knee~0 110|ankle~0 0\t\tiliacus|psoas major|rectus abdominis|external oblique|internal oblique\tsartorius|tensor fasciae latae|transversus abdominis\tsartorius~0.56|tensor fasciae latae~0.58|iliacus~0.48|psoas major~0.48\tnone\tintermediate\theavy\tpull-up bar\t1\thanging knee raise\thanging windshield wiper\tThe last part, where the pelvis curls up, is what loads the abdominals; without it the hip flexors do the work.\t',
    'hanging windshield wiper\twindshield wipers|hanging wiper|windscreen wiper\tbodyweight\tdynamic\thanging\toverhand\t1\trotation\trotation\ttrunk rotation|trunk flexion\thip flexion|shoulder extension\thip~90|knee~0|ankle~0\t\trectus abdominis|external oblique|internal oblique\ttransversus abdominis|latissimus dorsi|teres major\t\tnone\tadvanced\theavy\tpull-up bar\t1\tlying windshield wiper|hanging leg raise\t\t\t',
    'weighted hanging knee raise\thanging knee raise with weight|loaded hanging knee raise|hanging knee raise with dumbbell\tdumbbell\tdynamic\thanging\toverhand\t\t\t\thip flexion|trunk flexion\t\thip~0 110|knee~0 110|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\tsartorius|tensor fasciae latae|external oblique|internal oblique\tsartorius~0.54|tensor fasciae latae~0.56|iliacus~0.46|psoas major~0.46\tnone\tadvanced\theavy\tpull-up bar|dumbbell\t1\thanging knee raise\t\tThe last part, where the pelvis curls up, is what loads the abdominals; without it the hip flexors do the work.\t',
    'hanging tuck hold\thanging knee hold|hanging L-hold|isometric hanging knee raise\tbodyweight\tisometric\thanging\toverhand\t\t\t\thip flexion|trunk flexion\t\thip~95|knee~100|ankle~0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.44|sartorius~0.15|tensor fasciae latae~0.24|iliacus~0.12|psoas major~0.12\tnone\tintermediate\theavy\tpull-up bar\t1\tdead hang\thanging knee raise\t\t',
    'standing ab wheel rollout\tstanding rollout|full ab wheel rollout|standing wheel rollout\tab wheel\tdynamic\tstanding\t\t\t\t\ttrunk flexion\tshoulder extension\thip~0 90|knee~5 5|ankle~0 0|shoulder~170 90|elbow~5 5\t\trectus abdominis\texternal oblique|internal oblique|latissimus dorsi|teres major\t\tnone\tadvanced\theavy\tab wheel\t\tab wheel rollout\t\t\t',
    'ab wheel rollout to a wall\tshort-range ab wheel rollout|wall-stopped rollout|partial rollout\tab wheel\tdynamic\tkneeling\t\t\t\t\ttrunk flexion\tshoulder extension\thip~15 60|knee~90 90|ankle~0 0|shoulder~135 80|elbow~5 5\t\trectus abdominis\texternal oblique|internal oblique|latissimus dorsi|teres major\t\tnone\tnovice\theavy\tab wheel|wall\t\tplank\tab wheel rollout\t\t',
    'barbell rollout\tkneeling barbell rollout|barbell ab rollout\tbarbell\tdynamic\tkneeling\t\t\t\t\ttrunk flexion\tshoulder extension\thip~0 50|knee~90 90|ankle~0 0|shoulder~165 80|elbow~5 5\t\trectus abdominis\texternal oblique|internal oblique|latissimus dorsi|teres major\t\tnone\tintermediate\theavy\tbarbell\t\tstability-ball rollout\tstanding ab wheel rollout\t\t',
    'stability-ball rollout\tball rollout|Swiss ball rollout|exercise ball rollout\tbodyweight\tdynamic\tkneeling\t\t\t\t\ttrunk flexion\tshoulder extension\thip~0 45|knee~90 90|ankle~0 0|shoulder~140 70|elbow~60 60\t\trectus abdominis\texternal oblique|internal oblique|latissimus dorsi|teres major\t\tnone\tnovice\tlight\texercise ball\t\tplank\tab wheel rollout\t\t',
    'slider rollout\tsliding rollout|slider body reach|kneeling slider rollout\tsliders\tdynamic\tkneeling\t\t\t\t\ttrunk flexion\tshoulder extension\thip~0 50|knee~90 90|ankle~0 0|shoulder~165 80|elbow~5 5\t\trectus abdominis\texternal oblique|internal oblique|latissimus dorsi|teres major\t\tnone\tintermediate\theavy\tsliders|floor\t\tstability-ball rollout\t\t\t',
    'suspension fallout\tsuspension rollout|fallout|standing fallout|ring rollout|ring fallout\tsuspension\tdynamic\tstanding\t\t\t\t\ttrunk flexion\tshoulder extension\thip~0 0|knee~0 0|ankle~0 0|shoulder~160 80|elbow~5 5\t\trectus abdominis\texternal oblique|internal oblique|latissimus dorsi|teres major\t\tnone\tintermediate\theavy\tsuspension\t\tlong-lever plank\tab wheel rollout\t\t',
    'stability-ball knee tuck\tball knee tuck|Swiss ball jackknife|stability-ball jackknife|ball tuck\tbodyweight\tdynamic\tprone\t\t\t\t\ttrunk flexion|hip flexion\t\thip~0 100|knee~0 100|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\tsartorius|tensor fasciae latae|external oblique|internal oblique\tsartorius~0.59|tensor fasciae latae~0.6|iliacus~0.5|psoas major~0.5\tnone\tintermediate\tlight\texercise ball\t\tstability-ball plank\tstability-ball pike\t\t',
    'stability-ball pike\tball pike|Swiss ball pike\tbodyweight\tdynamic\tprone\t\t\t\t\ttrunk flexion|hip flexion\t\thip~0 90|knee~0 0|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.29|sartorius~0.76|tensor fasciae latae~0.61|iliacus~0.55|psoas major~0.55\tnone\tadvanced\theavy\texercise ball\t\tstability-ball knee tuck\t\t\t',
    'suspension knee tuck\tsuspended knee tuck|suspension tuck|sling knee tuck\tsuspension\tdynamic\tprone\t\t\t\t\ttrunk flexion|hip flexion\t\thip~0 100|knee~0 100|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\tsartorius|tensor fasciae latae|external oblique|internal oblique\tsartorius~0.59|tensor fasciae latae~0.6|iliacus~0.5|psoas major~0.5\tnone\tintermediate\tlight\tsuspension\t\tsuspension plank\tsuspension pike\t\t',
    'suspension pike\tsuspended pike|sling pike\tsuspension\tdynamic\tprone\t\t\t\t\ttrunk flexion|hip flexion\t\thip~0 90|knee~0 0|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.29|sartorius~0.76|tensor fasciae latae~0.61|iliacus~0.55|psoas major~0.55\tnone\tadvanced\theavy\tsuspension\t\tsuspension knee tuck\t\t\t',
    'slider pike\tsliding pike|slider pike-up\tsliders\tdynamic\tprone\t\t\t\t\ttrunk flexion|hip flexion\t\thip~0 90|knee~0 0|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.29|sartorius~0.76|tensor fasciae latae~0.61|iliacus~0.55|psoas major~0.55\tnone\tintermediate\tlight\tsliders|floor\t\tslider knee tuck\t\t\t',
    'slider knee tuck\tsliding knee tuck|slider mountain climber\tsliders\tdynamic\tprone\t\t\t\t\ttrunk flexion|hip flexion\t\thip~0 100|knee~0 100|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\tsartorius|tensor fasciae latae|external oblique|internal oblique\tsartorius~0.59|tensor fasciae latae~0.6|iliacus~0.5|psoas major~0.5\tnone\tintermediate\tlight\tsliders|floor\t\thigh plank\tslider pike\t\t',
    'mountain climber\trunning plank|plank knee drive\tbodyweight\tdynamic\tprone\t\t1\t\t\thip flexion\ttrunk flexion\thip~10 100|knee~10 100|ankle~0 0\t\tiliacus|psoas major\tsartorius|tensor fasciae latae|rectus abdominis\tsartorius~0.55|tensor fasciae latae~0.58|iliacus~0.46|psoas major~0.46\tnone\tnovice\tlight\tfloor\t\thigh plank\tslider knee tuck\t\t',
    'cross-body mountain climber\ttwisting mountain climber\tbodyweight\tdynamic\tprone\t\t1\t\t\thip flexion|trunk rotation\ttrunk flexion\thip~10 100|knee~10 100|ankle~0 0\t\tiliacus|psoas major|external oblique|internal oblique\tsartorius|tensor fasciae latae|rectus abdominis|transversus abdominis\tsartorius~0.55|tensor fasciae latae~0.58|iliacus~0.46|psoas major~0.46\tnone\tnovice\tlight\tfloor\t\tmountain climber\t\t\t',
    'low-to-high cable chop\treverse woodchop|low-to-high woodchop|cable lift|low-to-high chop|reverse chop\tcable\tdynamic\tstanding\t\t1\trotation\trotation\ttrunk rotation\ttrunk extension|shoulder flexion\t\t\texternal oblique|internal oblique\ttransversus abdominis|erector spinae|multifidus|anterior deltoid\t\tnone\tnovice\tlight\tcable\t\tband rotation\thalf-kneeling lift\t\t',
    'cable rotation\tstanding cable rotation|horizontal woodchop|cable twist|horizontal cable chop|trunk rotation|standing trunk rotation\tcable\tdynamic\tstanding\t\t1\trotation\trotation\ttrunk rotation\t\t\t\texternal oblique|internal oblique\ttransversus abdominis\t\tnone\tnovice\tlight\tcable\t\tband rotation\t\t\t',
    'half-kneeling chop\thalf-kneeling cable chop|kneeling chop|tall-kneeling chop|half-kneeling woodchop\tcable\tdynamic\tkneeling\t\t1\trotation\trotation\ttrunk rotation\ttrunk flexion\t\t\texternal oblique|internal oblique\trectus abdominis|transversus abdominis\t\tnone\tnovice\tlight\tcable\t\tcable woodchop\t\t\t',
    'half-kneeling lift\thalf-kneeling cable lift|kneeling lift|tall-kneeling lift\tcable\tdynamic\tkneeling\t\t1\trotation\trotation\ttrunk rotation\ttrunk extension|shoulder flexion\t\t\texternal oblique|internal oblique\ttransversus abdominis|erector spinae|multifidus|anterior deltoid\t\tnone\tnovice\tlight\tcable\t\tlow-to-high cable chop\t\t\t',
    'band rotation\tband woodchop|banded rotation|band twist|band chop|resistance band woodchop\tband\tdynamic\tstanding\t\t1\trotation\trotation\ttrunk rotation\t\t\t\texternal oblique|internal oblique\ttransversus abdominis\t\tnone\tnovice\tlight\tband\t\t\tcable rotation\t\t',
    'landmine rotation\tlandmine twist|landmine 180|angled bar rotation|barbell rotation in the corner|full-contact twist\tbarbell\tdynamic\tstanding\t\t1\trotation\trotation\ttrunk rotation\tshoulder flexion\t\t\texternal oblique|internal oblique\ttransversus abdominis|anterior deltoid\t\tnone\tintermediate\theavy\tlandmine|barbell\t\tcable rotation\t\t\t',
    'machine trunk rotation\ttorso rotation machine|rotation machine|twist machine\tmachine\tdynamic\tseated\t\t1\trotation\trotation\ttrunk rotation\t\t\t\texternal oblique|internal oblique\ttransversus abdominis\t\tnone\tnovice\theavy\tmachine trunk rotation\t\t\tcable rotation\t\t',
    'dumbbell woodchop\tmedicine ball woodchop|plate woodchop|free-weight woodchop|dumbbell chop\tdumbbell\tdynamic\tstanding\t\t1\trotation\trotation\ttrunk rotation\ttrunk flexion|shoulder flexion\t\t\texternal oblique|internal oblique\trectus abdominis|transversus abdominis|anterior deltoid\t\tnone\tnovice\tlight\tdumbbell\t\tband rotation\tcable woodchop\t\t',
    'lying windshield wiper\tfloor windshield wiper|lying leg rotation|supine trunk rotation|lying wipers\tbodyweight\tdynamic\tlying\t\t1\trotation\trotation\ttrunk rotation\thip flexion|trunk flexion\thip~85|knee~10|ankle~0\t\texternal oblique|internal oblique\trectus abdominis|transversus abdominis\t\tnone\tintermediate\tlight\tfloor\t\tbent-knee trunk rotation\thanging windshield wiper\t\t',
    'bent-knee trunk rotation\tbent-knee windshield wiper|lower trunk rotation|knee drop|supine knee rotation\tbodyweight\tdynamic\tlying\t\t1\trotation\trotation\ttrunk rotation\t\thip~90|knee~90|ankle~0\t\texternal oblique|internal oblique\ttransversus abdominis\t\tnone\tnovice\tlight\tfloor\t\t\tlying windshield wiper\t\t',
    'stability-ball Russian twist\tball Russian twist|bridged trunk rotation|Swiss ball rotation\tplate\tdynamic\tsupported\t\t1\trotation\trotation\ttrunk rotation\t\t\t\texternal oblique|internal oblique\ttransversus abdominis\t\tnone\tintermediate\tlight\texercise ball|plate\t\tRussian twist\t\t\t',
    'band anti-rotation press\tband press-out|banded anti-rotation press|band anti-rotation hold\tband\tisometric\tstanding\t\t1\trotation\trotation\ttrunk rotation\t\t\t\texternal oblique|internal oblique\ttransversus abdominis\t\tnone\tnovice\tlight\tband\t\t\tanti-rotation press\t\t',
    'half-kneeling anti-rotation press\thalf-kneeling press-out|kneeling anti-rotation press|tall-kneeling anti-rotation press|half-kneeling cable press-out\tcable\tisometric\tkneeling\t\t1\trotation\trotation\ttrunk rotation\t\t\t\texternal oblique|internal oblique\ttransversus abdominis\t\tnone\tnovice\tlight\tcable\t\tband anti-rotation press\t\t\t',
    'split-stance anti-rotation press\tsplit-stance press-out|split-squat anti-rotation press\tcable\tisometric\tsplit\t\t1\trotation\trotation\ttrunk rotation\t\t\t\texternal oblique|internal oblique\ttransversus abdominis\t\tnone\tnovice\tlight\tcable\t\tanti-rotation press\t\t\t',
    'anti-rotation press overhead\toverhead press-out|anti-rotation press and lift|overhead anti-rotation press\tcable\tisometric\tstanding\t\t1\trotation\trotation\ttrunk rotation\ttrunk side bend|shoulder flexion\t\t\texternal oblique|internal oblique\ttransversus abdominis|quadratus lumborum|anterior deltoid\t\tnone\tintermediate\tlight\tcable\t\tanti-rotation press\t\t\t',
    'anti-rotation walk-out\tanti-rotation side step|press-out walk|cable walk-out|anti-rotation walk\tband\tisometric\tstanding\t\t1\trotation\trotation\ttrunk rotation\t\t\t\texternal oblique|internal oblique\ttransversus abdominis\t\tnone\tnovice\tlight\tband\t\tband anti-rotation press\t\t\t',
    'one-arm plank\tsingle-arm plank|one-arm plank hold\tbodyweight\tisometric\tprone\t\t1\trotation\trotation\ttrunk rotation|trunk flexion\t\thip~0|knee~0|ankle~0|shoulder~85|elbow~5\t\trectus abdominis|external oblique|internal oblique\ttransversus abdominis\t\tnone\tintermediate\tlight\tfloor\t\tplank shoulder tap\t\t\t',
    'prone back extension hold\tprone hold|prone extension hold|prone lift hold|prone arch hold|arch hold\tbodyweight\tisometric\tprone\t\t\t\t\ttrunk extension\t\thip~0|knee~0|ankle~0\t\terector spinae|multifidus\t\t\tnone\tnovice\tlight\tfloor\t\tbird dog\tback extension hold\t\t',
    'prone alternating arm and leg raise\tswimmer|prone swimmer|prone alternating raise|opposite arm and leg raise\tbodyweight\tdynamic\tprone\t\t1\t\t\ttrunk extension\tshoulder flexion\t\t\terector spinae|multifidus\tanterior deltoid\t\tnone\tnovice\tlight\tfloor\t\tbird dog\tprone back extension\t\t',
    'prone cobra hold\tprone cobra|cobra hold|prone shoulder-blade squeeze hold\tbodyweight\tisometric\tprone\t\t\t\t\ttrunk extension|scapular retraction\tshoulder external rotation\thip~0|knee~0|ankle~0\t\terector spinae|multifidus|middle trapezius|rhomboids\tlower trapezius|infraspinatus|teres minor\t\tnone\tnovice\tlight\tfloor\t\tprone back extension\t\t\t',
    'machine back extension\tback extension machine|lower back machine|seated back extension|lumbar extension machine|seated machine back extension\tmachine\tdynamic\tseated\t\t\t\t\ttrunk extension\thip extension\thip~100 60|knee~80 80|ankle~0 0\t\terector spinae|multifidus\tgluteus maximus|adductor magnus\tgluteus maximus~0.9|adductor magnus~0.69\tnone\tnovice\theavy\tmachine back extension\t\tprone back extension\tback extension\t\t',
    'stability-ball back extension\tball back extension|Swiss ball back extension\tbodyweight\tdynamic\tprone\t\t\t\t\ttrunk extension\thip extension\thip~45 0|knee~10 10|ankle~0 0\t\terector spinae|multifidus\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tbiceps femoris long head~0.59|semitendinosus~0.59|semimembranosus~0.59|gluteus maximus~0.45|adductor magnus~0.14\tnone\tnovice\tlight\texercise ball\t\tprone back extension\tback extension\t\t',
    'loaded spinal roll-down\tspinal roll-down|roll-down|segmental roll-down|weighted roll-down\tdumbbell\tdynamic\tstanding\t\t\t\t\ttrunk extension\thip extension\thip~70 0|knee~0 0|ankle~0 0\t\terector spinae|multifidus\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tbiceps femoris long head~0.69|semitendinosus~0.69|semimembranosus~0.69|gluteus maximus~0.56|adductor magnus~0.25\tlow\tadvanced\tlight\tdumbbell|box\t\tprone back extension\t\tLoaded rounding of the whole spine: light, slow, by small steps, and not where the back is hurt.\t',
    'quadruped leg reach\tquadruped hip extension hold|all-fours leg reach|bird dog leg only\tbodyweight\tisometric\tquadruped\t\t1\t\t\ttrunk extension\t\thip~0|knee~0|ankle~0\t\terector spinae|multifidus\t\t\tnone\tnovice\tlight\tfloor\t\t\tbird dog\t\t',
    'bird dog row\tbird dog dumbbell row|bench bird dog row\tdumbbell\tisometric\tquadruped\t\t1\t\t\ttrunk extension|trunk rotation\tshoulder extension|scapular retraction\thip~0|knee~0|ankle~0\t\texternal oblique|internal oblique|erector spinae|multifidus\ttransversus abdominis|latissimus dorsi|teres major|middle trapezius|rhomboids\t\tnone\tintermediate\tlight\tdumbbell|bench\t\tbird dog\tplank row\t\t',
    'bird dog with band\tbanded bird dog|weighted bird dog|resisted bird dog\tband\tisometric\tquadruped\t\t1\t\t\ttrunk extension\ttrunk rotation\thip~0|knee~0|ankle~0\t\terector spinae|multifidus\texternal oblique|internal oblique\t\tnone\tintermediate\tlight\tband|floor\t\tbird dog\t\t\t',
)

NAMES: str = (
    "\n"
    'barbellcurl\t0\n'
    'curl\t0\n'
    'bbcurl\t0\n'
    'standingbarbellcurl\t0\n'
    'straightbarcurl\t0\n'
    'bicepcurl\t0\n'
    'standingcurl\t0\n'
    'dumbbellcurl\t1\n'
    'dbcurl\t1\n'
    'standingdumbbellcurl\t1\n'
    'dumbbellbicepcurl\t1\n'
    'supinatingcurl\t1\n'
    'dbbicepcurl\t1\n'
    'hammercurl\t2\n'
    'dumbbellhammercurl\t2\n'
    'dbhammercurl\t2\n'
    'neutralgripcurl\t2\n'
    'standinghammercurl\t2\n'
    'cablepushdown\t3\n'
    'triceppushdown\t3\n'
    'pushdown\t3\n'
    'cabletriceppushdown\t3\n'
    'pressdown\t3\n'
    'triceppressdown\t3\n'
    'barpushdown\t3\n'
    'tricepextension\t3\n'
    'ropepushdown\t4\n'
    'ropetriceppushdown\t4\n'
    'ropepressdown\t4\n'
    'overheadcabletricepextension\t5\n'
    'overheadtricepextension\t5\n'
    'overheadropeextension\t5\n'
    'overheadcableextension\t5\n'
    'cableoverheadextension\t5\n'
    'ropeoverheadextension\t5\n'
    'frenchpresswithcable\t5\n'
    'lyingtricepextension\t6\n'
    'skullcrusher\t6\n'
    'lyingbarbelltricepextension\t6\n'
    'bentbarskullcrusher\t6\n'
    'nosebreaker\t6\n'
    'lyingextension\t6\n'
    'inclinedumbbellcurl\t7\n'
    'inclinecurl\t7\n'
    'inclinedbcurl\t7\n'
    'inclinebenchcurl\t7\n'
    'seatedinclinecurl\t7\n'
    'preachercurl\t8\n'
    'bentbarpreachercurl\t8\n'
    'barbellpreachercurl\t8\n'
    'preacherbenchcurl\t8\n'
    'cablecurl\t9\n'
    'standingcablecurl\t9\n'
    'lowcablecurl\t9\n'
    'cablebicepcurl\t9\n'
    'barcablecurl\t9\n'
    'bentbarcurl\t10\n'
    'camberedbarcurl\t10\n'
    'angledbarcurl\t10\n'
    'overheaddumbbelltricepextension\t11\n'
    'dumbbelloverheadextension\t11\n'
    'overheaddumbbellextension\t11\n'
    'twohandoverheadextension\t11\n'
    'seatedoverheadtricepextension\t11\n'
    'dboverheadextension\t11\n'
    'overheaddbtricepextension\t11\n'
    'seateddumbbelltricepextension\t11\n'
    'frenchpress\t11\n'
    'machinecurl\t12\n'
    'machinebicepcurl\t12\n'
    'bicepcurlmachine\t12\n'
    'armcurlmachine\t12\n'
    'seatedmachinecurl\t12\n'
    'machinepreachercurl\t13\n'
    'preachercurlmachine\t13\n'
    'plateloadedpreachercurl\t13\n'
    'dumbbellpreachercurl\t14\n'
    'onearmpreachercurl\t14\n'
    'singlearmpreachercurl\t14\n'
    'dbpreachercurl\t14\n'
    'cablepreachercurl\t15\n'
    'preachercablecurl\t15\n'
    'concentrationcurl\t16\n'
    'seatedconcentrationcurl\t16\n'
    'dumbbellconcentrationcurl\t16\n'
    'proneinclinecurl\t17\n'
    'spidercurl\t17\n'
    'chestsupportedcurl\t17\n'
    'pronecurl\t17\n'
    'alternatingdumbbellcurl\t18\n'
    'alternatingcurl\t18\n'
    'alternatedumbbellcurl\t18\n'
    'alternatingdbcurl\t18\n'
    'seateddumbbellcurl\t19\n'
    'seatedcurl\t19\n'
    'seateddbcurl\t19\n'
    'seatedalternatingdumbbellcurl\t19\n'
    'onearmcablecurl\t20\n'
    'singlearmcablecurl\t20\n'
    'onearmlowcablecurl\t20\n'
    'behindthebodycablecurl\t21\n'
    'faceawaycablecurl\t21\n'
    'cablecurlfacingaway\t21\n'
    'behindbackcablecurl\t21\n'
    'highcablecurl\t22\n'
    'overheadcablecurl\t22\n'
    'doublebicepcablecurl\t22\n'
    'latmachinecurl\t22\n'
    'lyingcablecurl\t23\n'
    'supinecablecurl\t23\n'
    'floorcablecurl\t23\n'
    'dragcurl\t24\n'
    'barbelldragcurl\t24\n'
    'elbowbackcurl\t24\n'
    'strictcurlagainstthewall\t25\n'
    'strictcurl\t25\n'
    'wallcurl\t25\n'
    'backtowallcurl\t25\n'
    'cheatcurl\t26\n'
    'bodyswingcurl\t26\n'
    'cheatingcurl\t26\n'
    'partialrangebarbellcurl\t27\n'
    '21\t27\n'
    'twentyone\t27\n'
    'curl21\t27\n'
    'curlinthird\t27\n'
    'widegripbarbellcurl\t28\n'
    'widecurl\t28\n'
    'widegripcurl\t28\n'
    'closegripbarbellcurl\t29\n'
    'narrowgripcurl\t29\n'
    'closegripcurl\t29\n'
    'bandcurl\t30\n'
    'bandedcurl\t30\n'
    'resistancebandcurl\t30\n'
    'bandbicepcurl\t30\n'
    'kettlebellcurl\t31\n'
    'kbcurl\t31\n'
    'gobletcurl\t31\n'
    'twohandkettlebellcurl\t31\n'
    'suspensioncurl\t32\n'
    'ringcurl\t32\n'
    'suspendedbicepcurl\t32\n'
    'bodyweightcurl\t32\n'
    'suspensionbicepcurl\t32\n'
    'curlhold\t33\n'
    'isometriccurl\t33\n'
    'staticcurl\t33\n'
    'curlisohold\t33\n'
    '90degreecurlhold\t33\n'
    'eccentriccurl\t34\n'
    'negativecurl\t34\n'
    'slowloweringcurl\t34\n'
    'curlnegative\t34\n'
    'ropehammercurl\t35\n'
    'cablehammercurl\t35\n'
    'cableropecurl\t35\n'
    'crossbodyhammercurl\t36\n'
    'pinwheelcurl\t36\n'
    'crossbodycurl\t36\n'
    'alternatingcrossbodycurl\t36\n'
    'seatedhammercurl\t37\n'
    'inclinehammercurl\t37\n'
    'seateddumbbellhammercurl\t37\n'
    'preacherhammercurl\t38\n'
    'neutralgrippreachercurl\t38\n'
    'reversecurl\t39\n'
    'overhandcurl\t39\n'
    'reversebarbellcurl\t39\n'
    'pronatedcurl\t39\n'
    'bentbarreversecurl\t39\n'
    'reversegripcurl\t39\n'
    'reversebicepcurl\t39\n'
    'reversecablecurl\t40\n'
    'cablereversecurl\t40\n'
    'overhandcablecurl\t40\n'
    'reversedumbbellcurl\t41\n'
    'dumbbellreversecurl\t41\n'
    'dbreversecurl\t41\n'
    'rotatingcurl\t42\n'
    'palmuppalmdowncurl\t42\n'
    'turnovercurl\t42\n'
    'supinationpronationcurl\t42\n'
    'straightbarpushdown\t43\n'
    'vbarpushdown\t43\n'
    'angledbarpushdown\t43\n'
    'onearmcablepushdown\t44\n'
    'singlearmpushdown\t44\n'
    'singlearmcablepushdown\t44\n'
    'onearmpushdown\t44\n'
    'singlearmtriceppushdown\t44\n'
    'onearmtricepextension\t44\n'
    'reversegrippushdown\t45\n'
    'underhandpushdown\t45\n'
    'supinatedpushdown\t45\n'
    'underhandtriceppushdown\t45\n'
    'bandpushdown\t46\n'
    'bandedpushdown\t46\n'
    'bandtriceppushdown\t46\n'
    'bandtricepextension\t46\n'
    'resistancebandpushdown\t46\n'
    'crosscabletricepextension\t47\n'
    'crossbodycableextension\t47\n'
    'crosscableextension\t47\n'
    'cablecrossbodytricepextension\t47\n'
    'tricepkickback\t48\n'
    'dumbbellkickback\t48\n'
    'kickback\t48\n'
    'dbkickback\t48\n'
    'bentovertricepextension\t48\n'
    'cablekickbackfortricep\t49\n'
    'cabletricepkickback\t49\n'
    'machinetricepextension\t50\n'
    'tricepextensionmachine\t50\n'
    'machinetricep\t50\n'
    'seatedtricepmachine\t50\n'
    'tricepmachine\t50\n'
    'lyingdumbbelltricepextension\t51\n'
    'dumbbellskullcrusher\t51\n'
    'dbskullcrusher\t51\n'
    'dumbbelllyingextension\t51\n'
    'dbtricepextension\t51\n'
    'inclinetricepextension\t52\n'
    'inclineskullcrusher\t52\n'
    'inclinebarbelltricepextension\t52\n'
    'inclinedumbbelltricepextension\t52\n'
    'lyingtricepextensionbehindthehead\t53\n'
    'deepskullcrusher\t53\n'
    'behindtheheadskullcrusher\t53\n'
    'deadstoptricepextension\t53\n'
    'declinetricepextension\t54\n'
    'declineskullcrusher\t54\n'
    'lyingcabletricepextension\t55\n'
    'cableskullcrusher\t55\n'
    'cablelyingextension\t55\n'
    'onearmlyingtricepextension\t56\n'
    'crossfaceextension\t56\n'
    'crossbodydumbbellextension\t56\n'
    'singlearmskullcrusher\t56\n'
    'rollingdumbbellextension\t57\n'
    'rollbacktricepextension\t57\n'
    'dumbbellrollback\t57\n'
    'rollbackextension\t57\n'
    'elbowouttricepextension\t58\n'
    'elbowoutextension\t58\n'
    'flaredtricepextension\t58\n'
    'overheadbarbelltricepextension\t59\n'
    'barbelloverheadextension\t59\n'
    'bentbaroverheadextension\t59\n'
    'standingbarbelltricepextension\t59\n'
    'barbellfrenchpress\t59\n'
    'onearmoverheadtricepextension\t60\n'
    'singlearmoverheadextension\t60\n'
    'singlearmoverheadtricepextension\t60\n'
    'onearmdumbbelloverheadextension\t60\n'
    'singlearmdumbbelltricepextension\t60\n'
    'onearmoverheadcableextension\t61\n'
    'singlearmcableoverheadextension\t61\n'
    'singlearmoverheadcabletricepextension\t61\n'
    'bandoverheadtricepextension\t62\n'
    'bandedoverheadextension\t62\n'
    'bandoverheadextension\t62\n'
    'kettlebelloverheadtricepextension\t63\n'
    'kboverheadextension\t63\n'
    'kettlebelltricepextension\t63\n'
    'machineoverheadtricepextension\t64\n'
    'overheadtricepmachine\t64\n'
    'bodyweighttricepextension\t65\n'
    'bodyweightskullcrusher\t65\n'
    'triceppushout\t65\n'
    'bartricepextension\t65\n'
    'suspensiontricepextension\t66\n'
    'ringtricepextension\t66\n'
    'suspendedtricepextension\t66\n'
    'tricepextensionhold\t67\n'
    'isometrictricepextension\t67\n'
    'pushdownhold\t67\n'
    'wristcurl\t68\n'
    'barbellwristcurl\t68\n'
    'seatedwristcurl\t68\n'
    'palmupwristcurl\t68\n'
    'forearmcurl\t68\n'
    'dumbbellwristcurl\t68\n'
    'reversewristcurl\t69\n'
    'wristextension\t69\n'
    'palmdownwristcurl\t69\n'
    'dumbbellreversewristcurl\t69\n'
    'barbellreversewristcurl\t69\n'
    'seatedreversewristcurl\t69\n'
    'behindthebackwristcurl\t70\n'
    'standingwristcurl\t70\n'
    'behindbackbarbellwristcurl\t70\n'
    'cablewristcurl\t71\n'
    'cableforearmcurl\t71\n'
    'isometricwristextension\t72\n'
    'wristextensionhold\t72\n'
    'isometricwristextensorhold\t72\n'
    'eccentricwristextension\t73\n'
    'slowloweringwristextension\t73\n'
    'wristextensionlowering\t73\n'
    'eccentricreversewristcurl\t73\n'
    'wristroller\t74\n'
    'wristrollerup\t74\n'
    'forearmroller\t74\n'
    'wristrollup\t74\n'
    'forearmpronation\t75\n'
    'dumbbellpronation\t75\n'
    'hammerpronation\t75\n'
    'pronationwithalever\t75\n'
    'forearmsupination\t76\n'
    'dumbbellsupination\t76\n'
    'hammersupination\t76\n'
    'supinationwithalever\t76\n'
    'deadhang\t77\n'
    'barhang\t77\n'
    'passivehang\t77\n'
    'hang\t77\n'
    'straightarmhang\t77\n'
    'pullupbarhang\t77\n'
    'towelhang\t78\n'
    'towelgriphang\t78\n'
    'ropehang\t78\n'
    'onearmhang\t79\n'
    'singlearmhang\t79\n'
    'onearmdeadhang\t79\n'
    'singlearmdeadhang\t79\n'
    'fingertiphang\t80\n'
    'fingerboardhang\t80\n'
    'fingerhang\t80\n'
    'edgehang\t80\n'
    'hangboardhang\t80\n'
    'platepinch\t81\n'
    'pinchgriphold\t81\n'
    'platepinchhold\t81\n'
    'pinchhold\t81\n'
    'barbellhold\t82\n'
    'griphold\t82\n'
    'staticbarbellhold\t82\n'
    'timedbarbellhold\t82\n'
    'thickbarhold\t82\n'
    'farmerhold\t83\n'
    'dumbbellhold\t83\n'
    'staticfarmerhold\t83\n'
    'dumbbellgriphold\t83\n'
    'handgrippersqueeze\t84\n'
    'gripper\t84\n'
    'handgripper\t84\n'
    'crushgrip\t84\n'
    'gripperclose\t84\n'
    'fingercurl\t85\n'
    'barbellfingercurl\t85\n'
    'fingerroll\t85\n'
    'fingerrollup\t85\n'
    'fingerextensionwithband\t86\n'
    'bandfingerextension\t86\n'
    'fingeropening\t86\n'
    'rubberbandfingerextension\t86\n'
    'wristdeviationwithalever\t87\n'
    'radialdeviation\t87\n'
    'ulnardeviation\t87\n'
    'sledgehammerlever\t87\n'
    'leverlift\t87\n'
    'farmercarry\t88\n'
    'farmerwalk\t88\n'
    'dumbbellfarmercarry\t88\n'
    'loadedcarry\t88\n'
    'dumbbellcarry\t88\n'
    'farmer\t88\n'
    'suitcasecarry\t89\n'
    'suitcasewalk\t89\n'
    'onearmfarmercarry\t89\n'
    'singlearmfarmercarry\t89\n'
    'onesidedcarry\t89\n'
    'offsetcarry\t89\n'
    'turkishgetup\t90\n'
    'tgu\t90\n'
    'getup\t90\n'
    'kettlebellgetup\t90\n'
    'dumbbellgetup\t90\n'
    'medicineballslam\t91\n'
    'ballslam\t91\n'
    'overheadslam\t91\n'
    'medballslam\t91\n'
    'slamball\t91\n'
    'overheadmedicineballslam\t91\n'
    'mbslam\t91\n'
    'medicineballchestpass\t92\n'
    'chestpass\t92\n'
    'medballchestpass\t92\n'
    'medicineballchestthrow\t92\n'
    'mbchestpass\t92\n'
    'wallchestpass\t92\n'
    'standingchestthrow\t92\n'
    'rotationalmedicineballthrow\t93\n'
    'rotationalthrow\t93\n'
    'medballrotationalthrow\t93\n'
    'sidethrow\t93\n'
    'medicineballsidetoss\t93\n'
    'mbrotationalthrow\t93\n'
    'rotationalwallthrow\t93\n'
    'sidetoss\t93\n'
    'trapbarcarry\t94\n'
    'trapbarfarmerwalk\t94\n'
    'trapbarwalk\t94\n'
    'hexbarcarry\t94\n'
    'framecarry\t94\n'
    'kettlebellfarmercarry\t95\n'
    'kettlebellcarry\t95\n'
    'kbfarmerwalk\t95\n'
    'kettlebellwalk\t95\n'
    'kbcarry\t95\n'
    'farmerhandlecarry\t96\n'
    'farmerhandle\t96\n'
    'handlecarry\t96\n'
    'farmerwalkwithhandle\t96\n'
    'overheadcarry\t97\n'
    'twoarmoverheadcarry\t97\n'
    'overheadwalk\t97\n'
    'doubleoverheadcarry\t97\n'
    'barbelloverheadcarry\t97\n'
    'waiterwalk\t98\n'
    'waitercarry\t98\n'
    'onearmoverheadcarry\t98\n'
    'singlearmoverheadcarry\t98\n'
    'rackcarry\t99\n'
    'frontrackcarry\t99\n'
    'kettlebellrackcarry\t99\n'
    'doublekettlebellrackcarry\t99\n'
    'rackwalk\t99\n'
    'onearmrackcarry\t100\n'
    'singlearmrackcarry\t100\n'
    'onearmfrontrackcarry\t100\n'
    'offsetrackcarry\t100\n'
    'gobletcarry\t101\n'
    'gobletwalk\t101\n'
    'bearhugkettlebellcarry\t101\n'
    'sandbagshouldercarry\t102\n'
    'shouldercarry\t102\n'
    'sandbagovertheshouldercarry\t102\n'
    'platecarry\t103\n'
    'platehugcarry\t103\n'
    'platepinchcarry\t103\n'
    'huggedplatecarry\t103\n'
    'frontloadedbarcarry\t104\n'
    'crookoftheelbowcarry\t104\n'
    'elbowcrookcarry\t104\n'
    'frontheldbarbellcarry\t104\n'
    'bottomupcarry\t105\n'
    'bottomupkettlebellcarry\t105\n'
    'bottomupwalk\t105\n'
    'bottomuprackcarry\t105\n'
    'mixedcarry\t106\n'
    'crossbodycarry\t106\n'
    'highlowcarry\t106\n'
    'oneuponedowncarry\t106\n'
    'overheadandsuitcasecarry\t106\n'
    'bucketcarry\t107\n'
    'frontbucketcarry\t107\n'
    'watercancarry\t107\n'
    'jerrycancarry\t107\n'
    'towelfarmercarry\t108\n'
    'towelcarry\t108\n'
    'thickhandlefarmercarry\t108\n'
    'thickgripcarry\t108\n'
    'pinchcarry\t109\n'
    'platepinchcarrywalk\t109\n'
    'platepinchwalk\t109\n'
    'halfgetup\t110\n'
    'halfturkishgetup\t110\n'
    'getuptothehand\t110\n'
    'partialgetup\t110\n'
    'getuptoelbow\t110\n'
    'bottomupturkishgetup\t111\n'
    'bottomupgetup\t111\n'
    'sandbaggetup\t112\n'
    'shoulderedgetup\t112\n'
    'sandbagturkishgetup\t112\n'
    'armbar\t113\n'
    'kettlebellarmbar\t113\n'
    'kbarmbar\t113\n'
    'screwdriver\t113\n'
    'lyingarmbar\t113\n'
    'kettlebellcleanandpress\t114\n'
    'kbcleanandpress\t114\n'
    'onearmcleanandpress\t114\n'
    'singlearmkettlebellcleanandpress\t114\n'
    'c&p\t114\n'
    'doublekettlebellcleanandpress\t115\n'
    'doublecleanandpress\t115\n'
    'doublekbcleanandpress\t115\n'
    'twokettlebellcleanandpress\t115\n'
    'kettlebellpushpress\t116\n'
    'kbpushpress\t116\n'
    'onearmkettlebellpushpress\t116\n'
    'kettlebelljerk\t117\n'
    'kbjerk\t117\n'
    'onearmkettlebelljerk\t117\n'
    'kettlebellpushjerk\t117\n'
    'kettlebellpullover\t118\n'
    'kbpullover\t118\n'
    'floorpulloverwithkettlebell\t118\n'
    'rotationalmedicineballslam\t119\n'
    'rotationalslam\t119\n'
    'sideslam\t119\n'
    'medicineballsideslam\t119\n'
    'medballsideslam\t119\n'
    'rainbowslam\t119\n'
    'kneelingmedicineballslam\t120\n'
    'tallkneelingslam\t120\n'
    'halfkneelingslam\t120\n'
    'kneelingslam\t120\n'
    'medicineballoverheadthrow\t121\n'
    'overheadthrow\t121\n'
    'soccerthrow\t121\n'
    'overheadmedicineballpass\t121\n'
    'twohandoverheadthrow\t121\n'
    'medballoverheadthrow\t121\n'
    'footballthrowin\t121\n'
    'stepinoverheadthrow\t122\n'
    'steppingoverheadthrow\t122\n'
    'stepinmedicineballoverheadthrow\t122\n'
    'medicineballpulloverthrow\t123\n'
    'lyingoverheadthrow\t123\n'
    'supineoverheadthrow\t123\n'
    'pulloverpass\t123\n'
    'situpthrow\t123\n'
    'kneelingmedicineballchestpass\t124\n'
    'tallkneelingchestpass\t124\n'
    'kneelingchestthrow\t124\n'
    'halfkneelingchestpass\t124\n'
    'seatedmedicineballchestpass\t125\n'
    'seatedchestpass\t125\n'
    'seatedmedicineballthrow\t125\n'
    'seatedchestthrow\t125\n'
    'lyingmedicineballchestthrow\t126\n'
    'supinechestthrow\t126\n'
    'supinemedicineballthrow\t126\n'
    'lyingchestthrow\t126\n'
    'medicineballbenchthrow\t126\n'
    'verticalchestthrow\t126\n'
    'onearmmedicineballput\t127\n'
    'medicineballput\t127\n'
    'shotputthrow\t127\n'
    'medicineballshotput\t127\n'
    'rotationalput\t127\n'
    'medballpunchthrow\t127\n'
    'medicineballpushthrow\t128\n'
    'stepinchestpass\t128\n'
    'jumpinchestpass\t128\n'
    'broadjumpchestpass\t128\n'
    'halfkneelingrotationalthrow\t129\n'
    'halfkneelingmedicineballthrow\t129\n'
    'halfkneelingsidetoss\t129\n'
    'kneelingrotationalthrow\t129\n'
    'stepbehindrotationalthrow\t130\n'
    'stepbehindthrow\t130\n'
    'shufflerotationalthrow\t130\n'
    'runningrotationalthrow\t130\n'
    'scoopthrowtotheside\t131\n'
    'rotationalscooptoss\t131\n'
    'sidescooptoss\t131\n'
    'scooptoss\t131\n'
    'medicineballscooptoss\t131\n'
    'seatedrotationalthrow\t132\n'
    'seatedmedicineballsidethrow\t132\n'
    'seatedsidetoss\t132\n'
    'russiantwistthrow\t132\n'
    'medicineballwalltap\t133\n'
    'backtowallrotationpass\t133\n'
    'behindthebackballpass\t133\n'
    'backtobackballpass\t133\n'
    'backwardoverheadthrow\t134\n'
    'overheadbackwardthrow\t134\n'
    'backwardmedicineballthrow\t134\n'
    'backwardoverheadtoss\t134\n'
    'bombthrow\t134\n'
    'overheadbacktoss\t134\n'
    'forwardscoopthrow\t135\n'
    'underhandforwardthrow\t135\n'
    'betweenthelegthrow\t135\n'
    'forwardmedicineballscoop\t135\n'
    'grannytoss\t135\n'
    'medicineballsquatthrow\t136\n'
    'squatthrow\t136\n'
    'verticaltoss\t136\n'
    'medicineballverticalthrow\t136\n'
    'squattopressthrow\t136\n'
    'overheadverticalthrow\t136\n'
    'ropeclimb\t137\n'
    'climbingrope\t137\n'
    'ropeclimbing\t137\n'
    'ropeascent\t137\n'
    'armonlyropeclimb\t137\n'
    'alternatingropewave\t138\n'
    'battleropewave\t138\n'
    'battlerope\t138\n'
    'battlingrope\t138\n'
    'alternatingwave\t138\n'
    'battleropealternatingwave\t138\n'
    'heavyropewave\t138\n'
    'ropewave\t138\n'
    'doubleropewave\t139\n'
    'doublearmwave\t139\n'
    'battleropedoublewave\t139\n'
    'twoarmropewave\t139\n'
    'ropeslam\t140\n'
    'battleropeslam\t140\n'
    'heavyropeslam\t140\n'
    'doublearmropeslam\t140\n'
    'powerslamwithrope\t140\n'
    'ropeoutwardcircle\t141\n'
    'ropecircle\t141\n'
    'battleropecircle\t141\n'
    'outsidecircle\t141\n'
    'sledrow\t142\n'
    'standingsledrow\t142\n'
    'sledpullrow\t142\n'
    'backwardsledrow\t142\n'
    'strapsledrow\t142\n'
    'ropesledpull\t143\n'
    'armoverarmsledpull\t143\n'
    'handoverhandsledpull\t143\n'
    'handoverhandropepull\t143\n'
    'seatedropesledpull\t143\n'
    'armoverarmpull\t143\n'
    'sledchestpress\t144\n'
    'sledpressout\t144\n'
    'explosivesledpress\t144\n'
    'sledpushout\t144\n'
    'sledfacepull\t145\n'
    'strapsledfacepull\t145\n'
    'sledrearshoulderrow\t145\n'
    'sledtricepextension\t146\n'
    'sledoverheadextension\t146\n'
    'strapsledtricepextension\t146\n'
    'bearcrawl\t147\n'
    'bearwalk\t147\n'
    'forwardbearcrawl\t147\n'
    'babybearcrawl\t147\n'
    'leopardcrawl\t147\n'
    'bearcrawlwithdrag\t148\n'
    'loadedbearcrawl\t148\n'
    'sandbagdragbearcrawl\t148\n'
    'lateralbearcrawl\t149\n'
    'sidewaybearcrawl\t149\n'
    'sidebearcrawl\t149\n'
    'crabwalk\t150\n'
    'crabcrawl\t150\n'
    'backwardcrawl\t150\n'
    'reversecrawl\t150\n'
    'inchworm\t151\n'
    'walkout\t151\n'
    'handwalkout\t151\n'
    'inchwormwalkout\t151\n'
    'plankwalkout\t151\n'
    'countermovementjump\t152\n'
    'cmj\t152\n'
    'verticaljump\t152\n'
    'bodyweightsquatjump\t152\n'
    'jump\t152\n'
    'verticalleap\t152\n'
    'bodyweightjumpsquat\t152\n'
    'boxjump\t153\n'
    'jumptobox\t153\n'
    'boxjumpontobox\t153\n'
    'standingboxjump\t153\n'
    'broadjump\t154\n'
    'standinglongjump\t154\n'
    'standingbroadjump\t154\n'
    'slj\t154\n'
    'longjumpstanding\t154\n'
    'horizontaljump\t154\n'
    'squatjump\t155\n'
    'staticsquatjump\t155\n'
    'pausedsquatjump\t155\n'
    'noncountermovementjump\t155\n'
    'staticjump\t155\n'
    'sj\t155\n'
    'depthjump\t156\n'
    'dropjumpforheight\t156\n'
    'depthdropjump\t156\n'
    'boxdepthjump\t156\n'
    'depthjumptobox\t156\n'
    'dropjump\t157\n'
    'fastdropjump\t157\n'
    'reactivedropjump\t157\n'
    'dj\t157\n'
    'rebounddropjump\t157\n'
    'tuckjump\t158\n'
    'kneetuckjump\t158\n'
    'tuckjumpinplace\t158\n'
    'repeatedtuckjump\t158\n'
    'hurdlejump\t159\n'
    'doubleleghurdlejump\t159\n'
    'hurdlehop\t159\n'
    'repeatedhurdlejump\t159\n'
    'barrierjump\t159\n'
    'pogojump\t160\n'
    'pogo\t160\n'
    'pogohop\t160\n'
    'anklehop\t160\n'
    'anklejump\t160\n'
    'stiffleghop\t160\n'
    'anklebounce\t160\n'
    'doublelegpogo\t160\n'
    'jumprope\t161\n'
    'skippingrope\t161\n'
    'ropeskipping\t161\n'
    'ropejump\t161\n'
    'ropejumping\t161\n'
    'doubleunder\t161\n'
    'skiprope\t161\n'
    'seatedboxjump\t162\n'
    'seatedjump\t162\n'
    'seatedjumptobox\t162\n'
    'boxseatedjump\t162\n'
    'seatedverticaljump\t162\n'
    'kneelingjump\t163\n'
    'kneejump\t163\n'
    'jumpfromknee\t163\n'
    'kneelingjumptosquat\t163\n'
    'kneelingtoboxjump\t163\n'
    'repeatedbroadjump\t164\n'
    'continuoubroadjump\t164\n'
    'consecutivebroadjump\t164\n'
    'triplebroadjump\t164\n'
    'multiplebroadjump\t164\n'
    'frogjump\t164\n'
    'frogleap\t164\n'
    'lateralhurdlejump\t165\n'
    'sidetosidejump\t165\n'
    'lateralbarrierjump\t165\n'
    'laterallinehop\t165\n'
    'lateraljump\t165\n'
    'lateralboxjump\t165\n'
    'rotationaljump\t166\n'
    '180degreejump\t166\n'
    'jumpturn\t166\n'
    '90degreejump\t166\n'
    'quarterturnjump\t166\n'
    'rotationalboxjump\t166\n'
    'bandassistedjump\t167\n'
    'assistedjump\t167\n'
    'overspeedjump\t167\n'
    'acceleratedjump\t167\n'
    'bandassistedverticaljump\t167\n'
    'barbellsquatjump\t168\n'
    'barbelljumpsquat\t168\n'
    'jumpsquat\t168\n'
    'loadedsquatjump\t168\n'
    'weightedjumpsquat\t168\n'
    'loadedjumpsquat\t168\n'
    'loadedjump\t168\n'
    'trapbarjump\t169\n'
    'hexbarjump\t169\n'
    'trapbarjumpsquat\t169\n'
    'hexbarjumpsquat\t169\n'
    'trapbarsquatjump\t169\n'
    'dumbbellsquatjump\t170\n'
    'dbsquatjump\t170\n'
    'dumbbelljumpsquat\t170\n'
    'dumbbellcountermovementjump\t170\n'
    'kettlebellsquatjump\t170\n'
    'gobletsquatjump\t170\n'
    'bandresistedjump\t171\n'
    'bandedjump\t171\n'
    'resistancebandjump\t171\n'
    'bandresistedbroadjump\t171\n'
    'bandedbroadjump\t171\n'
    'guidedbarsquatjump\t172\n'
    'guidedbarjumpsquat\t172\n'
    'fixedtrackjumpsquat\t172\n'
    'legpressjump\t173\n'
    'horizontaljumponlegpress\t173\n'
    'legpressthrow\t173\n'
    'ballisticlegpress\t173\n'
    'sledjump\t173\n'
    'wallballsquat\t174\n'
    'wallball\t174\n'
    'wallballthrow\t174\n'
    'wallballshot\t174\n'
    'medicineballsquattothrow\t174\n'
    'medicineballthruster\t174\n'
    'burpee\t175\n'
    'squatthrustwithjump\t175\n'
    'burpeewithpushup\t175\n'
    'burpeejump\t175\n'
    'splitsquatjump\t176\n'
    'jumplunge\t176\n'
    'lungejump\t176\n'
    'jumpinglunge\t176\n'
    'splitjump\t176\n'
    'scissorjump\t176\n'
    'alternatingsplitsquatjump\t176\n'
    'cycledsplitsquatjump\t176\n'
    'splitlungejump\t176\n'
    'singleleghop\t177\n'
    'hop\t177\n'
    'oneleghop\t177\n'
    'forwardhop\t177\n'
    'singlelegforwardhop\t177\n'
    'singlelegbroadjump\t177\n'
    'hopfordistance\t177\n'
    'singlelegjump\t177\n'
    'singlelegverticaljump\t177\n'
    'hopandstick\t178\n'
    'singleleghopandstick\t178\n'
    'hopandhold\t178\n'
    'singleleghopandhold\t178\n'
    'multidirectionalhopandstick\t178\n'
    'triplehop\t179\n'
    'singlelegtriplehop\t179\n'
    'repeatedhop\t179\n'
    'repeatedsingleleghop\t179\n'
    'continuouhop\t179\n'
    'speedhop\t179\n'
    'crossoverhop\t179\n'
    'singlelegboxjump\t180\n'
    'onelegboxjump\t180\n'
    'singlelegjumptobox\t180\n'
    'singleleghoptobox\t180\n'
    'singlelegpogo\t181\n'
    'singlelegpogojump\t181\n'
    'singlelegpogohop\t181\n'
    'singleleganklehop\t181\n'
    'onelegpogo\t181\n'
    'lateralbound\t182\n'
    'skaterjump\t182\n'
    'skaterhop\t182\n'
    'skaterbound\t182\n'
    'sidebound\t182\n'
    'lateralboundandstick\t182\n'
    'speedskaterjump\t182\n'
    'bounding\t183\n'
    'bound\t183\n'
    'alternatelegbound\t183\n'
    'alternatingbound\t183\n'
    'powerbound\t183\n'
    'horizontalbound\t183\n'
    'runningbound\t183\n'
    'powerskip\t184\n'
    'skipforheight\t184\n'
    'skippingforheight\t184\n'
    'skipfordistance\t184\n'
    'askip\t184\n'
    'explosivestepup\t185\n'
    'stepupjump\t185\n'
    'jumpingstepup\t185\n'
    'alternatingpushoff\t185\n'
    'boxpushoff\t185\n'
    'plyometricstepup\t185\n'
    'alternatingstepupjump\t185\n'
    'droplanding\t186\n'
    'depthdrop\t186\n'
    'altitudelanding\t186\n'
    'altitudedrop\t186\n'
    'dropandstick\t186\n'
    'boxdroplanding\t186\n'
    'landingfrombox\t186\n'
    'dropsquatlanding\t186\n'
    'singleleglanding\t187\n'
    'singlelegdroplanding\t187\n'
    'singlelegdropandstick\t187\n'
    'singlelegdepthdrop\t187\n'
    'singlelegaltitudelanding\t187\n'
    'snapdown\t188\n'
    'dropsquat\t188\n'
    'rapidsquatdrop\t188\n'
    'landingdrill\t188\n'
    'snapdowntolanding\t188\n'
    'sledpush\t189\n'
    'heavysledpush\t189\n'
    'pushsled\t189\n'
    'weightedsledpush\t189\n'
    'sleddrive\t189\n'
    'sledmarch\t189\n'
    'sleddrag\t190\n'
    'forwardsleddrag\t190\n'
    'sledpullforward\t190\n'
    'sledpull\t190\n'
    'harnesssleddrag\t190\n'
    'sledtow\t190\n'
    'sledwalk\t190\n'
    'forwardsledpull\t190\n'
    'backwardsleddrag\t191\n'
    'reversesleddrag\t191\n'
    'backwardsledpull\t191\n'
    'backwardsledwalk\t191\n'
    'reversesledpull\t191\n'
    'backwardsled\t191\n'
    'reversesledwalk\t191\n'
    'lateralsleddrag\t192\n'
    'sidesleddrag\t192\n'
    'lateralsledpull\t192\n'
    'sidewaysleddrag\t192\n'
    'crossoversleddrag\t192\n'
    'lateralsledwalk\t192\n'
    'sledsprint\t193\n'
    'lightsledpush\t193\n'
    'sledpushsprint\t193\n'
    'sprintsledpush\t193\n'
    'sledpushforspeed\t193\n'
    'fastsledpush\t193\n'
    'resistedsprint\t194\n'
    'sledtowingsprint\t194\n'
    'sledsprinttow\t194\n'
    'towedsprint\t194\n'
    'resistedsprinting\t194\n'
    'sledpullsprint\t194\n'
    'sledresistedsprint\t194\n'
    'sledtowsprint\t194\n'
    'bearcrawlsleddrag\t195\n'
    'bearcrawlsledpull\t195\n'
    'sledbearcrawl\t195\n'
    'quadrupedsleddrag\t195\n'
    'sledhipextensionwalk\t196\n'
    'longstridesleddrag\t196\n'
    'sledpowerwalk\t196\n'
    'sledlungewalk\t196\n'
    'straightlegsleddrag\t196\n'
    'strapbetweenlegsledwalk\t196\n'
    'sprint\t197\n'
    'flatsprint\t197\n'
    'sprinting\t197\n'
    'acceleration\t197\n'
    'accelerationsprint\t197\n'
    'flyingsprint\t197\n'
    'buildupsprint\t197\n'
    'hillsprint\t198\n'
    'uphillsprint\t198\n'
    'inclinesprint\t198\n'
    'hillrun\t198\n'
    'uphillrun\t198\n'
    'stairrun\t199\n'
    'stairsprint\t199\n'
    'stairrunning\t199\n'
    'stadiumrun\t199\n'
    'stairbounding\t199\n'
    'stepsprint\t199\n'
    'yokecarry\t200\n'
    'yokewalk\t200\n'
    'superyoke\t200\n'
    'yoke\t200\n'
    'barbellbackcarry\t200\n'
    'frameyokecarry\t200\n'
    'sandbagcarry\t201\n'
    'sandbagbearhugcarry\t201\n'
    'bearhugcarry\t201\n'
    'sandbagwalk\t201\n'
    'sandbagfrontcarry\t201\n'
    'oddobjectcarry\t201\n'
    'stonecarry\t201\n'
    'kegcarry\t201\n'
    'marchingcarry\t202\n'
    'farmermarch\t202\n'
    'loadedmarchinplace\t202\n'
    'highkneecarry\t202\n'
    'suitcasemarch\t202\n'
    'marchingfarmercarry\t202\n'
    'loadedhighkneemarch\t202\n'
    'ruck\t203\n'
    'rucking\t203\n'
    'loadedmarch\t203\n'
    'weightedwalk\t203\n'
    'packmarch\t203\n'
    'ruckmarch\t203\n'
    'weightedvestwalk\t203\n'
    'backpackwalk\t203\n'
    'loadedhillwalk\t204\n'
    'inclinewalk\t204\n'
    'weightedhillwalk\t204\n'
    'uphillwalk\t204\n'
    'inclinetreadmillwalk\t204\n'
    'uphillruck\t204\n'
    'loadedinclinewalk\t204\n'
    'loadedstairclimb\t205\n'
    'stairclimb\t205\n'
    'weightedstairclimb\t205\n'
    'stairclimbwithload\t205\n'
    'weightedveststairclimb\t205\n'
    'stairwalk\t205\n'
    'stairmachine\t205\n'
    'backwardwalk\t206\n'
    'backwardtreadmillwalk\t206\n'
    'reversewalk\t206\n'
    'backwardwalking\t206\n'
    'retrowalk\t206\n'
    'backwarduphillwalk\t206\n'
    'backwardwalkonunpoweredtreadmill\t206\n'
    'deadlift\t207\n'
    'conventionaldeadlift\t207\n'
    'barbelldeadlift\t207\n'
    'dl\t207\n'
    'bbdeadlift\t207\n'
    'deadliftfromthefloor\t207\n'
    'romaniandeadlift\t208\n'
    'rdl\t208\n'
    'barbellrdl\t208\n'
    'barbellromaniandeadlift\t208\n'
    'romanian\t208\n'
    'stifflegdeadlift\t209\n'
    'sldl\t209\n'
    'stiffleggeddeadlift\t209\n'
    'straightlegdeadlift\t209\n'
    'barbellstifflegdeadlift\t209\n'
    'stifflegdl\t209\n'
    'dumbbellromaniandeadlift\t210\n'
    'dbrdl\t210\n'
    'dumbbellrdl\t210\n'
    'dbromaniandeadlift\t210\n'
    'kettlebellromaniandeadlift\t210\n'
    'kbrdl\t210\n'
    'trapbardeadlift\t211\n'
    'hexbardeadlift\t211\n'
    'tbdl\t211\n'
    'trapbardl\t211\n'
    'highhandletrapbardeadlift\t211\n'
    'hbdl\t211\n'
    'sumodeadlift\t212\n'
    'widestancedeadlift\t212\n'
    'sumodl\t212\n'
    'barbellsumodeadlift\t212\n'
    'singlelegromaniandeadlift\t213\n'
    'slrdl\t213\n'
    'singlelegrdl\t213\n'
    'onelegrdl\t213\n'
    'dumbbellsinglelegrdl\t213\n'
    'singlelegdeadlift\t213\n'
    'singlelegstifflegdeadlift\t213\n'
    'goodmorning\t214\n'
    'barbellgoodmorning\t214\n'
    'gm\t214\n'
    'bentkneegoodmorning\t214\n'
    'kettlebelldeadlift\t215\n'
    'kbdeadlift\t215\n'
    'kbdl\t215\n'
    'dumbbelldeadlift\t216\n'
    'dbdeadlift\t216\n'
    'twodumbbelldeadlift\t216\n'
    'dumbbellstifflegdeadlift\t217\n'
    'dbsldl\t217\n'
    'dbstifflegdeadlift\t217\n'
    'dumbbellstraightlegdeadlift\t217\n'
    'dumbbellsldl\t217\n'
    'rackpull\t218\n'
    'blockpull\t218\n'
    'deadliftfromblock\t218\n'
    'deadliftfrompin\t218\n'
    'partialdeadlift\t218\n'
    'blockdeadlift\t218\n'
    'deficitdeadlift\t219\n'
    'deadliftoffplate\t219\n'
    'deadliftfromdeficit\t219\n'
    'pauseddeadlift\t220\n'
    'pausedeadlift\t220\n'
    'deadliftwithpauseattheknee\t220\n'
    'snatchgripdeadlift\t221\n'
    'widegripdeadlift\t221\n'
    'snatchgripdl\t221\n'
    'sgdl\t221\n'
    'snatchgripromaniandeadlift\t222\n'
    'snatchgriprdl\t222\n'
    'widegriprdl\t222\n'
    'deficitromaniandeadlift\t223\n'
    'deficitrdl\t223\n'
    'rdloffplate\t223\n'
    'deficitstifflegdeadlift\t224\n'
    'deficitsldl\t224\n'
    'stifflegdeadliftoffplate\t224\n'
    'deficittrapbardeadlift\t225\n'
    'lowhandletrapbardeadlift\t225\n'
    'deficithexbardeadlift\t225\n'
    'trapbarromaniandeadlift\t226\n'
    'trapbarrdl\t226\n'
    'hexbarrdl\t226\n'
    'hexbarromaniandeadlift\t226\n'
    'kettlebellsumodeadlift\t227\n'
    'kbsumodeadlift\t227\n'
    'dumbbellsumodeadlift\t227\n'
    'sumokettlebelldeadlift\t227\n'
    'sumoromaniandeadlift\t228\n'
    'sumordl\t228\n'
    'widestancerdl\t228\n'
    'bstanceromaniandeadlift\t229\n'
    'bstancerdl\t229\n'
    'kickstandrdl\t229\n'
    'kickstandromaniandeadlift\t229\n'
    'staggeredstancerdl\t229\n'
    'splitstancerdl\t229\n'
    'barbellsinglelegromaniandeadlift\t230\n'
    'barbellsinglelegrdl\t230\n'
    'bbslrdl\t230\n'
    'barbellslrdl\t230\n'
    'landminesinglelegromaniandeadlift\t231\n'
    'landminesinglelegrdl\t231\n'
    'landmineslrdl\t231\n'
    'angledbarsinglelegrdl\t231\n'
    'bodyweightsinglelegromaniandeadlift\t232\n'
    'bodyweightsinglelegrdl\t232\n'
    'singleleghinge\t232\n'
    'singleleghiphinge\t232\n'
    'singlelegreach\t232\n'
    'bodyweightslrdl\t232\n'
    'suitcasedeadlift\t233\n'
    'onearmdeadlift\t233\n'
    'singlearmdeadlift\t233\n'
    'kettlebellsuitcasedeadlift\t233\n'
    'guidedbarromaniandeadlift\t234\n'
    'guidedbarrdl\t234\n'
    'fixedtrackrdl\t234\n'
    'guidedbarstifflegdeadlift\t234\n'
    'cableromaniandeadlift\t235\n'
    'cablerdl\t235\n'
    'cablestifflegdeadlift\t235\n'
    'cabledeadlift\t235\n'
    'cablepullthrough\t236\n'
    'pullthrough\t236\n'
    'cablehiphinge\t236\n'
    'ropepullthrough\t236\n'
    'bandpullthrough\t237\n'
    'bandedpullthrough\t237\n'
    'resistancebandpullthrough\t237\n'
    'hiphingedrill\t238\n'
    'hingedrill\t238\n'
    'dowelhiphinge\t238\n'
    'broomstickhinge\t238\n'
    'wallhinge\t238\n'
    'bodyweighthiphinge\t238\n'
    'bodyweightgoodmorning\t238\n'
    'bandgoodmorning\t239\n'
    'bandedgoodmorning\t239\n'
    'resistancebandgoodmorning\t239\n'
    'safetybargoodmorning\t240\n'
    'ssbgoodmorning\t240\n'
    'safetysquatbargoodmorning\t240\n'
    'seatedgoodmorning\t241\n'
    'seatedbarbellgoodmorning\t241\n'
    'sandbagdeadlift\t242\n'
    'sandbaglift\t242\n'
    'oddobjectdeadlift\t242\n'
    'isometricmidthighpull\t243\n'
    'imtp\t243\n'
    'isometricdeadlift\t243\n'
    'rackisometricpull\t243\n'
    'backextension\t244\n'
    '45degreebackextension\t244\n'
    'hyperextension\t244\n'
    '45degreehyperextension\t244\n'
    '45degreehipextension\t244\n'
    'inclinebackextension\t244\n'
    'weightedbackextension\t245\n'
    'weightedhyperextension\t245\n'
    'loadedbackextension\t245\n'
    'barbellbackextension\t245\n'
    'platebackextension\t245\n'
    'singlelegbackextension\t246\n'
    'onelegbackextension\t246\n'
    'singleleghyperextension\t246\n'
    'singleleghipextensiononbench\t246\n'
    'horizontalbackextension\t247\n'
    'romanchairbackextension\t247\n'
    '90degreebackextension\t247\n'
    'ghdbackextension\t247\n'
    'hipextensiononromanchair\t247\n'
    'ghdhipextension\t247\n'
    'backextensionhold\t248\n'
    'isometricbackextension\t248\n'
    'trunkextensionhold\t248\n'
    'romanchairhold\t248\n'
    'isometrichipextensionhold\t248\n'
    'singlelegbackextensionhold\t249\n'
    'singlelegromanchairhold\t249\n'
    'singlelegisometricbackextension\t249\n'
    'reversehyperextension\t250\n'
    'reversehyper\t250\n'
    'reversebackextension\t250\n'
    'benchreversehyperextension\t251\n'
    'bodyweightreversehyper\t251\n'
    'ballreversehyper\t251\n'
    'bodyweightreversehyperextension\t251\n'
    'hipthrust\t252\n'
    'barbellhipthrust\t252\n'
    'bht\t252\n'
    'bbhipthrust\t252\n'
    'thrust\t252\n'
    'benchhipthrust\t252\n'
    'glutebridge\t253\n'
    'bridge\t253\n'
    'hipbridge\t253\n'
    'bodyweightglutebridge\t253\n'
    'bodyweightbridge\t253\n'
    'hipraise\t253\n'
    'twolegbridge\t253\n'
    'singleleghipthrust\t254\n'
    'oneleghipthrust\t254\n'
    'slhipthrust\t254\n'
    'singlelegbenchhipthrust\t254\n'
    'dumbbellhipthrust\t255\n'
    'dbhipthrust\t255\n'
    'kettlebellhipthrust\t255\n'
    'bodyweighthipthrust\t255\n'
    'hipthrustmachine\t256\n'
    'machinehipthrust\t256\n'
    'glutebridgemachine\t256\n'
    'leverhipthrust\t256\n'
    'guidedbarhipthrust\t257\n'
    'fixedtrackhipthrust\t257\n'
    'barbellglutebridge\t258\n'
    'bbglutebridge\t258\n'
    'floorhipthrust\t258\n'
    'weightedglutebridge\t258\n'
    'singlelegglutebridge\t259\n'
    'onelegbridge\t259\n'
    'slglutebridge\t259\n'
    'singlelegbridge\t259\n'
    'singleleghipbridge\t259\n'
    'bstancehipthrust\t260\n'
    'kickstandhipthrust\t260\n'
    'staggeredstancehipthrust\t260\n'
    'bandhipthrust\t261\n'
    'bandedhipthrust\t261\n'
    'bandedglutebridge\t261\n'
    'bandglutebridge\t261\n'
    'minibandglutebridge\t261\n'
    'feetelevatedglutebridge\t262\n'
    'footelevatedbridge\t262\n'
    'elevatedbridge\t262\n'
    'feetraisedbridge\t262\n'
    'frogpump\t263\n'
    'frogbridge\t263\n'
    'weightedfrogpump\t263\n'
    'longleverbridge\t264\n'
    'hamstringbridge\t264\n'
    'longleverhamstringbridge\t264\n'
    'straightlegbridge\t264\n'
    'longleverglutebridge\t264\n'
    'singleleghamstringbridge\t265\n'
    'singleleglongleverbridge\t265\n'
    'slhb\t265\n'
    'singlelegbridgefrombox\t265\n'
    'slhamstringbridge\t265\n'
    'glutebridgehold\t266\n'
    'bridgehold\t266\n'
    'isometricglutebridge\t266\n'
    'isometricbridge\t266\n'
    'longleverbridgehold\t267\n'
    'hamstringbridgehold\t267\n'
    'isometrichamstringbridge\t267\n'
    'isometriclongleverbridge\t267\n'
    'hamstringisohold\t267\n'
    'singleleglongleverbridgehold\t268\n'
    'singleleghamstringbridgehold\t268\n'
    'singlelegisometrichamstringbridge\t268\n'
    'slhamstringiso\t268\n'
    'cablehipextension\t269\n'
    'cablekickback\t269\n'
    'cableglutekickback\t269\n'
    'glutekickback\t269\n'
    'standinghipextension\t269\n'
    'multihipextension\t269\n'
    'machineglutekickback\t270\n'
    'glutemachine\t270\n'
    'rearkickmachine\t270\n'
    'kneelingglutemachine\t270\n'
    'machinekickback\t270\n'
    'machinehipextension\t270\n'
    'bandkickback\t271\n'
    'bandedkickback\t271\n'
    'bandhipextension\t271\n'
    'standingbandhipextension\t271\n'
    'donkeykick\t272\n'
    'quadrupedhipextension\t272\n'
    'bentkneekickback\t272\n'
    'glutekickbackonallfour\t272\n'
    'birddogleglift\t272\n'
    'pronehipextension\t273\n'
    'proneleglift\t273\n'
    'lyinghipextension\t273\n'
    'pronelegraise\t273\n'
    'kettlebellswing\t274\n'
    'swing\t274\n'
    'kbswing\t274\n'
    'kb\t274\n'
    'russianswing\t274\n'
    'twohandswing\t274\n'
    'twohandkettlebellswing\t274\n'
    'hiphingeswing\t274\n'
    'dumbbellswing\t274\n'
    'singlearmkettlebellswing\t275\n'
    'onearmswing\t275\n'
    'singlearmswing\t275\n'
    'onehandswing\t275\n'
    'onearmkettlebellswing\t275\n'
    'overheadkettlebellswing\t276\n'
    'overheadswing\t276\n'
    'fullswing\t276\n'
    'kettlebellswingoverhead\t276\n'
    'heavykettlebellswing\t277\n'
    'doublekettlebellswing\t277\n'
    'heavyswing\t277\n'
    'doubleswing\t277\n'
    'bandswing\t278\n'
    'bandedhipsnap\t278\n'
    'bandresistedhingejump\t278\n'
    'bandresistedswing\t278\n'
    'powerclean\t279\n'
    'pc\t279\n'
    'barbellpowerclean\t279\n'
    'powercleanfromthefloor\t279\n'
    'clean\t280\n'
    'fullclean\t280\n'
    'squatclean\t280\n'
    'barbellclean\t280\n'
    'cleanfromthefloor\t280\n'
    'hangpowerclean\t281\n'
    'hpc\t281\n'
    'hangpowercleanfromabovetheknee\t281\n'
    'hangclean\t282\n'
    'hangsquatclean\t282\n'
    'cleanfromthehang\t282\n'
    'hangfullclean\t282\n'
    'blockpowerclean\t283\n'
    'powercleanfromblock\t283\n'
    'cleanfromblock\t283\n'
    'blockclean\t283\n'
    'muscleclean\t284\n'
    'hangmuscleclean\t284\n'
    'cleanandjerk\t285\n'
    'c&j\t285\n'
    'clean&jerk\t285\n'
    'cj\t285\n'
    'cleanandsplitjerk\t285\n'
    'powercleanandjerk\t285\n'
    'cleanpull\t286\n'
    'cleangrippull\t286\n'
    'cleanpullfromthefloor\t286\n'
    'hangcleanpull\t287\n'
    'hangpull\t287\n'
    'cleanpullfromthehang\t287\n'
    'cleanhighpull\t288\n'
    'highpull\t288\n'
    'barbellhighpull\t288\n'
    'highpullfromthefloor\t288\n'
    'cleangriphighpull\t288\n'
    'hanghighpull\t289\n'
    'hangcleanhighpull\t289\n'
    'highpullfromthehang\t289\n'
    'midthighpull\t290\n'
    'cleanmidthighpull\t290\n'
    'midthighcleanpull\t290\n'
    'dynamicmidthighpull\t290\n'
    'jumpshrug\t291\n'
    'hangjumpshrug\t291\n'
    'barbelljumpshrug\t291\n'
    'dumbbellhangclean\t292\n'
    'dbhangclean\t292\n'
    'dumbbellpowerclean\t292\n'
    'dumbbellclean\t292\n'
    'dbclean\t292\n'
    'kettlebellclean\t293\n'
    'kbclean\t293\n'
    'singlearmkettlebellclean\t293\n'
    'doublekettlebellclean\t293\n'
    'onearmclean\t293\n'
    'sandbagovershoulder\t294\n'
    'sandbagtoshoulder\t294\n'
    'sandbagclean\t294\n'
    'sandbagshouldering\t294\n'
    'sandbagtossovershoulder\t294\n'
    'splitjerk\t295\n'
    'jerk\t295\n'
    'barbellsplitjerk\t295\n'
    'jerkfromrack\t295\n'
    'pushjerk\t296\n'
    'powerjerk\t296\n'
    'barbellpushjerk\t296\n'
    'powersnatch\t297\n'
    'barbellpowersnatch\t297\n'
    'powersnatchfromthefloor\t297\n'
    'snatch\t298\n'
    'fullsnatch\t298\n'
    'squatsnatch\t298\n'
    'barbellsnatch\t298\n'
    'snatchfromthefloor\t298\n'
    'hangpowersnatch\t299\n'
    'hangpowersnatchfromabovetheknee\t299\n'
    'hp\t299\n'
    'hangsnatch\t300\n'
    'hangsquatsnatch\t300\n'
    'snatchfromthehang\t300\n'
    'hangmusclesnatch\t301\n'
    'musclesnatch\t301\n'
    'snatchpull\t302\n'
    'snatchgrippull\t302\n'
    'snatchpullfromthefloor\t302\n'
    'snatchhighpull\t303\n'
    'snatchgriphighpull\t303\n'
    'widegriphighpull\t303\n'
    'dumbbellsnatch\t304\n'
    'dbsnatch\t304\n'
    'singlearmdumbbellsnatch\t304\n'
    'onearmdumbbellsnatch\t304\n'
    'dumbbellhangsnatch\t304\n'
    'kettlebellsnatch\t305\n'
    'kbsnatch\t305\n'
    'singlearmkettlebellsnatch\t305\n'
    'onearmsnatch\t305\n'
    'kettlebellhighpull\t306\n'
    'kbhighpull\t306\n'
    'singlearmkettlebellhighpull\t306\n'
    'sumodeadlifthighpull\t306\n'
    'hipabductionmachine\t307\n'
    'machinehipabduction\t307\n'
    'seatedhipabduction\t307\n'
    'abductormachine\t307\n'
    'hipabduction\t307\n'
    'abductionmachine\t307\n'
    'seatedabduction\t307\n'
    'cablehipabduction\t308\n'
    'standingcablehipabduction\t308\n'
    'cableabduction\t308\n'
    'standinghipabduction\t308\n'
    'multihipabduction\t308\n'
    'sidelyinghipabduction\t309\n'
    'sidelyinglegraise\t309\n'
    'sidelegraise\t309\n'
    'lyinghipabduction\t309\n'
    'sidelyingabduction\t309\n'
    'lateralbandwalk\t310\n'
    'bandwalk\t310\n'
    'sidestepwithband\t310\n'
    'minibandwalk\t310\n'
    'xbandwalk\t310\n'
    'lateralwalk\t310\n'
    'crabwalkwithband\t310\n'
    'bandedsidestep\t310\n'
    'sidewaybandwalk\t310\n'
    'monsterwalk\t311\n'
    'bandedmonsterwalk\t311\n'
    'forwardbandwalk\t311\n'
    'diagonalbandwalk\t311\n'
    'clamshell\t312\n'
    'clam\t312\n'
    'clamshellexercise\t312\n'
    'bandedclamshell\t312\n'
    'bandclamshell\t312\n'
    'sidelyingclam\t312\n'
    'seatedbandhipabduction\t313\n'
    'bandedseatedabduction\t313\n'
    'seatedbandabduction\t313\n'
    'bandhipabductionseated\t313\n'
    'seatedbandedhipabduction\t313\n'
    'standingbandhipabduction\t314\n'
    'bandhipabduction\t314\n'
    'bandedstandingabduction\t314\n'
    'bandabduction\t314\n'
    'leaninghipabductionmachine\t315\n'
    'leanforwardhipabduction\t315\n'
    'forwardleanabductionmachine\t315\n'
    'hoveringhipabduction\t315\n'
    'firehydrant\t316\n'
    'quadrupedhipabduction\t316\n'
    'bandedfirehydrant\t316\n'
    'hydrant\t316\n'
    'standingmachinehipabduction\t317\n'
    'standingabductionmachine\t317\n'
    'standinghipabductionmachine\t317\n'
    'multihipmachineabduction\t317\n'
    'pelvicdrop\t318\n'
    'hiphike\t318\n'
    'hiphitch\t318\n'
    'pelvichike\t318\n'
    'pelvichitch\t318\n'
    'standinghiphike\t318\n'
    'wallpressabductionhold\t319\n'
    'standingwallpress\t319\n'
    'isometrichipabduction\t319\n'
    'wallpresshold\t319\n'
    'singlelegwallpress\t319\n'
    'isometrichipabductionatwall\t319\n'
    'frograise\t320\n'
    'pronefroglift\t320\n'
    'frogreversehyper\t320\n'
    'pronefrograise\t320\n'
    'hipadductionmachine\t321\n'
    'machinehipadduction\t321\n'
    'seatedhipadduction\t321\n'
    'adductormachine\t321\n'
    'hipadduction\t321\n'
    'adductionmachine\t321\n'
    'seatedadduction\t321\n'
    'copenhagensideplank\t322\n'
    'copenhagenplank\t322\n'
    'copenhagenhold\t322\n'
    'csp\t322\n'
    'longlevercopenhagenplank\t322\n'
    'copenhagenplankhold\t322\n'
    'isometriccopenhagen\t322\n'
    'copenhagenadduction\t323\n'
    'copenhagenadductorraise\t323\n'
    'copenhagenadductionexercise\t323\n'
    'copenhagenhipadduction\t323\n'
    'dynamiccopenhagenplank\t323\n'
    'copenhagenraise\t323\n'
    'copenhagen\t323\n'
    'shortlevercopenhagensideplank\t324\n'
    'bentkneecopenhagenplank\t324\n'
    'shortcopenhagenplank\t324\n'
    'shortlevercopenhagenplank\t324\n'
    'halfcopenhagenplank\t324\n'
    'kneecopenhagenplank\t324\n'
    'shortlevercopenhagenadduction\t325\n'
    'bentkneecopenhagenadduction\t325\n'
    'shortlevercopenhagenraise\t325\n'
    'halfcopenhagenadduction\t325\n'
    'cablehipadduction\t326\n'
    'standingcablehipadduction\t326\n'
    'cableadduction\t326\n'
    'standinghipadduction\t326\n'
    'multihipadduction\t326\n'
    'bandhipadduction\t327\n'
    'standingbandhipadduction\t327\n'
    'bandedadduction\t327\n'
    'bandadduction\t327\n'
    'ballsqueeze\t328\n'
    'adductorsqueeze\t328\n'
    'isometrichipadduction\t328\n'
    'groinsqueeze\t328\n'
    'kneesqueeze\t328\n'
    'adductorballsqueeze\t328\n'
    'isometricadduction\t328\n'
    'longleversqueeze\t328\n'
    'sidelyinghipadduction\t329\n'
    'sidelyingadduction\t329\n'
    'innerthighraise\t329\n'
    'lyinghipadduction\t329\n'
    'sidelyinginnerthighlift\t329\n'
    'slideradduction\t330\n'
    'slidinghipadduction\t330\n'
    'slideinadduction\t330\n'
    'sliderhipadduction\t330\n'
    'slideboardadduction\t330\n'
    'cablehipflexion\t331\n'
    'standingcablehipflexion\t331\n'
    'cablekneeraise\t331\n'
    'cablekneedrive\t331\n'
    'standingcablekneedrive\t331\n'
    'bandhipflexion\t332\n'
    'psoamarch\t332\n'
    'bandedmarch\t332\n'
    'standingbandhipflexion\t332\n'
    'bandedhipflexion\t332\n'
    'bandkneedrive\t332\n'
    'supinebandmarch\t332\n'
    'bandedpsoamarch\t332\n'
    'machinehipflexion\t333\n'
    'standinghipflexionmachine\t333\n'
    'multihipflexion\t333\n'
    'hipflexionmachine\t333\n'
    'hipflexormachine\t333\n'
    'supinestraightlegraise\t334\n'
    'slr\t334\n'
    'singlelegstraightlegraise\t334\n'
    'supinestraightleglift\t334\n'
    'lyingsinglelegraise\t334\n'
    'singlestraightlegraise\t334\n'
    'standingkneeraise\t335\n'
    'standingmarch\t335\n'
    'highkneemarch\t335\n'
    'standingkneelift\t335\n'
    'marchinginplace\t335\n'
    'kettlebellkneeraise\t335\n'
    'footloadedkneeraise\t335\n'
    'seatedstraightleglift\t336\n'
    'seatedleglift\t336\n'
    'seatedpikelift\t336\n'
    'pikecompression\t336\n'
    'seatedlegraiseoverobject\t336\n'
    'pikeleglift\t336\n'
    'compressionlift\t336\n'
    'lyingcablekneedrive\t337\n'
    'lyingcablehipflexion\t337\n'
    'reversesquat\t337\n'
    'supinecablekneeraise\t337\n'
    'lyingbandedkneedrive\t337\n'
    'hipflexionhold\t338\n'
    'isometrichipflexion\t338\n'
    'kneeraisehold\t338\n'
    'standinghipflexionhold\t338\n'
    'isometrickneeraise\t338\n'
    'hipflexorlowering\t339\n'
    'kneelinghipflexoreccentric\t339\n'
    'eccentrichipflexion\t339\n'
    'strapassistedleglowering\t339\n'
    'lyingleglowering\t339\n'
    'singleleglowering\t339\n'
    'seatedhipinternalrotation\t340\n'
    'seatedbandhipinternalrotation\t340\n'
    'bandhipinternalrotation\t340\n'
    'hipinternalrotation\t340\n'
    'cablehipinternalrotation\t340\n'
    'seatedinternalhiprotation\t340\n'
    'seatedhipexternalrotation\t341\n'
    'seatedbandhipexternalrotation\t341\n'
    'bandhipexternalrotation\t341\n'
    'hipexternalrotation\t341\n'
    'cablehipexternalrotation\t341\n'
    'seatedexternalhiprotation\t341\n'
    'pronehipinternalrotation\t342\n'
    'lyinghipinternalrotation\t342\n'
    'pronebandhipinternalrotation\t342\n'
    'proneinternalrotationofthehip\t342\n'
    'pronehipexternalrotation\t343\n'
    'lyinghipexternalrotation\t343\n'
    'pronebandhipexternalrotation\t343\n'
    'proneexternalrotationofthehip\t343\n'
    'heelsqueezerotation\t343\n'
    'reverseclamshell\t344\n'
    'reverseclam\t344\n'
    'sidelyinghipinternalrotation\t344\n'
    'reverseclamshellexercise\t344\n'
    'hipairplane\t345\n'
    'hipaeroplane\t345\n'
    'singleleghiprotation\t345\n'
    'standinghipairplane\t345\n'
    '90/90hipliftoff\t346\n'
    '9090liftoff\t346\n'
    '90/90hiprotation\t346\n'
    'hip9090\t346\n'
    'shinboxliftoff\t346\n'
    '9090internalrotationlift\t346\n'
    'seatedlegcurl\t347\n'
    'seatedhamstringcurl\t347\n'
    'machineseatedlegcurl\t347\n'
    'seatedkneeflexion\t347\n'
    'slc\t347\n'
    'lyinglegcurl\t348\n'
    'legcurl\t348\n'
    'pronelegcurl\t348\n'
    'hamstringcurl\t348\n'
    'lyinghamstringcurl\t348\n'
    'machinelegcurl\t348\n'
    'pronehamstringcurl\t348\n'
    'llc\t348\n'
    'kneeflexion\t348\n'
    'singlelegseatedlegcurl\t349\n'
    'onelegseatedlegcurl\t349\n'
    'unilateralseatedlegcurl\t349\n'
    'singlelegseatedhamstringcurl\t349\n'
    'singleleglyinglegcurl\t350\n'
    'oneleglyinglegcurl\t350\n'
    'singlelegpronelegcurl\t350\n'
    'unilaterallegcurl\t350\n'
    'singleleglegcurl\t350\n'
    'standinglegcurl\t351\n'
    'standinghamstringcurl\t351\n'
    'machinestandinglegcurl\t351\n'
    'singlelegstandinglegcurl\t351\n'
    'kneelinglegcurl\t352\n'
    'kneelinghamstringcurl\t352\n'
    'machinekneelinglegcurl\t352\n'
    'leaningseatedlegcurl\t353\n'
    'leanforwardseatedlegcurl\t353\n'
    'forwardleanlegcurl\t353\n'
    'lengthenedseatedlegcurl\t353\n'
    'eccentricseatedlegcurl\t354\n'
    'seatedlegcurltwouponedown\t354\n'
    'seatedlegcurleccentric\t354\n'
    'eccentricoverloadseatedlegcurl\t354\n'
    'eccentriclyinglegcurl\t355\n'
    'twouponedownlegcurl\t355\n'
    'lyinglegcurleccentric\t355\n'
    'eccentriclegcurl\t355\n'
    'eccentricoverloadlegcurl\t355\n'
    'cablelegcurl\t356\n'
    'standingcablelegcurl\t356\n'
    'cablehamstringcurl\t356\n'
    'anklestraplegcurl\t356\n'
    'lyingcablelegcurl\t357\n'
    'pronecablelegcurl\t357\n'
    'cablelyinglegcurl\t357\n'
    'bandlegcurl\t358\n'
    'bandedlegcurl\t358\n'
    'pronebandlegcurl\t358\n'
    'resistancebandlegcurl\t358\n'
    'bandhamstringcurl\t358\n'
    'lyingbandlegcurl\t358\n'
    'seatedbandlegcurl\t359\n'
    'bandseatedlegcurl\t359\n'
    'seatedresistancebandlegcurl\t359\n'
    'bandedseatedlegcurl\t359\n'
    'bandstandinglegcurl\t360\n'
    'standingbandlegcurl\t360\n'
    'ankleweightlegcurl\t360\n'
    'standingankleweightlegcurl\t360\n'
    'dumbbelllegcurl\t361\n'
    'dblegcurl\t361\n'
    'dumbbelllyinglegcurl\t361\n'
    'dumbbellhamstringcurl\t361\n'
    'pronedumbbelllegcurl\t361\n'
    'isometriclegcurl\t362\n'
    'legcurlhold\t362\n'
    'legcurlisometric\t362\n'
    'isometrickneeflexion\t362\n'
    'hamstringisometric\t362\n'
    'seatedisometriclegcurl\t363\n'
    'isometricseatedlegcurl\t363\n'
    'seatedlegcurlhold\t363\n'
    'seatedhamstringisometric\t363\n'
    'nordiccurl\t364\n'
    'nordic\t364\n'
    'nordichamstringcurl\t364\n'
    'nordichamstringexercise\t364\n'
    'nhe\t364\n'
    'nordiclower\t364\n'
    'nordiclegcurl\t364\n'
    'russianlegcurl\t364\n'
    'eccentricnordiccurl\t364\n'
    'assistednordiccurl\t365\n'
    'bandassistednordiccurl\t365\n'
    'bandnordic\t365\n'
    'bandassistednordic\t365\n'
    'pushupassistednordiccurl\t365\n'
    'weightednordiccurl\t366\n'
    'loadednordiccurl\t366\n'
    'nordiccurlwithplate\t366\n'
    'fullnordiccurl\t366\n'
    'concentricnordiccurl\t366\n'
    'razorcurl\t367\n'
    'benthipnordiccurl\t367\n'
    'hipflexednordiccurl\t367\n'
    'razorhamstringcurl\t367\n'
    'nordichold\t368\n'
    'isometricnordiccurl\t368\n'
    'nordicisometric\t368\n'
    'nordiccurlhold\t368\n'
    'glutehamraise\t369\n'
    'ghr\t369\n'
    'glutehamraiseonbench\t369\n'
    'glutehamdeveloperraise\t369\n'
    'ghdraise\t369\n'
    'gluteham\t369\n'
    'assistedglutehamraise\t370\n'
    'bandassistedglutehamraise\t370\n'
    'bandassistedghr\t370\n'
    'assistedghr\t370\n'
    'weightedglutehamraise\t371\n'
    'loadedghr\t371\n'
    'weightedghr\t371\n'
    'plateglutehamraise\t371\n'
    'sliderlegcurl\t372\n'
    'slidinglegcurl\t372\n'
    'slidelegcurl\t372\n'
    'hamstringslide\t372\n'
    'sliderhamstringcurl\t372\n'
    'towellegcurl\t372\n'
    'slideboardlegcurl\t372\n'
    'eccentricsliderlegcurl\t373\n'
    'sliderlegcurleccentric\t373\n'
    'hamstringslideout\t373\n'
    'eccentricslidinglegcurl\t373\n'
    'singlelegsliderlegcurl\t374\n'
    'singlelegslidinglegcurl\t374\n'
    'onelegsliderlegcurl\t374\n'
    'balllegcurl\t375\n'
    'stabilityballlegcurl\t375\n'
    'swissballlegcurl\t375\n'
    'exerciseballlegcurl\t375\n'
    'swissballhamstringcurl\t375\n'
    'gymballlegcurl\t375\n'
    'physioballcurl\t375\n'
    'sblegcurl\t375\n'
    'singlelegballlegcurl\t376\n'
    'singlelegswissballlegcurl\t376\n'
    'singlelegstabilityballlegcurl\t376\n'
    'onelegballcurl\t376\n'
    'suspensionlegcurl\t377\n'
    'straplegcurl\t377\n'
    'suspensionhamstringcurl\t377\n'
    'suspensiontrainerlegcurl\t377\n'
    'ringlegcurl\t377\n'
    'hamstringwalkout\t378\n'
    'bridgewalkout\t378\n'
    'glutebridgewalkout\t378\n'
    'hamstringbridgewalkout\t378\n'
    'heelwalkout\t378\n'
    'standingcalfraise\t379\n'
    'calfraise\t379\n'
    'machinestandingcalfraise\t379\n'
    'standingmachinecalfraise\t379\n'
    'standingheelraise\t379\n'
    'machinecalfraise\t379\n'
    'scr\t379\n'
    'bodyweightcalfraise\t380\n'
    'heelraise\t380\n'
    'doublelegcalfraise\t380\n'
    'bodyweightheelraise\t380\n'
    'twolegcalfraise\t380\n'
    'doublelegheelraise\t380\n'
    'bwcalfraise\t380\n'
    'singlelegcalfraise\t381\n'
    'singlelegheelraise\t381\n'
    'onelegcalfraise\t381\n'
    'slcalfraise\t381\n'
    'bodyweightsinglelegcalfraise\t381\n'
    'singlelegstandingcalfraise\t381\n'
    'slcr\t381\n'
    'dumbbellsinglelegcalfraise\t382\n'
    'dbsinglelegcalfraise\t382\n'
    'onedumbbellcalfraise\t382\n'
    'weightedsinglelegcalfraise\t382\n'
    'dumbbellonelegcalfraise\t382\n'
    'legpresscalfraise\t383\n'
    'calfpress\t383\n'
    'calfpressonlegpress\t383\n'
    'legpressheelraise\t383\n'
    'legpresstoepress\t383\n'
    'toepress\t383\n'
    'singleleglegpresscalfraise\t384\n'
    'singlelegcalfpress\t384\n'
    'onelegcalfpress\t384\n'
    'donkeycalfraise\t385\n'
    'bentovercalfraise\t385\n'
    'machinedonkeycalfraise\t385\n'
    'donkeyheelraise\t385\n'
    'dumbbellcalfraise\t386\n'
    'dbcalfraise\t386\n'
    'standingdumbbellcalfraise\t386\n'
    'dumbbellstandingcalfraise\t386\n'
    'kettlebellcalfraise\t386\n'
    'guidedbarcalfraise\t387\n'
    'fixedtrackcalfraise\t387\n'
    'guidedbarstandingcalfraise\t387\n'
    'guidedbarsinglelegcalfraise\t388\n'
    'fixedtracksinglelegcalfraise\t388\n'
    'barbellcalfraise\t389\n'
    'bbcalfraise\t389\n'
    'standingbarbellcalfraise\t389\n'
    'barbellstandingcalfraise\t389\n'
    'barbellheelraise\t389\n'
    'hacksquatcalfraise\t390\n'
    'hackmachinecalfraise\t390\n'
    'hacksquatmachinecalfraise\t390\n'
    'seatedcalfraise\t391\n'
    'machineseatedcalfraise\t391\n'
    'seatedheelraise\t391\n'
    'seatedsoleuraise\t391\n'
    'seatedmachinecalfraise\t391\n'
    'singlelegseatedcalfraise\t392\n'
    'onelegseatedcalfraise\t392\n'
    'singlelegseatedheelraise\t392\n'
    'dumbbellseatedcalfraise\t393\n'
    'dbseatedcalfraise\t393\n'
    'seateddumbbellcalfraise\t393\n'
    'plateseatedcalfraise\t393\n'
    'kettlebellseatedcalfraise\t393\n'
    'barbellseatedcalfraise\t394\n'
    'seatedbarbellcalfraise\t394\n'
    'bbseatedcalfraise\t394\n'
    'guidedbarseatedcalfraise\t394\n'
    'bentkneecalfraise\t395\n'
    'soleuraise\t395\n'
    'bentkneeheelraise\t395\n'
    'standingbentkneecalfraise\t395\n'
    'soleucalfraise\t395\n'
    'bodyweightbentkneecalfraise\t395\n'
    'singlelegbentkneecalfraise\t396\n'
    'singlelegsoleuraise\t396\n'
    'bentkneesinglelegcalfraise\t396\n'
    'singlelegbentkneeheelraise\t396\n'
    'singlelegsoleucalfraise\t396\n'
    'guidedbarbentkneecalfraise\t397\n'
    'splitsquatcalfraise\t397\n'
    'guidedbarsoleuraise\t397\n'
    'bentkneecalfraiseinsplitstance\t397\n'
    'heeldrop\t398\n'
    'eccentricheeldrop\t398\n'
    'eccentriccalfraise\t398\n'
    'straightkneeheeldrop\t398\n'
    'singlelegheeldrop\t398\n'
    'eccentricheellowering\t398\n'
    'calflowering\t398\n'
    'achilleheeldrop\t398\n'
    'heeldropkneestraight\t398\n'
    'bentkneeheeldrop\t399\n'
    'eccentricbentkneeheeldrop\t399\n'
    'heeldropkneebent\t399\n'
    'eccentricsoleudrop\t399\n'
    'bentkneeeccentriccalfraise\t399\n'
    'calfraisehold\t400\n'
    'isometriccalfraise\t400\n'
    'isometriccalfhold\t400\n'
    'calfisohold\t400\n'
    'isometricheelraise\t400\n'
    'singlelegcalfraisehold\t400\n'
    'heelraisehold\t400\n'
    'bentkneecalfhold\t401\n'
    'soleuhold\t401\n'
    'isometricsoleuhold\t401\n'
    'bentkneeisometriccalfraise\t401\n'
    'wallleansoleuhold\t401\n'
    'soleuwallpush\t401\n'
    'seatedisometriccalfraise\t401\n'
    'isometricplantarflexionpush\t402\n'
    'isometricstandingcalfpush\t402\n'
    'calfisometricagainstrack\t402\n'
    'maximalisometricplantarflexion\t402\n'
    'isometricanklepush\t402\n'
    'bandplantarflexion\t403\n'
    'bandankleplantarflexion\t403\n'
    'bandedcalfpress\t403\n'
    'resistancebandplantarflexion\t403\n'
    'bandcalfpress\t403\n'
    'toewalk\t404\n'
    'tiptoewalk\t404\n'
    'calfwalk\t404\n'
    'walkingontoe\t404\n'
    'loadedtoewalk\t404\n'
    'farmertoewalk\t404\n'
    'tibialiraise\t405\n'
    'tibraise\t405\n'
    'walltibialiraise\t405\n'
    'toeraise\t405\n'
    'standingtoeraise\t405\n'
    'tibialiwallraise\t405\n'
    'anteriortibialiraise\t405\n'
    'shinraise\t405\n'
    'loadedtibialiraise\t406\n'
    'tibbarraise\t406\n'
    'tibiabarraise\t406\n'
    'seatedtibraise\t406\n'
    'seatedtibialiraise\t406\n'
    'machinetibialiraise\t406\n'
    'weightedtibialiraise\t406\n'
    'seateddorsiflexionwithplate\t406\n'
    'banddorsiflexion\t407\n'
    'bandankledorsiflexion\t407\n'
    'bandeddorsiflexion\t407\n'
    'resistancebanddorsiflexion\t407\n'
    'cabledorsiflexion\t407\n'
    'ankledorsiflexion\t407\n'
    'kettlebelldorsiflexion\t408\n'
    'kettlebelltibraise\t408\n'
    'footloadeddorsiflexion\t408\n'
    'hangingkettlebelltibraise\t408\n'
    'dumbbelldorsiflexion\t408\n'
    'heelwalk\t409\n'
    'walkingonheel\t409\n'
    'heelwalking\t409\n'
    'shinwalk\t409\n'
    'bandankleeversion\t410\n'
    'bandeversion\t410\n'
    'ankleeversion\t410\n'
    'bandedankleeversion\t410\n'
    'cableankleeversion\t410\n'
    'peronealbandwork\t410\n'
    'bandankleinversion\t411\n'
    'bandinversion\t411\n'
    'ankleinversion\t411\n'
    'bandedankleinversion\t411\n'
    'cableankleinversion\t411\n'
    'ballsqueezecalfraise\t412\n'
    'calfraisewithballbetweenheel\t412\n'
    'tibialiposteriorcalfraise\t412\n'
    'heelsqueezecalfraise\t412\n'
    'ballsqueezeheelraise\t412\n'
    'shortfoot\t413\n'
    'shortfootexercise\t413\n'
    'footdoming\t413\n'
    'archraise\t413\n'
    'footdome\t413\n'
    'archlift\t413\n'
    'towelscrunch\t414\n'
    'toweltoecurl\t414\n'
    'towelcurlwithtoe\t414\n'
    'toescrunch\t414\n'
    'towelgathering\t414\n'
    'toeyoga\t414\n'
    'singlelegbalance\t415\n'
    'singlelegstance\t415\n'
    'onelegbalance\t415\n'
    'singlelegstand\t415\n'
    'balanceononeleg\t415\n'
    'wobbleboardbalance\t415\n'
    'backsquat\t416\n'
    'squat\t416\n'
    'barbellsquat\t416\n'
    'barbellbacksquat\t416\n'
    'highbarsquat\t416\n'
    'highbarbacksquat\t416\n'
    'fullsquat\t416\n'
    'deepsquat\t416\n'
    'parallelsquat\t416\n'
    'temposquat\t416\n'
    'frontsquat\t417\n'
    'barbellfrontsquat\t417\n'
    'fs\t417\n'
    'cleangripfrontsquat\t417\n'
    'gobletsquat\t418\n'
    'dumbbellgobletsquat\t418\n'
    'kettlebellgobletsquat\t418\n'
    'dbgobletsquat\t418\n'
    'kbgobletsquat\t418\n'
    'bodyweightsquat\t419\n'
    'airsquat\t419\n'
    'bwsquat\t419\n'
    'freesquat\t419\n'
    'lowbarbacksquat\t420\n'
    'lowbarsquat\t420\n'
    'lbb\t420\n'
    'boxsquat\t421\n'
    'barbellboxsquat\t421\n'
    'backsquattobox\t421\n'
    'safetybarsquat\t422\n'
    'ssbsquat\t422\n'
    'safetysquatbarsquat\t422\n'
    'yokebarsquat\t422\n'
    'pausedsquat\t423\n'
    'pausesquat\t423\n'
    'pausebacksquat\t423\n'
    'pausedbacksquat\t423\n'
    'halfsquat\t424\n'
    'halfbacksquat\t424\n'
    'halfdepthsquat\t424\n'
    'quartersquat\t425\n'
    'quarterbacksquat\t425\n'
    'partialsquat\t425\n'
    'pinsquat\t426\n'
    'deadstopsquat\t426\n'
    'bottomupsquat\t426\n'
    'squatfrompin\t426\n'
    'guidedbarsquat\t427\n'
    'fixedtracksquat\t427\n'
    'guidedbarbacksquat\t427\n'
    'hacksquat\t428\n'
    'machinehacksquat\t428\n'
    'hacksquatmachine\t428\n'
    'sledhacksquat\t428\n'
    'pendulumsquat\t429\n'
    'machinependulumsquat\t429\n'
    'machinesquat\t430\n'
    'leversquatmachine\t430\n'
    'vsquat\t430\n'
    'standingsquatmachine\t430\n'
    'beltsquat\t431\n'
    'hipbeltsquat\t431\n'
    'beltsquatmachine\t431\n'
    'heelelevatedsquat\t432\n'
    'cyclistsquat\t432\n'
    'heelelevatedgobletsquat\t432\n'
    'heelraisedsquat\t432\n'
    'wedgesquat\t432\n'
    'slantboardsquat\t432\n'
    'overheadsquat\t433\n'
    'barbelloverheadsquat\t433\n'
    'oh\t433\n'
    'dumbbellsquat\t434\n'
    'dbsquat\t434\n'
    'dumbbellsuitcasesquat\t434\n'
    'twodumbbellsquat\t434\n'
    'kettlebellfrontsquat\t435\n'
    'doublekettlebellfrontsquat\t435\n'
    'kbfrontsquat\t435\n'
    'kettlebellracksquat\t435\n'
    'dumbbellfrontsquat\t435\n'
    'sumosquat\t436\n'
    'pliesquat\t436\n'
    'widestancesquat\t436\n'
    'dumbbellsumosquat\t436\n'
    'kettlebellsumosquat\t436\n'
    'landminesquat\t437\n'
    'angledbarsquat\t437\n'
    'landminegobletsquat\t437\n'
    'sandbagsquat\t438\n'
    'sandbagbearhugsquat\t438\n'
    'bearhugsquat\t438\n'
    'sandbagfrontsquat\t438\n'
    'elbowcrooksquat\t439\n'
    'crookoftheelbowsquat\t439\n'
    'barinelbowsquat\t439\n'
    'handassistedsafetybarsquat\t440\n'
    'handassistedsquat\t440\n'
    'assistedsafetybarsquat\t440\n'
    'bandedsquat\t441\n'
    'bandsquat\t441\n'
    'resistancebandsquat\t441\n'
    'bandresistedsquat\t441\n'
    'suspensionsquat\t442\n'
    'assistedsquat\t442\n'
    'suspensionassistedsquat\t442\n'
    'strapsquat\t442\n'
    'chairsquat\t443\n'
    'sittostand\t443\n'
    'chairstand\t443\n'
    'bodyweightboxsquat\t443\n'
    'sittostandfromchair\t443\n'
    'ballwallsquat\t444\n'
    'wallsquatwithball\t444\n'
    'stabilityballwallsquat\t444\n'
    'spanishsquat\t445\n'
    'bandbehindkneesquat\t445\n'
    'bandedspanishsquat\t445\n'
    'sissysquat\t446\n'
    'sissysquatmachine\t446\n'
    'sissysquatbench\t446\n'
    'thruster\t447\n'
    'barbellthruster\t447\n'
    'squattopress\t447\n'
    'frontsquattopress\t447\n'
    'dumbbellthruster\t448\n'
    'dbthruster\t448\n'
    'dumbbellsquattopress\t448\n'
    'kettlebellthruster\t448\n'
    'cossacksquat\t449\n'
    'sidetosidesquat\t449\n'
    'cossacklunge\t449\n'
    'pistolsquat\t450\n'
    'pistol\t450\n'
    'singlelegpistolsquat\t450\n'
    'onelegsquat\t450\n'
    'singlelegboxsquat\t451\n'
    'singlelegsquattobox\t451\n'
    'singlelegsittostand\t451\n'
    'onelegchairsquat\t451\n'
    'singlelegbenchsquat\t451\n'
    'singlelegsquat\t452\n'
    'singlelegsquatoffbox\t452\n'
    'slsquat\t452\n'
    'offboxpistol\t452\n'
    'skatersquat\t453\n'
    'airbornelunge\t453\n'
    'skaterlunge\t453\n'
    'shrimpsquat\t454\n'
    'singlelegshrimpsquat\t454\n'
    'wallsit\t455\n'
    'wallsquat\t455\n'
    'wallsquathold\t455\n'
    'wallsithold\t455\n'
    'isometricwallsit\t455\n'
    'singlelegwallsit\t456\n'
    'onelegwallsit\t456\n'
    'singlelegwallsquat\t456\n'
    'spanishsquathold\t457\n'
    'isometricspanishsquat\t457\n'
    'spanishsquatisometric\t457\n'
    'isometricsquat\t458\n'
    'isometricbacksquat\t458\n'
    'squatisometric\t458\n'
    'squatagainstpin\t458\n'
    'isometricpinsquat\t458\n'
    'squathold\t459\n'
    'deepsquathold\t459\n'
    'gobletsquathold\t459\n'
    'bodyweightsquathold\t459\n'
    'splitsquathold\t460\n'
    'isometricsplitsquat\t460\n'
    'splitsquatisometric\t460\n'
    'lungehold\t460\n'
    'isometriclunge\t460\n'
    'legpress\t461\n'
    '45degreelegpress\t461\n'
    'inclinelegpress\t461\n'
    'sledlegpress\t461\n'
    'lp\t461\n'
    'machinelegpress\t461\n'
    'horizontallegpress\t462\n'
    'seatedlegpress\t462\n'
    'selectorisedlegpress\t462\n'
    'stacklegpress\t462\n'
    'singleleglegpress\t463\n'
    'oneleglegpress\t463\n'
    'unilaterallegpress\t463\n'
    'sllegpress\t463\n'
    'highfootlegpress\t464\n'
    'highandwidelegpress\t464\n'
    'legpressfeethigh\t464\n'
    'widestancelegpress\t464\n'
    'lowfootlegpress\t465\n'
    'legpressfeetlow\t465\n'
    'narrowstancelegpress\t465\n'
    'quadfocusedlegpress\t465\n'
    'legextension\t466\n'
    'kneeextension\t466\n'
    'seatedlegextension\t466\n'
    'machinelegextension\t466\n'
    'seatedkneeextension\t466\n'
    'quadextension\t466\n'
    'singleleglegextension\t467\n'
    'oneleglegextension\t467\n'
    'singlelegkneeextension\t467\n'
    'unilaterallegextension\t467\n'
    'reclinedlegextension\t468\n'
    'leanedbacklegextension\t468\n'
    'leanbacklegextension\t468\n'
    'reclinedkneeextension\t468\n'
    'reversenordiccurl\t469\n'
    'reversenordic\t469\n'
    'kneelingquadlean\t469\n'
    'reversenordichamstringcurl\t469\n'
    'naturallegextension\t469\n'
    'bandassistedreversenordiccurl\t470\n'
    'assistedreversenordic\t470\n'
    'cablelegextension\t471\n'
    'standingcablekneeextension\t471\n'
    'cablekneeextension\t471\n'
    'bandlegextension\t472\n'
    'bandedlegextension\t472\n'
    'seatedbandkneeextension\t472\n'
    'bandkneeextension\t472\n'
    'ankleweightlegextension\t473\n'
    'longarcquad\t473\n'
    'seatedkneeextensionwithankleweight\t473\n'
    'ankleweightkneeextension\t473\n'
    'terminalkneeextension\t474\n'
    'tke\t474\n'
    'bandtke\t474\n'
    'bandedterminalkneeextension\t474\n'
    'cabletke\t474\n'
    'isometriclegextension\t475\n'
    'isometrickneeextension\t475\n'
    'legextensionhold\t475\n'
    'kneeextensionisometric\t475\n'
    'quadset\t476\n'
    'quadricepset\t476\n'
    'isometricquadset\t476\n'
    'staticquadcontraction\t476\n'
    'splitsquat\t477\n'
    'bodyweightsplitsquat\t477\n'
    'staticlunge\t477\n'
    'stationarylunge\t477\n'
    'dumbbellsplitsquat\t478\n'
    'dbsplitsquat\t478\n'
    'gobletsplitsquat\t478\n'
    'kettlebellsplitsquat\t478\n'
    'rearfootelevatedsplitsquat\t479\n'
    'bulgariansplitsquat\t479\n'
    'rfess\t479\n'
    'bss\t479\n'
    'dumbbellbulgariansplitsquat\t479\n'
    'dumbbellrearfootelevatedsplitsquat\t479\n'
    'rearfootraisedsplitsquat\t479\n'
    'barbellsplitsquat\t480\n'
    'bbsplitsquat\t480\n'
    'barbellstaticlunge\t480\n'
    'barbellrearfootelevatedsplitsquat\t481\n'
    'barbellbulgariansplitsquat\t481\n'
    'barbellrfess\t481\n'
    'bbrfess\t481\n'
    'frontfootelevatedsplitsquat\t482\n'
    'ffess\t482\n'
    'deficitsplitsquat\t482\n'
    'frontfootraisedsplitsquat\t482\n'
    'guidedbarsplitsquat\t483\n'
    'guidedbarlunge\t483\n'
    'fixedtracksplitsquat\t483\n'
    'handassistedsafetybarsplitsquat\t484\n'
    'handassistedsplitsquat\t484\n'
    'safetybarsplitsquat\t484\n'
    'forwardlunge\t485\n'
    'lunge\t485\n'
    'dumbbelllunge\t485\n'
    'dblunge\t485\n'
    'frontlunge\t485\n'
    'dumbbellforwardlunge\t485\n'
    'gobletlunge\t485\n'
    'kettlebelllunge\t485\n'
    'walkinglunge\t486\n'
    'dumbbellwalkinglunge\t486\n'
    'dbwalkinglunge\t486\n'
    'lungewalk\t486\n'
    'travellinglunge\t486\n'
    'reverselunge\t487\n'
    'dumbbellreverselunge\t487\n'
    'dbreverselunge\t487\n'
    'backwardlunge\t487\n'
    'stepbacklunge\t487\n'
    'rearlunge\t487\n'
    'gobletreverselunge\t487\n'
    'kettlebellreverselunge\t487\n'
    'bodyweightlunge\t488\n'
    'bwlunge\t488\n'
    'bodyweightwalkinglunge\t488\n'
    'bodyweightreverselunge\t488\n'
    'alternatinglunge\t488\n'
    'laterallunge\t489\n'
    'sidelunge\t489\n'
    'dumbbelllaterallunge\t489\n'
    'gobletlaterallunge\t489\n'
    'barbelllunge\t490\n'
    'barbellforwardlunge\t490\n'
    'bblunge\t490\n'
    'barbellfrontlunge\t490\n'
    'barbellreverselunge\t491\n'
    'bbreverselunge\t491\n'
    'barbellstepbacklunge\t491\n'
    'barbellwalkinglunge\t492\n'
    'bbwalkinglunge\t492\n'
    'deficitreverselunge\t493\n'
    'reverselungefrombox\t493\n'
    'deficitstepbacklunge\t493\n'
    'frontrackreverselunge\t494\n'
    'frontracklunge\t494\n'
    'barbellfrontracklunge\t494\n'
    'frontsquatlunge\t494\n'
    'overheadwalkinglunge\t495\n'
    'overheadlunge\t495\n'
    'plateoverheadlunge\t495\n'
    'overheadplatewalkinglunge\t495\n'
    'curtsylunge\t496\n'
    'crossoverlunge\t496\n'
    'curtseylunge\t496\n'
    'crossbehindlunge\t496\n'
    'sliderreverselunge\t497\n'
    'slidingreverselunge\t497\n'
    'slideboardreverselunge\t497\n'
    'slideboardlunge\t497\n'
    'sliderlaterallunge\t498\n'
    'slidinglaterallunge\t498\n'
    'slideboardlaterallunge\t498\n'
    'suspensionlunge\t499\n'
    'suspensionassistedlunge\t499\n'
    'assistedlunge\t499\n'
    'suspensionsplitsquat\t499\n'
    'lungewithrotation\t500\n'
    'rotationallunge\t500\n'
    'medicineballlungewithrotation\t500\n'
    'lungetwist\t500\n'
    'stepup\t501\n'
    'dumbbellstepup\t501\n'
    'dbstepup\t501\n'
    'boxstepup\t501\n'
    'forwardstepup\t501\n'
    'bodyweightstepup\t502\n'
    'bwstepup\t502\n'
    'stepupwithoutload\t502\n'
    'stairstepup\t502\n'
    'barbellstepup\t503\n'
    'bbstepup\t503\n'
    'highstepup\t504\n'
    'highboxstepup\t504\n'
    'lateralstepup\t505\n'
    'sidestepup\t505\n'
    'dumbbelllateralstepup\t505\n'
    'crossoverstepup\t506\n'
    'stepdown\t507\n'
    'lateralstepdown\t507\n'
    'forwardstepdown\t507\n'
    'eccentricstepdown\t507\n'
    'heeltap\t507\n'
    'boxstepdown\t507\n'
    'heelraisedstepup\t508\n'
    'heelelevatedstepup\t508\n'
    'quadstepup\t508\n'
    'frontofboxstepup\t508\n'
    'wedgestepup\t508\n'
    'neckflexion\t509\n'
    'lyingneckflexion\t509\n'
    'plateneckflexion\t509\n'
    'neckcurl\t509\n'
    'plateneckcurl\t509\n'
    'weightedneckflexion\t509\n'
    'neckcrunch\t509\n'
    'neckextension\t510\n'
    'proneneckextension\t510\n'
    'plateneckextension\t510\n'
    'lyingneckextension\t510\n'
    'weightedneckextension\t510\n'
    'isometricneckflexion\t511\n'
    'neckflexionhold\t511\n'
    'handresistedneckflexion\t511\n'
    'manualneckflexion\t511\n'
    'frontneckisometric\t511\n'
    'isometricneckextension\t512\n'
    'neckextensionhold\t512\n'
    'handresistedneckextension\t512\n'
    'manualneckextension\t512\n'
    'rearneckisometric\t512\n'
    'isometricnecksidebend\t513\n'
    'necksidebendhold\t513\n'
    'handresistednecksidebend\t513\n'
    'lateralneckisometric\t513\n'
    'isometriclateralneckflexion\t513\n'
    'sideneckisometric\t513\n'
    'isometricneckrotation\t514\n'
    'neckrotationhold\t514\n'
    'handresistedneckrotation\t514\n'
    'manualneckrotation\t514\n'
    'chintuck\t515\n'
    'deepneckflexorhold\t515\n'
    'craniocervicalflexion\t515\n'
    'lyingchintuck\t515\n'
    'necknod\t515\n'
    'lyingheadlifthold\t516\n'
    'supineheadhold\t516\n'
    'headlift\t516\n'
    'supineneckhold\t516\n'
    'neckflexorendurancehold\t516\n'
    'necksidebend\t517\n'
    'lateralneckflexion\t517\n'
    'sideneckraise\t517\n'
    'lyingnecksidebend\t517\n'
    'platenecksidebend\t517\n'
    'lateralneckraise\t517\n'
    'harnessneckextension\t518\n'
    'neckharness\t518\n'
    'neckharnessextension\t518\n'
    'headharnessextension\t518\n'
    'headharness\t518\n'
    'harnessneckflexion\t519\n'
    'neckharnessflexion\t519\n'
    'headharnessflexion\t519\n'
    'machineneckextension\t520\n'
    'neckmachineextension\t520\n'
    'fourwayneckmachineextension\t520\n'
    'machineneckflexion\t521\n'
    'neckmachine\t521\n'
    'neckmachineflexion\t521\n'
    'fourwayneck\t521\n'
    'fourwayneckmachineflexion\t521\n'
    'machinenecksidebend\t522\n'
    'neckmachinesidebend\t522\n'
    'machinelateralneckflexion\t522\n'
    'bandneckextension\t523\n'
    'bandedneckextension\t523\n'
    'resistancebandneckextension\t523\n'
    'bandneckflexion\t524\n'
    'bandedneckflexion\t524\n'
    'resistancebandneckflexion\t524\n'
    'bandnecksidebend\t525\n'
    'bandednecksidebend\t525\n'
    'resistancebandlateralneckflexion\t525\n'
    'bandneckrotation\t526\n'
    'bandedneckrotation\t526\n'
    'cableneckrotation\t526\n'
    'quadrupedneckhold\t527\n'
    'allfourneckhold\t527\n'
    'fourpointneckhold\t527\n'
    'quadrupedheadretraction\t527\n'
    'stabilityballneckhold\t528\n'
    'ballneckisometric\t528\n'
    'wallballneckhold\t528\n'
    'neckballpress\t528\n'
    'neckbridge\t529\n'
    'backneckbridge\t529\n'
    'rearneckbridge\t529\n'
    'wrestlingbridge\t529\n'
    'headbridge\t529\n'
    'bentoverrow\t530\n'
    'barbellrow\t530\n'
    'bentoverbarbellrow\t530\n'
    'bbrow\t530\n'
    'bentrow\t530\n'
    'barbellbentoverrow\t530\n'
    'bor\t530\n'
    'pullup\t531\n'
    'overhandpullup\t531\n'
    'strictpullup\t531\n'
    'bodyweightpullup\t531\n'
    'pronatedpullup\t531\n'
    'latpulldown\t532\n'
    'pulldown\t532\n'
    'lpd\t532\n'
    'cablepulldown\t532\n'
    'frontpulldown\t532\n'
    'overhandpulldown\t532\n'
    'overhandlatpulldown\t532\n'
    'machinepulldown\t532\n'
    'seatedcablerow\t533\n'
    'cablerow\t533\n'
    'seatedrow\t533\n'
    'lowrow\t533\n'
    'seatedcablepull\t533\n'
    'closegripseatedrow\t533\n'
    'closegripcablerow\t533\n'
    'onearmdumbbellrow\t534\n'
    'dumbbellrow\t534\n'
    'dbrow\t534\n'
    'singlearmdumbbellrow\t534\n'
    'onearmdbrow\t534\n'
    'singlearmdbrow\t534\n'
    'supporteddumbbellrow\t534\n'
    'onearmrow\t534\n'
    'singlearmrow\t534\n'
    'threepointrow\t534\n'
    'chinup\t535\n'
    'underhandpullup\t535\n'
    'chin\t535\n'
    'supinatedpullup\t535\n'
    'bodyweightchinup\t535\n'
    'invertedrow\t536\n'
    'bodyrow\t536\n'
    'bodyweightrow\t536\n'
    'horizontalpullup\t536\n'
    'australianpullup\t536\n'
    'supinerow\t536\n'
    'facepull\t537\n'
    'cablefacepull\t537\n'
    'ropefacepull\t537\n'
    'chestsupporteddumbbellrow\t538\n'
    'chestsupportedrow\t538\n'
    'inclinedumbbellrow\t538\n'
    'chestsupporteddbrow\t538\n'
    'inclinerow\t538\n'
    'inclinebenchrow\t538\n'
    'csr\t538\n'
    'machinerow\t539\n'
    'seatedmachinerow\t539\n'
    'rowmachine\t539\n'
    'chestsupportedmachinerow\t539\n'
    'plateloadedrow\t539\n'
    'seatedrowmachine\t539\n'
    'tbarrow\t540\n'
    'landminerow\t540\n'
    'tbar\t540\n'
    'cornerbarrow\t540\n'
    'standingtbarrow\t540\n'
    'chestsupportedtbarrow\t541\n'
    'supportedtbarrow\t541\n'
    'lyingtbarrow\t541\n'
    'machinetbarrow\t541\n'
    'neutralgriplatpulldown\t542\n'
    'neutralgrippulldown\t542\n'
    'parallelgrippulldown\t542\n'
    'hammergrippulldown\t542\n'
    'closegriplatpulldown\t543\n'
    'closegrippulldown\t543\n'
    'vbarpulldown\t543\n'
    'narrowgrippulldown\t543\n'
    'narrowgriplatpulldown\t543\n'
    'underhandlatpulldown\t544\n'
    'underhandpulldown\t544\n'
    'reversegrippulldown\t544\n'
    'supinatedpulldown\t544\n'
    'reversegriplatpulldown\t544\n'
    'supinatedlatpulldown\t544\n'
    'widegriplatpulldown\t545\n'
    'widegrippulldown\t545\n'
    'widepulldown\t545\n'
    'widelatpulldown\t545\n'
    'onearmlatpulldown\t546\n'
    'singlearmlatpulldown\t546\n'
    'singlearmpulldown\t546\n'
    'onearmpulldown\t546\n'
    'singlearmcablepulldown\t546\n'
    'halfkneelingonearmpulldown\t546\n'
    'behindtheneckpulldown\t547\n'
    'pulldownbehindtheneck\t547\n'
    'btnpulldown\t547\n'
    'rearpulldown\t547\n'
    'bandpulldown\t548\n'
    'bandlatpulldown\t548\n'
    'bandedpulldown\t548\n'
    'resistancebandpulldown\t548\n'
    'plateloadedpulldown\t549\n'
    'leverpulldown\t549\n'
    'convergingpulldown\t549\n'
    'converginglatpulldown\t549\n'
    'assistedpullup\t550\n'
    'machineassistedpullup\t550\n'
    'pullupmachine\t550\n'
    'assistedpullupmachine\t550\n'
    'assistedchinup\t551\n'
    'machineassistedchinup\t551\n'
    'assistedchinupmachine\t551\n'
    'bandassistedpullup\t552\n'
    'bandedpullup\t552\n'
    'bandpullup\t552\n'
    'pullupwithband\t552\n'
    'negativepullup\t553\n'
    'eccentricpullup\t553\n'
    'pulluplowering\t553\n'
    'slowloweringpullup\t553\n'
    'jumpingnegativepullup\t553\n'
    'weightedpullup\t554\n'
    'loadedpullup\t554\n'
    'pullupwithaddedweight\t554\n'
    'weightedchinup\t555\n'
    'loadedchinup\t555\n'
    'chinupwithaddedweight\t555\n'
    'weightedchin\t555\n'
    'neutralgrippullup\t556\n'
    'parallelgrippullup\t556\n'
    'hammergrippullup\t556\n'
    'neutralgripchinup\t556\n'
    'neutralpullup\t556\n'
    'weightedneutralgrippullup\t557\n'
    'loadedneutralgrippullup\t557\n'
    'widegrippullup\t558\n'
    'widepullup\t558\n'
    'widehandpullup\t558\n'
    'closegrippullup\t559\n'
    'narrowgrippullup\t559\n'
    'closegripchinup\t559\n'
    'narrowpullup\t559\n'
    'mixedgrippullup\t560\n'
    'alternatinggrippullup\t560\n'
    'commandopullup\t560\n'
    'mixedgripchinup\t560\n'
    'chesttobarpullup\t561\n'
    'c2bpullup\t561\n'
    'highpullup\t561\n'
    'chesttobar\t561\n'
    'ringpullup\t562\n'
    'gymnasticringpullup\t562\n'
    'suspensionpullup\t562\n'
    'towelpullup\t563\n'
    'towelgrippullup\t563\n'
    'ropepullup\t563\n'
    'lsitpullup\t564\n'
    'lpullup\t564\n'
    'archerpullup\t565\n'
    'sidetosidepullup\t565\n'
    'typewriterpullup\t565\n'
    'onearmchinup\t566\n'
    'singlearmchinup\t566\n'
    'onearmpullup\t566\n'
    'singlearmpullup\t566\n'
    'muscleup\t567\n'
    'barmuscleup\t567\n'
    'strictmuscleup\t567\n'
    'ringmuscleup\t568\n'
    'strictringmuscleup\t568\n'
    'pulluphold\t569\n'
    'isometricpullup\t569\n'
    'toppulluphold\t569\n'
    'pullupisometrichold\t569\n'
    'chinuphold\t570\n'
    'flexedarmhang\t570\n'
    'bentarmhang\t570\n'
    'isometricchinup\t570\n'
    'chinoverbarhold\t570\n'
    'scapularpullup\t571\n'
    'scappullup\t571\n'
    'activehang\t571\n'
    'hangingshoulderbladepull\t571\n'
    'shouldershrugdownhang\t571\n'
    'frontleverhold\t572\n'
    'frontlever\t572\n'
    'tuckfrontlever\t572\n'
    'frontleverrowhold\t572\n'
    'deadstoprow\t573\n'
    'deadstopbarbellrow\t573\n'
    'rowfromthefloor\t573\n'
    'strictfloorrow\t573\n'
    'explosivebarbellrow\t573\n'
    'underhandbarbellrow\t574\n'
    'reversegriprow\t574\n'
    'underhandrow\t574\n'
    'supinatedbarbellrow\t574\n'
    'reversegripbarbellrow\t574\n'
    'underhandbentoverrow\t574\n'
    'widegripbentoverrow\t575\n'
    'widegripbarbellrow\t575\n'
    'elbowoutbarbellrow\t575\n'
    'snatchgriprow\t576\n'
    'snatchgripbarbellrow\t576\n'
    'snatchgripbentoverrow\t576\n'
    'sealrow\t577\n'
    'benchpull\t577\n'
    'lyingbenchrow\t577\n'
    'pronerow\t577\n'
    'pronebarbellrow\t577\n'
    'highbenchrow\t577\n'
    'guidedbarrow\t578\n'
    'guidedbarbentoverrow\t578\n'
    'fixedtrackrow\t578\n'
    'trapbarrow\t579\n'
    'hexbarrow\t579\n'
    'trapbarbentoverrow\t579\n'
    'tempobentoverrow\t580\n'
    'pausedbarbellrow\t580\n'
    'slowbarbellrow\t580\n'
    'pauserow\t580\n'
    'bentoverdumbbellrow\t581\n'
    'twoarmdumbbellrow\t581\n'
    'doubledumbbellrow\t581\n'
    'bentoverdbrow\t581\n'
    'dumbbellbentoverrow\t581\n'
    'kettlebellrow\t582\n'
    'kbrow\t582\n'
    'bentoverkettlebellrow\t582\n'
    'doublekettlebellrow\t582\n'
    'alternatingkettlebellrow\t583\n'
    'gorillarow\t583\n'
    'widestancekettlebellrow\t583\n'
    'onearmkettlebellrow\t584\n'
    'singlearmkettlebellrow\t584\n'
    'onearmkbrow\t584\n'
    'splitstancekettlebellrow\t584\n'
    'onearmlandminerow\t585\n'
    'singlearmlandminerow\t585\n'
    'sideonlandminerow\t585\n'
    'onearmtbarrow\t585\n'
    'angledbarrow\t585\n'
    'plankrow\t586\n'
    'renegaderow\t586\n'
    'pushuppositionrow\t586\n'
    'dumbbellplankrow\t586\n'
    'onearmmachinerow\t587\n'
    'singlearmmachinerow\t587\n'
    'unilateralmachinerow\t587\n'
    'onearmcablerow\t588\n'
    'singlearmcablerow\t588\n'
    'onearmseatedcablerow\t588\n'
    'singlearmseatedrow\t588\n'
    'standingonearmcablerow\t588\n'
    'widegripseatedrow\t589\n'
    'widegripcablerow\t589\n'
    'wideseatedrow\t589\n'
    'widegripseatedcablerow\t589\n'
    'underhandcablerow\t590\n'
    'underhandseatedrow\t590\n'
    'reversegripcablerow\t590\n'
    'supinatedcablerow\t590\n'
    'standingcablerow\t591\n'
    'standingrow\t591\n'
    'splitstancecablerow\t591\n'
    'highrow\t592\n'
    'highcablerow\t592\n'
    'kneelinghighrow\t592\n'
    'machinehighrow\t592\n'
    'halfkneelingcablerow\t592\n'
    'hightolowrow\t592\n'
    'bandrow\t593\n'
    'resistancebandrow\t593\n'
    'bandedrow\t593\n'
    'seatedbandrow\t593\n'
    'standingbandrow\t593\n'
    'invertedrowwithbentknee\t594\n'
    'bentkneeinvertedrow\t594\n'
    'bentkneebodyrow\t594\n'
    'easyinvertedrow\t594\n'
    'feetelevatedinvertedrow\t595\n'
    'elevatedinvertedrow\t595\n'
    'declineinvertedrow\t595\n'
    'weightedinvertedrow\t596\n'
    'loadedinvertedrow\t596\n'
    'underhandinvertedrow\t597\n'
    'reversegripinvertedrow\t597\n'
    'supinatedinvertedrow\t597\n'
    'suspensionrow\t598\n'
    'suspendedrow\t598\n'
    'slingrow\t598\n'
    'ringrow\t598\n'
    'straprow\t598\n'
    'onearmsuspensionrow\t599\n'
    'singlearmsuspensionrow\t599\n'
    'singlearmringrow\t599\n'
    'onearminvertedrow\t599\n'
    'invertedrowhold\t600\n'
    'isometricinvertedrow\t600\n'
    'topinvertedrowhold\t600\n'
    'chestsupportedrearshoulderrow\t601\n'
    'reardeltrow\t601\n'
    'rearshoulderrow\t601\n'
    'widechestsupportedrow\t601\n'
    'elbowoutdumbbellrow\t601\n'
    'dumbbellreardeltrow\t601\n'
    'straightarmpulldown\t602\n'
    'straightarmcablepulldown\t602\n'
    'latpushdown\t602\n'
    'stiffarmpulldown\t602\n'
    'cablepullover\t602\n'
    'standingcablepullover\t602\n'
    'ropestraightarmpulldown\t602\n'
    'bandstraightarmpulldown\t603\n'
    'bandedstraightarmpulldown\t603\n'
    'bandlatpushdown\t603\n'
    'dumbbellpullover\t604\n'
    'dbpullover\t604\n'
    'pullover\t604\n'
    'bentarmpullover\t604\n'
    'crossbenchpullover\t604\n'
    'barbellpullover\t605\n'
    'bentbarpullover\t605\n'
    'machinepullover\t606\n'
    'pullovermachine\t606\n'
    'seatedpullover\t606\n'
    'onearmstraightarmpulldown\t607\n'
    'singlearmstraightarmpulldown\t607\n'
    'singlearmcablepullover\t607\n'
    'lyingcablepullover\t608\n'
    'cablebenchpullover\t608\n'
    'floorcablepullover\t608\n'
    'dumbbellreversefly\t609\n'
    'reversefly\t609\n'
    'reardeltfly\t609\n'
    'reardeltraise\t609\n'
    'bentoverreversefly\t609\n'
    'bentoverlateralraise\t609\n'
    'bentoverfly\t609\n'
    'rearlateralraise\t609\n'
    'dbreversefly\t609\n'
    'rearshoulderfly\t609\n'
    'reverseflye\t609\n'
    'machinereversefly\t610\n'
    'reversepecdeck\t610\n'
    'reardeltmachine\t610\n'
    'machinereardeltfly\t610\n'
    'reversemachinefly\t610\n'
    'rearshouldermachine\t610\n'
    'chestsupportedreversefly\t611\n'
    'inclinereversefly\t611\n'
    'chestsupportedreardeltfly\t611\n'
    'inclinereardeltraise\t611\n'
    'inclinebenchreversefly\t611\n'
    'cablereversefly\t612\n'
    'cablereardeltfly\t612\n'
    'reardeltcablefly\t612\n'
    'reversecablecrossover\t612\n'
    'cablereversecrossover\t612\n'
    'onearmcablereversefly\t613\n'
    'singlearmcablereardeltfly\t613\n'
    'singlearmcablereversefly\t613\n'
    'onearmreardeltcablefly\t613\n'
    'bandpullapart\t614\n'
    'pullapart\t614\n'
    'bandreversefly\t614\n'
    'bandedpullapart\t614\n'
    'suspensionreversefly\t615\n'
    'ringreversefly\t615\n'
    'suspendedreversefly\t615\n'
    'suspensiontfly\t615\n'
    'sidelyingreversefly\t616\n'
    'sidelyingreardeltraise\t616\n'
    'lyingreardeltraise\t616\n'
    'sidelyingrearshoulderfly\t616\n'
    'bandfacepull\t617\n'
    'bandedfacepull\t617\n'
    'resistancebandfacepull\t617\n'
    'suspensionfacepull\t618\n'
    'ringfacepull\t618\n'
    'suspendedfacepull\t618\n'
    'facepullwithexternalrotation\t619\n'
    'facepulltoexternalrotation\t619\n'
    'facepullwithrotation\t619\n'
    'highfacepull\t619\n'
    'barbellshrug\t620\n'
    'bbshrug\t620\n'
    'shrug\t620\n'
    'barbellshouldershrug\t620\n'
    'dumbbellshrug\t621\n'
    'dbshrug\t621\n'
    'dumbbellshouldershrug\t621\n'
    'standingdumbbellshrug\t621\n'
    'trapbarshrug\t622\n'
    'hexbarshrug\t622\n'
    'machineshrug\t623\n'
    'shrugmachine\t623\n'
    'calfmachineshrug\t623\n'
    'levershrug\t623\n'
    'cableshrug\t624\n'
    'lowcableshrug\t624\n'
    'guidedbarshrug\t625\n'
    'fixedtrackshrug\t625\n'
    'kettlebellshrug\t626\n'
    'kbshrug\t626\n'
    'snatchgripshrug\t627\n'
    'widegripshrug\t627\n'
    'snatchshrug\t627\n'
    'behindthebackshrug\t628\n'
    'behindbackbarbellshrug\t628\n'
    'rearshrug\t628\n'
    'powershrug\t629\n'
    'barbellpowershrug\t629\n'
    'jumpshrugfromthehang\t629\n'
    'explosiveshrug\t629\n'
    'chestsupportedshrug\t630\n'
    'inclineshrug\t630\n'
    'proneshrug\t630\n'
    'chestsupporteddumbbellshrug\t630\n'
    'retractionshrug\t630\n'
    'inclinedumbbellshrug\t630\n'
    'shrughold\t631\n'
    'isometricshrug\t631\n'
    'topshrughold\t631\n'
    'benchpress\t632\n'
    'barbellbenchpress\t632\n'
    'flatbenchpress\t632\n'
    'flatbarbellbenchpress\t632\n'
    'bench\t632\n'
    'bp\t632\n'
    'bbbenchpress\t632\n'
    'pushup\t633\n'
    'pressup\t633\n'
    'fullpushup\t633\n'
    'floorpushup\t633\n'
    'dumbbellbenchpress\t634\n'
    'dbbenchpress\t634\n'
    'dbbench\t634\n'
    'flatdumbbellpress\t634\n'
    'flatdbpress\t634\n'
    'dumbbellchestpress\t634\n'
    'dbpress\t634\n'
    'dumbbellpress\t634\n'
    'overheadpress\t635\n'
    'ohp\t635\n'
    'militarypress\t635\n'
    'strictpress\t635\n'
    'standingpress\t635\n'
    'barbelloverheadpress\t635\n'
    'standingbarbellpress\t635\n'
    'barbellshoulderpress\t635\n'
    'standingoverheadpress\t635\n'
    'shoulderpress\t635\n'
    'overheadbarbellpress\t635\n'
    'pressoverhead\t635\n'
    'inclinebenchpress\t636\n'
    'inclinebarbellpress\t636\n'
    'inclinebarbellbenchpress\t636\n'
    'inclinepress\t636\n'
    'inclinebench\t636\n'
    'bbinclinepress\t636\n'
    'inclinedumbbellpress\t637\n'
    'inclinedbpress\t637\n'
    'inclinedumbbellbenchpress\t637\n'
    'inclinedbbenchpress\t637\n'
    'seateddumbbellshoulderpress\t638\n'
    'seateddumbbellpress\t638\n'
    'seateddbpress\t638\n'
    'seateddbshoulderpress\t638\n'
    'dumbbellshoulderpress\t638\n'
    'dbshoulderpress\t638\n'
    'seateddumbbelloverheadpress\t638\n'
    'dbsp\t638\n'
    'dip\t639\n'
    'parallelbardip\t639\n'
    'chestdip\t639\n'
    'bardip\t639\n'
    'tricepdip\t639\n'
    'bodyweightdip\t639\n'
    'machinechestpress\t640\n'
    'chestpress\t640\n'
    'seatedchestpress\t640\n'
    'chestpressmachine\t640\n'
    'seatedmachinepress\t640\n'
    'verticalchestpress\t640\n'
    'closegripbenchpress\t641\n'
    'cgbp\t641\n'
    'closegripbench\t641\n'
    'narrowgripbenchpress\t641\n'
    'closegripbarbellbenchpress\t641\n'
    'machineshoulderpress\t642\n'
    'shoulderpressmachine\t642\n'
    'machineoverheadpress\t642\n'
    'seatedmachineshoulderpress\t642\n'
    'overheadpressmachine\t642\n'
    'dumbbellfly\t643\n'
    'dbfly\t643\n'
    'dumbbellflye\t643\n'
    'flatdumbbellfly\t643\n'
    'chestfly\t643\n'
    'dumbbellchestfly\t643\n'
    'pecfly\t643\n'
    'flatfly\t643\n'
    'cablefly\t644\n'
    'cablecrossover\t644\n'
    'cablechestfly\t644\n'
    'standingcablefly\t644\n'
    'cableflye\t644\n'
    'crossover\t644\n'
    'machinefly\t645\n'
    'pecdeck\t645\n'
    'machinechestfly\t645\n'
    'pecdeckfly\t645\n'
    'seatedflymachine\t645\n'
    'butterflymachine\t645\n'
    'pecflymachine\t645\n'
    'standingdumbbellshoulderpress\t646\n'
    'standingdumbbellpress\t646\n'
    'standingdbpress\t646\n'
    'dumbbelloverheadpress\t646\n'
    'dboverheadpress\t646\n'
    'standingdumbbelloverheadpress\t646\n'
    'weighteddip\t647\n'
    'loadeddip\t647\n'
    'dipwithaddedweight\t647\n'
    'weightedparallelbardip\t647\n'
    'assisteddip\t648\n'
    'machineassisteddip\t648\n'
    'assisteddipmachine\t648\n'
    'declinebenchpress\t649\n'
    'declinebarbellpress\t649\n'
    'declinebarbellbenchpress\t649\n'
    'declinepress\t649\n'
    'declinebench\t649\n'
    'declinedumbbellpress\t650\n'
    'declinedbpress\t650\n'
    'declinedumbbellbenchpress\t650\n'
    'pausedbenchpress\t651\n'
    'pausebench\t651\n'
    'pausebenchpress\t651\n'
    'competitionbenchpress\t651\n'
    'compbench\t651\n'
    'benchpresswithalongpause\t652\n'
    'longpausebenchpress\t652\n'
    '3secondpausebenchpress\t652\n'
    'widegripbenchpress\t653\n'
    'widebenchpress\t653\n'
    'widegripbench\t653\n'
    'benchpressstoppedabovethechest\t654\n'
    'shortstopbenchpress\t654\n'
    'hoverbenchpress\t654\n'
    'pinbenchpress\t655\n'
    'pinpress\t655\n'
    'benchpressoffpin\t655\n'
    'deadstartbenchpress\t655\n'
    'rackbenchpress\t655\n'
    'boardbenchpress\t656\n'
    'boardpress\t656\n'
    'partialbenchpress\t656\n'
    'floorpress\t657\n'
    'barbellfloorpress\t657\n'
    'underhandgripbenchpress\t658\n'
    'reversegripbenchpress\t658\n'
    'supinatedbenchpress\t658\n'
    'speedbenchpress\t659\n'
    'dynamiceffortbenchpress\t659\n'
    'debenchpress\t659\n'
    'fastbenchpress\t659\n'
    'benchpresswithband\t660\n'
    'bandedbenchpress\t660\n'
    'benchpressagainstband\t660\n'
    'benchpresswithchain\t661\n'
    'chainbenchpress\t661\n'
    'benchpressagainstchain\t661\n'
    'tempobenchpress\t662\n'
    'slowbenchpress\t662\n'
    'slowloweringbenchpress\t662\n'
    'guidedbarbenchpress\t663\n'
    'guidedbenchpress\t663\n'
    'fixedtrackbenchpress\t663\n'
    'guidedbarinclinepress\t664\n'
    'guidedinclinepress\t664\n'
    'fixedtrackinclinepress\t664\n'
    'benchpressthrow\t665\n'
    'benchthrow\t665\n'
    'ballisticbenchpress\t665\n'
    'neutralgripdumbbellbenchpress\t666\n'
    'neutralgripdumbbellpress\t666\n'
    'hammergripdumbbellpress\t666\n'
    'neutralgripdbpress\t666\n'
    'parallelgripdumbbellpress\t666\n'
    'onearmdumbbellbenchpress\t667\n'
    'singlearmdumbbellbenchpress\t667\n'
    'onearmdbpress\t667\n'
    'singlearmdbbenchpress\t667\n'
    'alternatingdumbbellbenchpress\t668\n'
    'alternatingdbbenchpress\t668\n'
    'alternatingdumbbellpress\t668\n'
    'dumbbellfloorpress\t669\n'
    'dbfloorpress\t669\n'
    'kettlebellfloorpress\t670\n'
    'kbfloorpress\t670\n'
    'onearmkettlebellfloorpress\t670\n'
    'dumbbellsqueezepress\t671\n'
    'squeezepress\t671\n'
    'dbsqueezepress\t671\n'
    'hexpress\t671\n'
    'crushpress\t671\n'
    'platesqueezepress\t672\n'
    'platepressout\t672\n'
    'standingplatepress\t672\n'
    'steepinclinedumbbellpress\t673\n'
    'highinclinedumbbellpress\t673\n'
    'highinclinedbpress\t673\n'
    '60degreeinclinepress\t673\n'
    'inclinemachinepress\t674\n'
    'machineinclinepress\t674\n'
    'inclinechestpressmachine\t674\n'
    'inclinemachinechestpress\t674\n'
    'declinemachinepress\t675\n'
    'declinechestpressmachine\t675\n'
    'machinedeclinepress\t675\n'
    'onearmmachinechestpress\t676\n'
    'singlearmmachinechestpress\t676\n'
    'unilateralchestpress\t676\n'
    'standingcablechestpress\t677\n'
    'cablechestpress\t677\n'
    'cablepress\t677\n'
    'onearmcablepress\t678\n'
    'singlearmcablepress\t678\n'
    'singlearmcablechestpress\t678\n'
    'splitstancecablepress\t678\n'
    'bandchestpress\t679\n'
    'bandedchestpress\t679\n'
    'resistancebandchestpress\t679\n'
    'inclinedumbbellfly\t680\n'
    'inclinefly\t680\n'
    'inclinedbfly\t680\n'
    'inclinechestfly\t680\n'
    'declinedumbbellfly\t681\n'
    'declinefly\t681\n'
    'declinedbfly\t681\n'
    'lowtohighcablefly\t682\n'
    'lowcablefly\t682\n'
    'lowtohighcrossover\t682\n'
    'upwardcablefly\t682\n'
    'hightolowcablefly\t683\n'
    'highcablefly\t683\n'
    'hightolowcrossover\t683\n'
    'downwardcablefly\t683\n'
    'onearmcablefly\t684\n'
    'singlearmcablefly\t684\n'
    'singlearmcablecrossover\t684\n'
    'lyingcablefly\t685\n'
    'cablebenchfly\t685\n'
    'flatbenchcablefly\t685\n'
    'inclinecablefly\t686\n'
    'inclinebenchcablefly\t686\n'
    'bandfly\t687\n'
    'bandchestfly\t687\n'
    'resistancebandfly\t687\n'
    'suspensionfly\t688\n'
    'ringfly\t688\n'
    'suspendedchestfly\t688\n'
    'slingfly\t688\n'
    'inclinepushup\t689\n'
    'handelevatedpushup\t689\n'
    'elevatedpushup\t689\n'
    'pushuponabench\t689\n'
    'boxpushup\t689\n'
    'kneepushup\t690\n'
    'kneelingpushup\t690\n'
    'modifiedpushup\t690\n'
    'wallpushup\t691\n'
    'wallpressup\t691\n'
    'standingwallpushup\t691\n'
    'declinepushup\t692\n'
    'feetelevatedpushup\t692\n'
    'feetuppushup\t692\n'
    'closegrippushup\t693\n'
    'narrowpushup\t693\n'
    'closehandpushup\t693\n'
    'triceppushup\t693\n'
    'diamondpushup\t694\n'
    'trianglepushup\t694\n'
    'widepushup\t695\n'
    'widegrippushup\t695\n'
    'widehandpushup\t695\n'
    'weightedpushup\t696\n'
    'loadedpushup\t696\n'
    'pushupwithplate\t696\n'
    'weightedpressup\t696\n'
    'deficitpushup\t697\n'
    'deeppushup\t697\n'
    'pushuponhandle\t697\n'
    'pushupbetweenblock\t697\n'
    'suspensionpushup\t698\n'
    'suspendedpushup\t698\n'
    'slingpushup\t698\n'
    'ringpushup\t699\n'
    'gymnasticringpushup\t699\n'
    'bandresistedpushup\t700\n'
    'bandedpushup\t700\n'
    'pushupwithband\t700\n'
    'handreleasepushup\t701\n'
    'deadstoppushup\t701\n'
    'releasepushup\t701\n'
    'tempopushup\t702\n'
    'slowpushup\t702\n'
    'slowloweringpushup\t702\n'
    'eccentricpushup\t702\n'
    'negativepushup\t702\n'
    'pausedpushup\t703\n'
    'pausepushup\t703\n'
    'pushuphold\t704\n'
    'isometricpushup\t704\n'
    'lowpushuphold\t704\n'
    'midpushuphold\t704\n'
    'pushupwithrotation\t705\n'
    'tpushup\t705\n'
    'rotatingpushup\t705\n'
    'plyometricpushup\t706\n'
    'plyopushup\t706\n'
    'clappushup\t706\n'
    'clappingpushup\t706\n'
    'explosivepushup\t706\n'
    'depthpushup\t707\n'
    'droppushup\t707\n'
    'depthdroppushup\t707\n'
    'archerpushup\t708\n'
    'sidetosidepushup\t708\n'
    'typewriterpushup\t708\n'
    'onearmpushup\t709\n'
    'singlearmpushup\t709\n'
    'forwardleanpushup\t710\n'
    'pseudoplanchepushup\t710\n'
    'plancheleanpushup\t710\n'
    'swoopingpushup\t711\n'
    'hindupushup\t711\n'
    'divebomberpushup\t711\n'
    'pikepushup\t712\n'
    'pikepress\t712\n'
    'shoulderpushup\t712\n'
    'feetelevatedpikepushup\t713\n'
    'elevatedpikepushup\t713\n'
    'boxpikepushup\t713\n'
    'handstandpushup\t714\n'
    'hspu\t714\n'
    'wallhandstandpushup\t714\n'
    'verticalpushup\t714\n'
    'ringdip\t715\n'
    'gymnasticringdip\t715\n'
    'straightbardip\t716\n'
    'barsupportdip\t716\n'
    'singlebardip\t716\n'
    'machinedip\t717\n'
    'seateddipmachine\t717\n'
    'dipmachine\t717\n'
    'seatedmachinedip\t717\n'
    'benchdip\t718\n'
    'chairdip\t718\n'
    'boxdip\t718\n'
    'feetsupporteddip\t718\n'
    'bandassisteddip\t719\n'
    'bandeddip\t719\n'
    'assisteddipwithband\t719\n'
    'negativedip\t720\n'
    'eccentricdip\t720\n'
    'diplowering\t720\n'
    'slowloweringdip\t720\n'
    'dipsupporthold\t721\n'
    'supporthold\t721\n'
    'topdiphold\t721\n'
    'parallelbarhold\t721\n'
    'pushpress\t722\n'
    'barbellpushpress\t722\n'
    'seatedbarbellshoulderpress\t723\n'
    'seatedbarbellpress\t723\n'
    'seatedmilitarypress\t723\n'
    'seatedoverheadpress\t723\n'
    'seatedbarbelloverheadpress\t723\n'
    'behindtheneckpress\t724\n'
    'btnpress\t724\n'
    'pressbehindtheneck\t724\n'
    'behindneckpress\t724\n'
    'seatedflooroverheadpress\t725\n'
    'floorseatedpress\t725\n'
    'straightlegseatedpress\t725\n'
    'pinoverheadpress\t726\n'
    'overheadpinpress\t726\n'
    'deadstartoverheadpress\t726\n'
    'partialoverheadpress\t726\n'
    'pausedoverheadpress\t727\n'
    'pauseoverheadpress\t727\n'
    'landminepress\t728\n'
    'onearmlandminepress\t728\n'
    'singlearmlandminepress\t728\n'
    'angledbarpress\t728\n'
    'cornerpress\t728\n'
    'halfkneelinglandminepress\t729\n'
    'kneelinglandminepress\t729\n'
    'halfkneelingangledbarpress\t729\n'
    'twoarmlandminepress\t730\n'
    'twohandlandminepress\t730\n'
    'doublearmlandminepress\t730\n'
    'onearmdumbbelloverheadpress\t731\n'
    'singlearmdumbbellpress\t731\n'
    'singlearmdboverheadpress\t731\n'
    'onearmdumbbellpress\t731\n'
    'onearmdbshoulderpress\t731\n'
    'singlearmdumbbellshoulderpress\t731\n'
    'halfkneelingoverheadpress\t732\n'
    'halfkneelingdumbbellpress\t732\n'
    'halfkneelingdumbbelloverheadpress\t732\n'
    'halfkneelingkettlebellpress\t732\n'
    'alternatingdumbbellshoulderpress\t733\n'
    'alternatingdbshoulderpress\t733\n'
    'alternatingdumbbelloverheadpress\t733\n'
    'kettlebelloverheadpress\t734\n'
    'kettlebellpress\t734\n'
    'kbpress\t734\n'
    'onearmkettlebellpress\t734\n'
    'kettlebellstrictpress\t734\n'
    'singlearmkettlebellpress\t734\n'
    'bottomupkettlebellpress\t735\n'
    'bottomuppress\t735\n'
    'upsidedownkettlebellpress\t735\n'
    'doublekettlebelloverheadpress\t736\n'
    'doublekettlebellpress\t736\n'
    'doublekbpress\t736\n'
    'twokettlebellpress\t736\n'
    'rotatingdumbbellshoulderpress\t737\n'
    'rotationaldumbbellpress\t737\n'
    'twistingdumbbellpress\t737\n'
    'palmturningpress\t737\n'
    'neutralgripdumbbellshoulderpress\t738\n'
    'neutralgripshoulderpress\t738\n'
    'hammergripshoulderpress\t738\n'
    'palminshoulderpress\t738\n'
    'neutralgripoverheadpress\t738\n'
    'dumbbellpushpress\t739\n'
    'dbpushpress\t739\n'
    'guidedbarshoulderpress\t740\n'
    'guidedbaroverheadpress\t740\n'
    'fixedtrackshoulderpress\t740\n'
    'cableshoulderpress\t741\n'
    'cableoverheadpress\t741\n'
    'standingcableshoulderpress\t741\n'
    'bandoverheadpress\t742\n'
    'bandshoulderpress\t742\n'
    'bandedoverheadpress\t742\n'
    'resistancebandshoulderpress\t742\n'
    'sandbagoverheadpress\t743\n'
    'sandbagshoulderpress\t743\n'
    'sandbagpress\t743\n'
    'lateralraise\t744\n'
    'dumbbelllateralraise\t744\n'
    'sideraise\t744\n'
    'dblateralraise\t744\n'
    'sidelateralraise\t744\n'
    'latraise\t744\n'
    'dumbbellsideraise\t744\n'
    'standinglateralraise\t744\n'
    'sidedeltraise\t744\n'
    'frontraise\t745\n'
    'dumbbellfrontraise\t745\n'
    'dbfrontraise\t745\n'
    'standingfrontraise\t745\n'
    'frontdeltraise\t745\n'
    'cablelateralraise\t746\n'
    'onearmcablelateralraise\t746\n'
    'singlearmcablelateralraise\t746\n'
    'cablesideraise\t746\n'
    'lowcablelateralraise\t746\n'
    'machinelateralraise\t747\n'
    'lateralraisemachine\t747\n'
    'machinesideraise\t747\n'
    'cableexternalrotation\t748\n'
    'externalrotation\t748\n'
    'externalshoulderrotation\t748\n'
    'standingexternalrotation\t748\n'
    'standingcableexternalrotation\t748\n'
    'cableer\t748\n'
    'bandexternalrotation\t749\n'
    'bandedexternalrotation\t749\n'
    'resistancebandexternalrotation\t749\n'
    'bander\t749\n'
    'rotatorcuffbandwork\t749\n'
    'sidelyingexternalrotation\t750\n'
    'sidelyingdumbbellexternalrotation\t750\n'
    'lyingexternalrotation\t750\n'
    'sidelyinger\t750\n'
    'dumbbellexternalrotation\t750\n'
    'cableinternalrotation\t751\n'
    'internalrotation\t751\n'
    'internalshoulderrotation\t751\n'
    'standinginternalrotation\t751\n'
    'cableir\t751\n'
    'bandinternalrotation\t752\n'
    'bandedinternalrotation\t752\n'
    'resistancebandinternalrotation\t752\n'
    'bandir\t752\n'
    'uprightrow\t753\n'
    'barbelluprightrow\t753\n'
    'bentbaruprightrow\t753\n'
    'bbuprightrow\t753\n'
    'dumbbelluprightrow\t754\n'
    'dbuprightrow\t754\n'
    'cableuprightrow\t755\n'
    'ropeuprightrow\t755\n'
    'lowcableuprightrow\t755\n'
    'kettlebelluprightrow\t756\n'
    'kbuprightrow\t756\n'
    'scapularpushup\t757\n'
    'pushupplu\t757\n'
    'scappushup\t757\n'
    'serratupushup\t757\n'
    'shoulderbladepushup\t757\n'
    'seatedlateralraise\t758\n'
    'seateddumbbelllateralraise\t758\n'
    'seatedsideraise\t758\n'
    'seateddblateralraise\t758\n'
    'leaninglateralraise\t759\n'
    'leanawaylateralraise\t759\n'
    'leaningcablelateralraise\t759\n'
    'leanawaycablelateralraise\t759\n'
    'bandlateralraise\t760\n'
    'bandedlateralraise\t760\n'
    'resistancebandlateralraise\t760\n'
    'onearmdumbbelllateralraise\t761\n'
    'singlearmlateralraise\t761\n'
    'singlearmdumbbelllateralraise\t761\n'
    'onearmlateralraise\t761\n'
    'sidelyinglateralraise\t762\n'
    'lyinglateralraise\t762\n'
    'inclinesidelyinglateralraise\t762\n'
    'sidelyingabductionraise\t762\n'
    'bentarmlateralraise\t763\n'
    'bentelbowlateralraise\t763\n'
    'shortleverlateralraise\t763\n'
    'partiallateralraise\t764\n'
    'lateralraisepartial\t764\n'
    'bottomhalflateralraise\t764\n'
    'fullrangelateralraise\t765\n'
    'overheadlateralraise\t765\n'
    'thumbuplateralraisetooverhead\t765\n'
    'kettlebelllateralraise\t766\n'
    'kblateralraise\t766\n'
    'lateralraisehold\t767\n'
    'isometriclateralraise\t767\n'
    'staticlateralraise\t767\n'
    'platefrontraise\t768\n'
    'weightplatefrontraise\t768\n'
    'twohandplateraise\t768\n'
    'barbellfrontraise\t769\n'
    'bbfrontraise\t769\n'
    'cablefrontraise\t770\n'
    'ropefrontraise\t770\n'
    'lowcablefrontraise\t770\n'
    'bandfrontraise\t771\n'
    'bandedfrontraise\t771\n'
    'resistancebandfrontraise\t771\n'
    'inclinefrontraise\t772\n'
    'inclinebenchfrontraise\t772\n'
    'seatedinclinefrontraise\t772\n'
    'alternatingfrontraise\t773\n'
    'alternatingdumbbellfrontraise\t773\n'
    'onearmfrontraise\t773\n'
    'singlearmfrontraise\t773\n'
    'scaptionraise\t774\n'
    'scaption\t774\n'
    'fullcanraise\t774\n'
    'thumbupraise\t774\n'
    'scapularplaneraise\t774\n'
    'dumbbellscaption\t774\n'
    'externalrotationat90degree\t775\n'
    '90/90externalrotation\t775\n'
    '9090externalrotation\t775\n'
    'abductedexternalrotation\t775\n'
    'highexternalrotation\t775\n'
    'seatedexternalrotationontheknee\t776\n'
    'kneesupportedexternalrotation\t776\n'
    'elbowonkneeexternalrotation\t776\n'
    'seateddumbbellexternalrotation\t776\n'
    'proneexternalrotation\t777\n'
    'prone90/90externalrotation\t777\n'
    'facedownexternalrotation\t777\n'
    'isometricexternalrotation\t778\n'
    'externalrotationhold\t778\n'
    'wallexternalrotation\t778\n'
    'isometricer\t778\n'
    'doublebandexternalrotation\t779\n'
    'twoarmbandexternalrotation\t779\n'
    'bilateralbandexternalrotation\t779\n'
    'internalrotationat90degree\t780\n'
    '90/90internalrotation\t780\n'
    '9090internalrotation\t780\n'
    'abductedinternalrotation\t780\n'
    'isometricinternalrotation\t781\n'
    'internalrotationhold\t781\n'
    'wallinternalrotation\t781\n'
    'isometricir\t781\n'
    'highpullwithexternalrotation\t782\n'
    'cubanrotation\t782\n'
    'cubanpress\t782\n'
    'musclerotation\t782\n'
    'dumbbellscarecrow\t782\n'
    'yraise\t783\n'
    'proneyraise\t783\n'
    'inclineyraise\t783\n'
    'proney\t783\n'
    'lowertrapraise\t783\n'
    'dumbbellyraise\t783\n'
    'chestsupportedyraise\t783\n'
    'cableyraise\t784\n'
    'standingcableyraise\t784\n'
    'lowcableyraise\t784\n'
    'suspensionyraise\t785\n'
    'ringyraise\t785\n'
    'suspensionyfly\t785\n'
    'traise\t786\n'
    'pronetraise\t786\n'
    'pronet\t786\n'
    'inclinetraise\t786\n'
    'pronehorizontalabduction\t786\n'
    'wraise\t787\n'
    'pronewraise\t787\n'
    'pronew\t787\n'
    'inclinewraise\t787\n'
    'iytraise\t788\n'
    'iyt\t788\n'
    'ytw\t788\n'
    'ytwl\t788\n'
    'proneiyt\t788\n'
    'ytwraise\t788\n'
    'ityw\t788\n'
    'kneelingscapularpushup\t789\n'
    'quadrupedscapularpushup\t789\n'
    'handandkneescapularpushup\t789\n'
    'kneepushupplu\t789\n'
    'wallscapularpushup\t790\n'
    'wallpushupplu\t790\n'
    'standingscapularpushup\t790\n'
    'feetelevatedscapularpushup\t791\n'
    'elevatedpushupplu\t791\n'
    'declinescapularpushup\t791\n'
    'forearmscapularpushup\t792\n'
    'plankscapularpushup\t792\n'
    'elbowpushupplu\t792\n'
    'forearmpushupplu\t792\n'
    'serratupunch\t793\n'
    'dumbbellserratupunch\t793\n'
    'supineprotraction\t793\n'
    'lyingpunch\t793\n'
    'supineserratupress\t793\n'
    'dumbbellprotraction\t793\n'
    'cableserratupunch\t794\n'
    'standingcablepunch\t794\n'
    'cableprotraction\t794\n'
    'bandserratupunch\t794\n'
    'wallslide\t795\n'
    'scapularwallslide\t795\n'
    'forearmwallslide\t795\n'
    'wallangel\t795\n'
    'floorslide\t795\n'
    'wallslidewithband\t796\n'
    'bandedwallslide\t796\n'
    'bandwallslide\t796\n'
    'overheadshrug\t797\n'
    'overheadbarbellshrug\t797\n'
    'snatchgripoverheadshrug\t797\n'
    'presspositionshrug\t797\n'
    'scapulardip\t798\n'
    'dipshrug\t798\n'
    'straightarmdip\t798\n'
    'supportshrug\t798\n'
    'shoulderdepressiononbar\t798\n'
    'machineshoulderdepression\t799\n'
    'scapularpulldown\t799\n'
    'straightarmscapularpulldown\t799\n'
    'pulldownshrug\t799\n'
    'latpulldownshrug\t799\n'
    'straightarmrow\t800\n'
    'scapularrow\t800\n'
    'scapularretraction\t800\n'
    'seatedscapularretraction\t800\n'
    'rowshrug\t800\n'
    'cablescapularretraction\t800\n'
    'bandscapularretraction\t801\n'
    'bandretraction\t801\n'
    'bandedretraction\t801\n'
    'shoulderbladesqueeze\t801\n'
    'scapularsqueeze\t801\n'
    'handstandhold\t802\n'
    'wallhandstand\t802\n'
    'wallhandstandhold\t802\n'
    'handstand\t802\n'
    'chesttowallhandstand\t802\n'
    'pikehold\t803\n'
    'pikehandstandhold\t803\n'
    'boxpikehold\t803\n'
    'feetonboxhandstandhold\t803\n'
    'overheadhold\t804\n'
    'barbelloverheadhold\t804\n'
    'isometricoverheadhold\t804\n'
    'overheadlockouthold\t804\n'
    'kettlebellhalo\t805\n'
    'halo\t805\n'
    'kbhalo\t805\n'
    'platehalo\t805\n'
    'headcircle\t805\n'
    'plank\t806\n'
    'frontplank\t806\n'
    'forearmplank\t806\n'
    'elbowplank\t806\n'
    'proneplank\t806\n'
    'plankhold\t806\n'
    'lowplank\t806\n'
    'sideplank\t807\n'
    'sidebridge\t807\n'
    'lateralplank\t807\n'
    'forearmsideplank\t807\n'
    'sideplankhold\t807\n'
    'deadbug\t808\n'
    'alternatingdeadbug\t808\n'
    'dyingbug\t808\n'
    'crunch\t809\n'
    'abcrunch\t809\n'
    'floorcrunch\t809\n'
    'abdominalcrunch\t809\n'
    'curluptotheshoulderblade\t809\n'
    'basiccrunch\t809\n'
    'hanginglegraise\t810\n'
    'hangingstraightlegraise\t810\n'
    'straightleghangingraise\t810\n'
    'hlr\t810\n'
    'legraiseonthebar\t810\n'
    'hangingkneeraise\t811\n'
    'hkr\t811\n'
    'hangingkneetuck\t811\n'
    'kneeraiseonthebar\t811\n'
    'hangingbentlegraise\t811\n'
    'birddog\t812\n'
    'quadrupedarmandlegraise\t812\n'
    'alternatingbirddog\t812\n'
    'allfourarmandlegreach\t812\n'
    'abwheelrollout\t813\n'
    'rollout\t813\n'
    'abrollout\t813\n'
    'kneelingrollout\t813\n'
    'wheelrollout\t813\n'
    'abwheel\t813\n'
    'kneelingabwheelrollout\t813\n'
    'antirotationpress\t814\n'
    'cableantirotationpress\t814\n'
    'pressout\t814\n'
    'cablepressout\t814\n'
    'standingantirotationpress\t814\n'
    'antirotationhold\t814\n'
    'cablewoodchop\t815\n'
    'woodchop\t815\n'
    'hightolowchop\t815\n'
    'cablechop\t815\n'
    'hightolowwoodchop\t815\n'
    'cablewoodchopper\t815\n'
    'woodchopper\t815\n'
    'cablecrunch\t816\n'
    'kneelingcablecrunch\t816\n'
    'ropecrunch\t816\n'
    'cableabcrunch\t816\n'
    'weightedcablecrunch\t816\n'
    'situp\t817\n'
    'bentkneesitup\t817\n'
    'floorsitup\t817\n'
    'fullsitup\t817\n'
    'russiantwist\t818\n'
    'seatedtwist\t818\n'
    'seatedrotation\t818\n'
    'medicineballtwist\t818\n'
    'platetwist\t818\n'
    'pronebackextension\t819\n'
    'floorbackextension\t819\n'
    'pronebackraise\t819\n'
    'pronetrunkraise\t819\n'
    'proneextension\t819\n'
    'floorbackraise\t819\n'
    'kneeplank\t820\n'
    'kneelingplank\t820\n'
    'halfplank\t820\n'
    'shortplank\t820\n'
    'highplank\t821\n'
    'straightarmplank\t821\n'
    'pushuppositionplank\t821\n'
    'pushupplank\t821\n'
    'handplank\t821\n'
    'inclineplank\t822\n'
    'elevatedplank\t822\n'
    'handelevatedplank\t822\n'
    'benchplank\t822\n'
    'longleverplank\t823\n'
    'hardstyleplank\t823\n'
    'extendedplank\t823\n'
    'bodytensionplank\t823\n'
    'hardplank\t823\n'
    'weightedplank\t824\n'
    'loadedplank\t824\n'
    'plateplank\t824\n'
    'feetelevatedplank\t825\n'
    'declineplank\t825\n'
    'plankshouldertap\t826\n'
    'shouldertap\t826\n'
    'planktap\t826\n'
    'plankwithleglift\t827\n'
    'singlelegplank\t827\n'
    'threepointplank\t827\n'
    'planklegraise\t827\n'
    'plankwitharmreach\t828\n'
    'plankreach\t828\n'
    'plankarmlift\t828\n'
    'twopointplank\t828\n'
    'plankdrag\t829\n'
    'plankpullthrough\t829\n'
    'dumbbelldrag\t829\n'
    'kettlebelldrag\t829\n'
    'plankdumbbellpullthrough\t829\n'
    'stabilityballplank\t830\n'
    'swissballplank\t830\n'
    'exerciseballplank\t830\n'
    'ballplank\t830\n'
    'stabilityballcircleplank\t831\n'
    'stirthepot\t831\n'
    'ballcircle\t831\n'
    'plankcircleontheball\t831\n'
    'bodysaw\t832\n'
    'planksaw\t832\n'
    'slidingplanksaw\t832\n'
    'suspensionbodysaw\t832\n'
    'suspensionplank\t833\n'
    'feetsuspendedplank\t833\n'
    'slingplank\t833\n'
    'plankupdown\t834\n'
    'updownplank\t834\n'
    'planktopushup\t834\n'
    'walkingplank\t834\n'
    'commandoplank\t834\n'
    'plankwithhipdip\t835\n'
    'plankhipdip\t835\n'
    'planktwist\t835\n'
    'rotatingplank\t835\n'
    'bearhold\t836\n'
    'bearplank\t836\n'
    'hoveringquadrupedhold\t836\n'
    'beasthold\t836\n'
    'quadrupedhover\t836\n'
    'reverseplank\t837\n'
    'backplank\t837\n'
    'supineplank\t837\n'
    'reversebridgehold\t837\n'
    'chineseplank\t837\n'
    'kneesideplank\t838\n'
    'kneelingsideplank\t838\n'
    'shortsideplank\t838\n'
    'bentkneesideplank\t838\n'
    'halfsideplank\t838\n'
    'straightarmsideplank\t839\n'
    'highsideplank\t839\n'
    'handsideplank\t839\n'
    'sideplankwithlegraise\t840\n'
    'sideplankleglift\t840\n'
    'starplank\t840\n'
    'weightedsideplank\t841\n'
    'loadedsideplank\t841\n'
    'dumbbellsideplank\t841\n'
    'feetelevatedsideplank\t842\n'
    'declinesideplank\t842\n'
    'sideplankdip\t843\n'
    'sideplankhiplift\t843\n'
    'sideplankraise\t843\n'
    'sidebridgeraise\t843\n'
    'sideplankwithrotation\t844\n'
    'sideplankthreadthrough\t844\n'
    'sideplankreachunder\t844\n'
    'threadtheneedleplank\t844\n'
    'sideplankrow\t845\n'
    'sideplankcablerow\t845\n'
    'sideplankbandrow\t845\n'
    'sideleanhold\t846\n'
    'backextensionbenchsidehold\t846\n'
    'horizontalsidehold\t846\n'
    'sideholdonthebench\t846\n'
    'dumbbellsidebend\t847\n'
    'sidebend\t847\n'
    'dbsidebend\t847\n'
    'standingsidebend\t847\n'
    'weightedsidebend\t847\n'
    'cablesidebend\t848\n'
    'lowcablesidebend\t848\n'
    'sidebendonthebackextensionbench\t849\n'
    'lateralbackextension\t849\n'
    'sideraiseonthebench\t849\n'
    'obliqueraise\t849\n'
    '45degreesidebend\t849\n'
    'sidecrunch\t850\n'
    'obliquecrunch\t850\n'
    'sidelyingcrunch\t850\n'
    'lyingsidecrunch\t850\n'
    'kettlebellwindmill\t851\n'
    'windmill\t851\n'
    'kbwindmill\t851\n'
    'overheadwindmill\t851\n'
    'overheadsidebend\t852\n'
    'waitersidebend\t852\n'
    'singlearmoverheadsidebend\t852\n'
    'bandsidebend\t852\n'
    'curlup\t853\n'
    'onekneecurlup\t853\n'
    'partialcurlup\t853\n'
    'curlupwithhandundertheback\t853\n'
    'weightedcrunch\t854\n'
    'platecrunch\t854\n'
    'dumbbellcrunch\t854\n'
    'loadedcrunch\t854\n'
    'machinecrunch\t855\n'
    'abmachine\t855\n'
    'abcrunchmachine\t855\n'
    'abdominalmachine\t855\n'
    'seatedcrunchmachine\t855\n'
    'trunkflexionmachine\t855\n'
    'standingcablecrunch\t856\n'
    'standingropecrunch\t856\n'
    'stabilityballcrunch\t857\n'
    'swissballcrunch\t857\n'
    'exerciseballcrunch\t857\n'
    'ballcrunch\t857\n'
    'weightedstabilityballcrunch\t858\n'
    'weightedballcrunch\t858\n'
    'weightedswissballcrunch\t858\n'
    'longarmcrunch\t859\n'
    'straightarmcrunch\t859\n'
    'longlevercrunch\t859\n'
    'armoverheadcrunch\t859\n'
    'bicyclecrunch\t860\n'
    'bicycle\t860\n'
    'elbowtokneecrunch\t860\n'
    'alternatingelbowtokneecrunch\t860\n'
    'crossbodycrunch\t860\n'
    'twistingcrunch\t860\n'
    'heeltouchcrunch\t861\n'
    'heeltouch\t861\n'
    'alternatingheeltouch\t861\n'
    'sidetosidecrunch\t861\n'
    'penguincrunch\t861\n'
    'reversecrunch\t862\n'
    'reversecurlup\t862\n'
    'pelviccurl\t862\n'
    'lyinghipraise\t862\n'
    'floorreversecrunch\t862\n'
    'inclinereversecrunch\t863\n'
    'declinebenchreversecrunch\t863\n'
    'slantboardreversecrunch\t863\n'
    'cablereversecrunch\t864\n'
    'lowcablereversecrunch\t864\n'
    'weightedreversecrunch\t864\n'
    'declinesitup\t865\n'
    'declinebenchsitup\t865\n'
    'slantboardsitup\t865\n'
    'declinecrunch\t865\n'
    'weightedsitup\t866\n'
    'loadedsitup\t866\n'
    'platesitup\t866\n'
    'situpwithweight\t866\n'
    'weighteddeclinesitup\t867\n'
    'loadeddeclinesitup\t867\n'
    'declinesitupwithplate\t867\n'
    'situpwithrotation\t868\n'
    'twistingsitup\t868\n'
    'situpwithtwist\t868\n'
    'obliquesitup\t868\n'
    'glutehambenchsitup\t869\n'
    'hyperextensionbenchsitup\t869\n'
    'horizontalbenchsitup\t869\n'
    'ghdsitup\t869\n'
    'butterflysitup\t870\n'
    'soletogethersitup\t870\n'
    'vup\t871\n'
    'jackknife\t871\n'
    'vsitup\t871\n'
    'jackknifesitup\t871\n'
    'pikeuponthefloor\t871\n'
    'tuckup\t872\n'
    'kneetucksitup\t872\n'
    'tuckcrunch\t872\n'
    'seatedkneetuck\t872\n'
    'inandout\t872\n'
    'turkishsitup\t873\n'
    'getupsitup\t873\n'
    'kettlebellsitup\t873\n'
    'straightarmsitup\t873\n'
    'hollowhold\t874\n'
    'hollowbodyhold\t874\n'
    'hollowbody\t874\n'
    'dishhold\t874\n'
    'hollowposition\t874\n'
    'hollowrock\t875\n'
    'hollowbodyrock\t875\n'
    'deadbugheeltap\t876\n'
    'lyingheeltap\t876\n'
    'supinetoetap\t876\n'
    'toetap\t876\n'
    'bentkneedeadbug\t876\n'
    'supinemarch\t876\n'
    'banddeadbug\t877\n'
    'bandeddeadbug\t877\n'
    'deadbugwithpullover\t877\n'
    'deadbugwithband\t877\n'
    'weighteddeadbug\t878\n'
    'loadeddeadbug\t878\n'
    'dumbbelldeadbug\t878\n'
    'kettlebelldeadbug\t878\n'
    'stabilityballdeadbug\t879\n'
    'balldeadbug\t879\n'
    'swissballdeadbug\t879\n'
    'deadbugballsqueeze\t879\n'
    '9090breathing\t880\n'
    'ninetyninetybreathing\t880\n'
    'supinebreathingbrace\t880\n'
    'abdominalbrace\t880\n'
    'abdominalbracing\t880\n'
    'lsit\t881\n'
    'lsithold\t881\n'
    'lsitonbar\t881\n'
    'parallelbarlsit\t881\n'
    'tuckholdonbar\t882\n'
    'tuckhold\t882\n'
    'tuckedlsit\t882\n'
    'bentkneelsit\t882\n'
    'vsithold\t883\n'
    'boathold\t883\n'
    'boatpose\t883\n'
    'seatedvhold\t883\n'
    'lyinglegraise\t884\n'
    'legraise\t884\n'
    'floorlegraise\t884\n'
    'supinelegraise\t884\n'
    'lyingdoublelegraise\t884\n'
    'lyinglegraisewithhiplift\t885\n'
    'legraisewithhiplift\t885\n'
    'legraisetocandle\t885\n'
    'lyinglegandhipraise\t885\n'
    'bentkneelyinglegraise\t886\n'
    'lyingkneeraise\t886\n'
    'lyingkneetuck\t886\n'
    'floorkneeraise\t886\n'
    'leglowering\t887\n'
    'doubleleglowering\t887\n'
    'leglower\t887\n'
    'eccentriclegraise\t887\n'
    'straightleglowering\t887\n'
    'flutterkick\t888\n'
    'scissorkick\t888\n'
    'legscissor\t888\n'
    'bodylengthleglowering\t889\n'
    'dragonflag\t889\n'
    'dragonflaglowering\t889\n'
    'wholebodyleglowering\t889\n'
    'inclinelegraise\t890\n'
    'inclinebenchlegraise\t890\n'
    'slantboardlegraise\t890\n'
    'supportedkneeraise\t891\n'
    'captainchairkneeraise\t891\n'
    'verticalkneeraise\t891\n'
    'chairkneeraise\t891\n'
    'dipstationkneeraise\t891\n'
    'captainchair\t891\n'
    'supportedlegraise\t892\n'
    'captainchairlegraise\t892\n'
    'verticallegraise\t892\n'
    'dipstationlegraise\t892\n'
    'toetobar\t893\n'
    't2b\t893\n'
    'ttb\t893\n'
    'stricttoetobar\t893\n'
    'hangingobliqueraise\t894\n'
    'hangingobliquekneeraise\t894\n'
    'hangingtwistingkneeraise\t894\n'
    'sidetosidekneeraise\t894\n'
    'hangingsidekneeraise\t894\n'
    'hangingwindshieldwiper\t895\n'
    'windshieldwiper\t895\n'
    'hangingwiper\t895\n'
    'windscreenwiper\t895\n'
    'weightedhangingkneeraise\t896\n'
    'hangingkneeraisewithweight\t896\n'
    'loadedhangingkneeraise\t896\n'
    'hangingkneeraisewithdumbbell\t896\n'
    'hangingtuckhold\t897\n'
    'hangingkneehold\t897\n'
    'hanginglhold\t897\n'
    'isometrichangingkneeraise\t897\n'
    'standingabwheelrollout\t898\n'
    'standingrollout\t898\n'
    'fullabwheelrollout\t898\n'
    'standingwheelrollout\t898\n'
    'abwheelrollouttoawall\t899\n'
    'shortrangeabwheelrollout\t899\n'
    'wallstoppedrollout\t899\n'
    'partialrollout\t899\n'
    'barbellrollout\t900\n'
    'kneelingbarbellrollout\t900\n'
    'barbellabrollout\t900\n'
    'stabilityballrollout\t901\n'
    'ballrollout\t901\n'
    'swissballrollout\t901\n'
    'exerciseballrollout\t901\n'
    'sliderrollout\t902\n'
    'slidingrollout\t902\n'
    'sliderbodyreach\t902\n'
    'kneelingsliderrollout\t902\n'
    'suspensionfallout\t903\n'
    'suspensionrollout\t903\n'
    'fallout\t903\n'
    'standingfallout\t903\n'
    'ringrollout\t903\n'
    'ringfallout\t903\n'
    'stabilityballkneetuck\t904\n'
    'ballkneetuck\t904\n'
    'swissballjackknife\t904\n'
    'stabilityballjackknife\t904\n'
    'balltuck\t904\n'
    'stabilityballpike\t905\n'
    'ballpike\t905\n'
    'swissballpike\t905\n'
    'suspensionkneetuck\t906\n'
    'suspendedkneetuck\t906\n'
    'suspensiontuck\t906\n'
    'slingkneetuck\t906\n'
    'suspensionpike\t907\n'
    'suspendedpike\t907\n'
    'slingpike\t907\n'
    'sliderpike\t908\n'
    'slidingpike\t908\n'
    'sliderpikeup\t908\n'
    'sliderkneetuck\t909\n'
    'slidingkneetuck\t909\n'
    'slidermountainclimber\t909\n'
    'mountainclimber\t910\n'
    'runningplank\t910\n'
    'plankkneedrive\t910\n'
    'crossbodymountainclimber\t911\n'
    'twistingmountainclimber\t911\n'
    'lowtohighcablechop\t912\n'
    'reversewoodchop\t912\n'
    'lowtohighwoodchop\t912\n'
    'cablelift\t912\n'
    'lowtohighchop\t912\n'
    'reversechop\t912\n'
    'cablerotation\t913\n'
    'standingcablerotation\t913\n'
    'horizontalwoodchop\t913\n'
    'cabletwist\t913\n'
    'horizontalcablechop\t913\n'
    'trunkrotation\t913\n'
    'standingtrunkrotation\t913\n'
    'halfkneelingchop\t914\n'
    'halfkneelingcablechop\t914\n'
    'kneelingchop\t914\n'
    'tallkneelingchop\t914\n'
    'halfkneelingwoodchop\t914\n'
    'halfkneelinglift\t915\n'
    'halfkneelingcablelift\t915\n'
    'kneelinglift\t915\n'
    'tallkneelinglift\t915\n'
    'bandrotation\t916\n'
    'bandwoodchop\t916\n'
    'bandedrotation\t916\n'
    'bandtwist\t916\n'
    'bandchop\t916\n'
    'resistancebandwoodchop\t916\n'
    'landminerotation\t917\n'
    'landminetwist\t917\n'
    'landmine180\t917\n'
    'angledbarrotation\t917\n'
    'barbellrotationinthecorner\t917\n'
    'fullcontacttwist\t917\n'
    'machinetrunkrotation\t918\n'
    'torsorotationmachine\t918\n'
    'rotationmachine\t918\n'
    'twistmachine\t918\n'
    'dumbbellwoodchop\t919\n'
    'medicineballwoodchop\t919\n'
    'platewoodchop\t919\n'
    'freeweightwoodchop\t919\n'
    'dumbbellchop\t919\n'
    'lyingwindshieldwiper\t920\n'
    'floorwindshieldwiper\t920\n'
    'lyinglegrotation\t920\n'
    'supinetrunkrotation\t920\n'
    'lyingwiper\t920\n'
    'bentkneetrunkrotation\t921\n'
    'bentkneewindshieldwiper\t921\n'
    'lowertrunkrotation\t921\n'
    'kneedrop\t921\n'
    'supinekneerotation\t921\n'
    'stabilityballrussiantwist\t922\n'
    'ballrussiantwist\t922\n'
    'bridgedtrunkrotation\t922\n'
    'swissballrotation\t922\n'
    'bandantirotationpress\t923\n'
    'bandpressout\t923\n'
    'bandedantirotationpress\t923\n'
    'bandantirotationhold\t923\n'
    'halfkneelingantirotationpress\t924\n'
    'halfkneelingpressout\t924\n'
    'kneelingantirotationpress\t924\n'
    'tallkneelingantirotationpress\t924\n'
    'halfkneelingcablepressout\t924\n'
    'splitstanceantirotationpress\t925\n'
    'splitstancepressout\t925\n'
    'splitsquatantirotationpress\t925\n'
    'antirotationpressoverhead\t926\n'
    'overheadpressout\t926\n'
    'antirotationpressandlift\t926\n'
    'overheadantirotationpress\t926\n'
    'antirotationwalkout\t927\n'
    'antirotationsidestep\t927\n'
    'pressoutwalk\t927\n'
    'cablewalkout\t927\n'
    'antirotationwalk\t927\n'
    'onearmplank\t928\n'
    'singlearmplank\t928\n'
    'onearmplankhold\t928\n'
    'pronebackextensionhold\t929\n'
    'pronehold\t929\n'
    'proneextensionhold\t929\n'
    'pronelifthold\t929\n'
    'pronearchhold\t929\n'
    'archhold\t929\n'
    'pronealternatingarmandlegraise\t930\n'
    'swimmer\t930\n'
    'proneswimmer\t930\n'
    'pronealternatingraise\t930\n'
    'oppositearmandlegraise\t930\n'
    'pronecobrahold\t931\n'
    'pronecobra\t931\n'
    'cobrahold\t931\n'
    'proneshoulderbladesqueezehold\t931\n'
    'machinebackextension\t932\n'
    'backextensionmachine\t932\n'
    'lowerbackmachine\t932\n'
    'seatedbackextension\t932\n'
    'lumbarextensionmachine\t932\n'
    'seatedmachinebackextension\t932\n'
    'stabilityballbackextension\t933\n'
    'ballbackextension\t933\n'
    'swissballbackextension\t933\n'
    'loadedspinalrolldown\t934\n'
    'spinalrolldown\t934\n'
    'rolldown\t934\n'
    'segmentalrolldown\t934\n'
    'weightedrolldown\t934\n'
    'quadrupedlegreach\t935\n'
    'quadrupedhipextensionhold\t935\n'
    'allfourlegreach\t935\n'
    'birddoglegonly\t935\n'
    'birddogrow\t936\n'
    'birddogdumbbellrow\t936\n'
    'benchbirddogrow\t936\n'
    'birddogwithband\t937\n'
    'bandedbirddog\t937\n'
    'weightedbirddog\t937\n'
    'resistedbirddog\t937\n'
)
