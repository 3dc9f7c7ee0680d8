"""Written by python -m spotline.lint.body.build from data/*.yaml: change those, not this."""

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
    ('gluteus maximus', 'hips', ('gluteals',), ('hip',), 'gluteus_maximus', (('hip extension', (('prime', (), ''),)), ('hip abduction', (('helper', (), ''),)), ('hip external rotation', (('prime', (('hip', (-30, 60)),), ''),))), ('anatomy-crossing', 'rajagopal-2016', 'kubo-2019')),
    ('gluteus medius', 'hips', ('gluteals', 'hip abductors'), ('hip',), '', (('hip abduction', (('prime', (), ''),)), ('hip external rotation', (('helper', (('hip', (-30, 30)),), ''),)), ('hip internal rotation', (('prime', (('hip', (45, 120)),), ''),))), ('anatomy-crossing', 'rajagopal-2016')),
    ('gluteus minimus', 'hips', ('gluteals', 'hip abductors'), ('hip',), '', (('hip abduction', (('prime', (), ''),)), ('hip internal rotation', (('prime', (), ''),))), ('anatomy-crossing', 'rajagopal-2016')),
    ('tensor fasciae latae', 'hips', (), ('hip', 'knee'), 'tensor_fasciae_latae', (('hip abduction', (('helper', (), ''),)), ('hip flexion', (('helper', (), ''),)), ('hip internal rotation', (('helper', (('hip', (45, 120)),), ''),))), ('anatomy-crossing', 'rajagopal-2016')),
    ('deep hip rotators', 'hips', ('hip rotators',), ('hip',), '', (('hip external rotation', (('prime', (('hip', (-30, 60)),), ''),)), ('hip abduction', (('minor', (), 'small muscles beside the gluteus medius'),))), ('anatomy-crossing', 'rajagopal-2016')),
    ('adductor magnus', 'hips', ('adductors',), ('hip',), 'adductor_magnus', (('hip adduction', (('prime', (), ''),)), ('hip extension', (('prime', (), ''),))), ('anatomy-crossing', 'rajagopal-2016', 'kubo-2019')),
    ('adductor longus', 'hips', ('adductors',), ('hip',), 'adductors_long_brev', (('hip adduction', (('prime', (), ''),)), ('hip flexion', (('minor', (('hip', (-30, 68)),), 'a passing helper: it turns from flexor to extensor in mid-range'),)), ('hip extension', (('minor', (('hip', (75, 120)),), 'a passing helper: it extends the hip only out of deep flexion'),))), ('anatomy-crossing', 'rajagopal-2016')),
    ('adductor brevis', 'hips', ('adductors',), ('hip',), 'adductors_long_brev', (('hip adduction', (('prime', (), ''),)), ('hip flexion', (('minor', (('hip', (-30, 68)),), 'a passing helper: it turns from flexor to extensor in mid-range'),)), ('hip extension', (('minor', (('hip', (75, 120)),), 'a passing helper: it extends the hip only out of deep flexion'),))), ('anatomy-crossing', 'rajagopal-2016')),
    ('pectineus', 'hips', ('adductors',), ('hip',), '', (('hip adduction', (('prime', (), ''),)), ('hip flexion', (('minor', (), 'a short muscle beside the iliopsoas'),))), ('anatomy-crossing',)),
    ('iliacus', 'hips', ('hip flexors',), ('hip',), 'iliopsoas', (('hip flexion', (('prime', (), ''),)),), ('anatomy-crossing', 'rajagopal-2016')),
    ('psoas major', 'hips', ('hip flexors',), ('hip', 'trunk'), 'iliopsoas', (('hip flexion', (('prime', (), ''),)), ('trunk side bend', (('minor', (), 'it steadies the lumbar spine rather than bending it'),))), ('anatomy-crossing', 'rajagopal-2016')),
    ('gastrocnemius', 'legs', ('calves',), ('knee', 'ankle'), 'gastrocnemius', (('plantarflexion', (('prime', (('knee', (0, 60)),), ''), ('minor', (('knee', (60, 150)),), 'slack with the knee bent to a right angle; seated raises grew it by 1-2 % where standing ones gave 9-12 %'))), ('knee flexion', (('minor', (), 'it shortens in a leg curl, but its lever at the knee is half that of the hamstrings and nobody trains calves so'),))), ('anatomy-crossing', 'rajagopal-2016', 'kinoshita-2023')),
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
    ('middle trapezius', 'back', ('upper back', 'traps'), ('shoulder blade',), '', (('scapular retraction', (('prime', (), ''),)), ('scapular upward rotation', (('helper', (), ''),))), ('anatomy-crossing',)),
    ('lower trapezius', 'back', ('upper back', 'traps'), ('shoulder blade',), '', (('scapular depression', (('prime', (), ''),)), ('scapular upward rotation', (('helper', (), ''),)), ('scapular retraction', (('helper', (), ''),))), ('anatomy-crossing',)),
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
    ('triceps long head', 'arms', ('triceps',), ('shoulder', 'elbow'), 'triceps_long', (('elbow extension', (('prime', (), ''),)), ('shoulder extension', (('helper', (), ''),)), ('shoulder adduction', (('minor', (), 'the latissimus and teres major pull the arm down'),))), ('anatomy-crossing', 'arm26', 'maeo-2023')),
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
    'traps': ('upper trapezius', 'middle trapezius', 'lower trapezius'),
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
    'trap': ('upper trapezius', 'middle trapezius', 'lower trapezius'),
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
    'bis': ('biceps long head', 'biceps short head'),
    'tricep': ('triceps long head', 'triceps lateral head', 'triceps medial head'),
    'tricepbrachii': ('triceps long head', 'triceps lateral head', 'triceps medial head'),
    'tri': ('triceps long head', 'triceps lateral head', 'triceps medial head'),
    'elbowflexor': ('biceps long head', 'biceps short head', 'brachialis', 'brachioradialis'),
    'frontofthearm': ('biceps long head', 'biceps short head', 'brachialis', 'brachioradialis'),
    'forearm': ('brachioradialis', 'supinator', 'pronators', 'wrist flexors', 'wrist extensors', 'finger flexors'),
    'grip': ('brachioradialis', 'supinator', 'pronators', 'wrist flexors', 'wrist extensors', 'finger flexors'),
    'wrist': ('brachioradialis', 'supinator', 'pronators', 'wrist flexors', 'wrist extensors', 'finger flexors'),
    'abdominal': ('rectus abdominis', 'external oblique', 'internal oblique', 'transversus abdominis'),
    'abs': ('rectus abdominis', 'external oblique', 'internal oblique', 'transversus abdominis'),
    'stomach': ('rectus abdominis', 'external oblique', 'internal oblique', 'transversus abdominis'),
    'sixpack': ('rectus abdominis', 'external oblique', 'internal oblique', 'transversus abdominis'),
    'oblique': ('external oblique', 'internal oblique'),
    'waist': ('external oblique', 'internal oblique'),
    'sideabs': ('external oblique', 'internal oblique'),
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

AREA_NAMES: tuple[str, ...] = ('hamstrings', 'quadriceps', 'gluteals', 'adductors', 'hip abductors', 'hip flexors', 'calves', 'shins', 'ankle stabilisers', 'chest', 'upper chest', 'sternocostal chest', 'lats', 'upper back', 'lower back', 'traps', 'front shoulder', 'side shoulder', 'rear shoulder', 'rotator cuff', 'shoulders', 'deltoids', 'biceps', 'triceps', 'elbow flexors', 'forearms', 'abdominals', 'obliques', 'arms', 'upper arms', 'legs', 'hips', 'thighs', 'lower leg', 'posterior chain', 'trunk', 'lower body', 'upper body', 'whole body', 'push muscles', 'pull muscles', 'hip rotators', 'serratus', 'neck muscles', 'abdomen', 'back', 'neck', 'biceps femoris long head', 'semitendinosus', 'semimembranosus', 'biceps femoris short head', 'rectus femoris', 'vastus lateralis', 'vastus medialis', 'vastus intermedius', 'sartorius', 'gracilis', 'gluteus maximus', 'gluteus medius', 'gluteus minimus', 'tensor fasciae latae', 'deep hip rotators', 'adductor magnus', 'adductor longus', 'adductor brevis', 'pectineus', 'iliacus', 'psoas major', 'gastrocnemius', 'soleus', 'tibialis anterior', 'toe extensors', 'tibialis posterior', 'peroneals', 'long toe flexors', 'rectus abdominis', 'external oblique', 'internal oblique', 'transversus abdominis', 'erector spinae', 'multifidus', 'quadratus lumborum', 'latissimus dorsi', 'teres major', 'upper trapezius', 'middle trapezius', 'lower trapezius', 'rhomboids', 'levator scapulae', 'serratus anterior', 'pectoralis minor', 'clavicular chest', 'anterior deltoid', 'middle deltoid', 'posterior deltoid', 'supraspinatus', 'infraspinatus', 'teres minor', 'subscapularis', 'coracobrachialis', 'biceps long head', 'biceps short head', 'brachialis', 'brachioradialis', 'triceps long head', 'triceps lateral head', 'triceps medial head', 'supinator', 'pronators', 'wrist flexors', 'wrist extensors', 'finger flexors', 'sternocleidomastoid', 'deep neck flexors', 'scalenes', 'splenius', 'semispinalis')

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
    'lying triceps extension\tskull crusher|lying barbell triceps extension|bent-bar skull crusher|EZ-bar skull crusher|nose breaker|lying extension\tbarbell\tdynamic\tlying\toverhand\t\t\t\telbow extension\t\tshoulder~90 90|elbow~120 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.82|triceps lateral head~0.51|triceps medial head~0.51\tnone\tintermediate\tlight\tbarbell|bench\t\tcable pushdown\tclose-grip bench press\t\t',
    'incline dumbbell curl\tincline curl|incline DB curl|incline bench curl|seated incline curl\tdumbbell\tdynamic\tincline\tunderhand\t\t\t\telbow flexion\t\tshoulder~-45 -45|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.71|brachialis~0.57\tnone\tnovice\tlight\tdumbbell|bench\t1\tdumbbell curl\t\t\t',
    'preacher curl\tbent-bar preacher curl|barbell preacher curl|EZ-bar preacher curl|preacher bench curl\tbarbell\tdynamic\tseated\tunderhand\t\t\t\telbow flexion\t\tshoulder~50 50|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.42|brachialis~0.57\tnone\tnovice\tlight\tpreacher bench|barbell\t1\tmachine preacher curl\tbarbell curl\t\t',
    'cable curl\tstanding cable curl|low cable curl|cable biceps curl|bar cable curl\tcable\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tnone\tnovice\tlight\tcable\t1\tband curl\tbarbell curl\t\t',
    'bent-bar curl\tEZ-bar curl|EZ curl|cambered-bar curl|angled-bar curl\tbarbell\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tlow\tnovice\tlight\tbarbell\t1\tdumbbell curl\tbarbell curl\t\t',
    'overhead dumbbell triceps extension\tdumbbell overhead extension|overhead dumbbell extension|two-hand overhead extension|seated overhead triceps extension|DB overhead extension|overhead DB triceps extension|seated dumbbell triceps extension|French press\tdumbbell\tdynamic\tseated\tneutral\t\t\t\telbow extension\t\tshoulder~165 165|elbow~125 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.76|triceps lateral head~0.53|triceps medial head~0.53\tnone\tnovice\tlight\tdumbbell\t\toverhead cable triceps extension\tone-arm overhead triceps extension\t\tmaeo-2023',
    'machine curl\tmachine biceps curl|biceps curl machine|arm curl machine|seated machine curl\tmachine\tdynamic\tseated\tunderhand\t\t\t\telbow flexion\t\tshoulder~45 45|elbow~10 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.42|brachialis~0.55\tnone\tnovice\theavy\tmachine curl\t1\t\tdumbbell curl\t\t',
    'machine preacher curl\tpreacher curl machine|plate-loaded preacher curl\tmachine\tdynamic\tseated\tunderhand\t\t\t\telbow flexion\t\tshoulder~50 50|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.42|brachialis~0.57\tnone\tnovice\tlight\tmachine preacher curl\t1\t\tpreacher curl\t\t',
    'dumbbell preacher curl\tone-arm preacher curl|single-arm preacher curl|DB preacher curl\tdumbbell\tdynamic\tseated\tunderhand\t1\t\t\telbow flexion\t\tshoulder~50 50|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.42|brachialis~0.57\tnone\tnovice\tlight\tpreacher bench|dumbbell\t1\tmachine preacher curl\t\t\t',
    'cable preacher curl\tpreacher cable curl\tcable\tdynamic\tseated\tunderhand\t\t\t\telbow flexion\t\tshoulder~50 50|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.42|brachialis~0.57\tnone\tnovice\tlight\tpreacher bench|cable\t1\tmachine preacher curl\t\t\t',
    'concentration curl\tseated concentration curl|dumbbell concentration curl\tdumbbell\tdynamic\tseated\tunderhand\t1\t\t\telbow flexion\t\tshoulder~40 40|elbow~5 130\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.43|brachialis~0.54\tnone\tnovice\tlight\tdumbbell|bench\t1\tmachine curl\tdumbbell preacher curl\t\t',
    'prone incline curl\tspider curl|chest-supported curl|prone curl\tdumbbell\tdynamic\tsupported\tunderhand\t\t\t\telbow flexion\t\tshoulder~70 70|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.39|brachialis~0.57\tnone\tintermediate\tlight\tdumbbell|bench\t1\tpreacher curl\t\t\t',
    'alternating dumbbell curl\talternating curl|alternate dumbbell curl|alternating DB curl\tdumbbell\tdynamic\tstanding\tunderhand\t1\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tnone\tnovice\tlight\tdumbbell\t1\tcable curl\tincline dumbbell curl\t\t',
    'seated dumbbell curl\tseated curl|seated DB curl|seated alternating dumbbell curl\tdumbbell\tdynamic\tseated\tunderhand\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tnone\tnovice\tlight\tdumbbell|bench\t1\tmachine curl\tincline dumbbell curl\t\t',
    'one-arm cable curl\tsingle-arm cable curl|one-arm low cable curl\tcable\tdynamic\tstanding\tunderhand\t1\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tnone\tnovice\tlight\tcable\t1\tband curl\t\t\t',
    'behind-the-body cable curl\tface-away cable curl|cable curl facing away|behind-back cable curl\tcable\tdynamic\tstanding\tunderhand\t1\t\t\telbow flexion\t\tshoulder~-35 -35|elbow~5 120\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.7|brachialis~0.59\tnone\tintermediate\tlight\tcable\t1\tone-arm cable curl\t\t\t',
    'high cable curl\toverhead cable curl|double-biceps cable curl|lat-machine curl\tcable\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\t\tshoulder~90 90|elbow~10 130\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.36|brachialis~0.53\tnone\tnovice\tlight\tcable\t1\tcable curl\t\t\t',
    'lying cable curl\tsupine cable curl|floor cable curl\tcable\tdynamic\tlying\tunderhand\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tnone\tnovice\tlight\tcable|floor\t1\tcable curl\t\t\t',
    'drag curl\tbarbell drag curl|elbows-back curl\tbarbell\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\t\tshoulder~0 -35|elbow~10 120\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.63|brachialis~0.58\tlow\tintermediate\tlight\tbarbell\t1\tbarbell curl\t\t\t',
    'strict curl against the wall\tstrict curl|wall curl|back-to-wall curl\tbarbell\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tnone\tintermediate\theavy\tbarbell|wall\t1\tbarbell curl\t\t\t',
    'cheat curl\tbody-swing curl|cheating curl\tbarbell\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\ttrunk extension\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\terector spinae|multifidus|brachioradialis\tbiceps long head~0.57|brachialis~0.57\tmoderate\tadvanced\theavy\tbarbell\t1\tbarbell curl\t\t\t',
    'partial-range barbell curl\t21s|twenty-ones|curl 21s|curls in thirds\tbarbell\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tlow\tintermediate\tlight\tbarbell\t1\tbarbell curl\t\t\t',
    'wide-grip barbell curl\twide curl|wide-grip curl\tbarbell\tdynamic\tstanding\twide\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tlow\tnovice\tlight\tbarbell\t1\tbarbell curl\t\t\t',
    'close-grip barbell curl\tnarrow-grip curl|close-grip curl\tbarbell\tdynamic\tstanding\tclose\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tlow\tnovice\tlight\tbarbell\t1\tbent-bar curl\t\t\t',
    'band curl\tbanded curl|resistance band curl|band biceps curl\tband\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tnone\tnovice\tlight\tband\t\t\tdumbbell curl|cable curl\t\t',
    'kettlebell curl\tKB curl|goblet curl|two-hand kettlebell curl\tkettlebell\tdynamic\tstanding\tneutral\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\tbrachioradialis~direct~With the thumb up its lever is at its best and the biceps no longer has the palm-up position to itself.\tbiceps long head|biceps short head|brachialis|brachioradialis\t\tbiceps long head~0.57|brachialis~0.57\tnone\tnovice\tlight\tkettlebell\t1\t\thammer curl\t\t',
    'suspension curl\tring curl|suspended biceps curl|bodyweight curl|suspension biceps curl\tsuspension\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\t\tshoulder~80 80|elbow~5 120\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.4|brachialis~0.59\tnone\tintermediate\tlight\tsuspension\t1\tband curl\tchin-up\t\t',
    'curl hold\tisometric curl|static curl|curl iso hold|90-degree curl hold\tdumbbell\tisometric\tstanding\tunderhand\t\t\t\telbow flexion\t\tshoulder~0|elbow~90\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.43|brachialis~0.39\tnone\tnovice\tlight\tdumbbell\t1\tband curl\t\t\t',
    'eccentric curl\tnegative curl|slow-lowering curl|curl negatives\tdumbbell\tdynamic\tstanding\tunderhand\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\t\tbiceps long head|biceps short head|brachialis\tbrachioradialis\tbiceps long head~0.57|brachialis~0.57\tnone\tintermediate\tlight\tdumbbell\t1\tdumbbell curl\t\t\t',
    'rope hammer curl\tcable hammer curl|cable rope curl\tcable\tdynamic\tstanding\tneutral\t\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\tbrachioradialis~direct~With the thumb up its lever is at its best and the biceps no longer has the palm-up position to itself.\tbiceps long head|biceps short head|brachialis|brachioradialis\t\tbiceps long head~0.57|brachialis~0.57\tnone\tnovice\tlight\tcable\t1\tband curl\thammer curl\t\t',
    'cross-body hammer curl\tpinwheel curl|cross-body curl|alternating cross-body curl\tdumbbell\tdynamic\tstanding\tneutral\t1\t\t\telbow flexion\t\tshoulder~0 0|elbow~5 125\tbrachioradialis~direct~With the thumb up its lever is at its best and the biceps no longer has the palm-up position to itself.\tbiceps long head|biceps short head|brachialis|brachioradialis\t\tbiceps long head~0.57|brachialis~0.57\tnone\tnovice\tlight\tdumbbell\t1\thammer curl\t\t\t',
    'seated hammer curl\tincline hammer curl|seated dumbbell hammer curl\tdumbbell\tdynamic\tincline\tneutral\t\t\t\telbow flexion\t\tshoulder~-30 -30|elbow~5 125\tbrachioradialis~direct~With the thumb up its lever is at its best and the biceps no longer has the palm-up position to itself.\tbiceps long head|biceps short head|brachialis|brachioradialis\t\tbiceps long head~0.67|brachialis~0.57\tnone\tnovice\tlight\tdumbbell|bench\t1\thammer curl\t\t\t',
    'preacher hammer curl\tneutral-grip preacher curl\tdumbbell\tdynamic\tseated\tneutral\t\t\t\telbow flexion\t\tshoulder~50 50|elbow~5 125\tbrachioradialis~direct~With the thumb up its lever is at its best and the biceps no longer has the palm-up position to itself.\tbiceps long head|biceps short head|brachialis|brachioradialis\t\tbiceps long head~0.42|brachialis~0.57\tnone\tnovice\tlight\tpreacher bench|dumbbell\t1\thammer curl\t\t\t',
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
    'overhead barbell triceps extension\tbarbell overhead extension|bent-bar overhead extension|EZ-bar overhead extension|standing barbell triceps extension|barbell French press\tbarbell\tdynamic\tstanding\toverhand\t\t\t\telbow extension\t\tshoulder~165 165|elbow~125 5\t\ttriceps long head|triceps lateral head|triceps medial head\t\ttriceps long head~0.76|triceps lateral head~0.53|triceps medial head~0.53\tlow\tintermediate\tlight\tbarbell\t\toverhead dumbbell triceps extension\t\t\tmaeo-2023',
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
    "barbell hold\tgrip hold|static barbell hold|timed barbell hold|thick-bar hold|fat-grip hold\tbarbell\tisometric\tstanding\toverhand\t\t\t\tgrip\tscapular elevation\t\t\tfinger flexors\tupper trapezius|wrist flexors|wrist extensors\t\thigh\tintermediate\theavy\tbarbell|rack\t1\tfarmer's hold\t\t\t",
    "farmer's hold\tdumbbell hold|static farmer hold|dumbbell grip hold\tdumbbell\tisometric\tstanding\tneutral\t\t\t\tgrip\tscapular elevation\t\t\tfinger flexors\tupper trapezius|wrist flexors|wrist extensors\t\tmoderate\tnovice\theavy\tdumbbell\t1\tdead hang\tfarmer's carry\t\t",
    "hand gripper squeeze\tgripper|hand gripper|crush grip|gripper close\tnone\tdynamic\tstanding\tclose\t1\t\t\tgrip\t\t\t\tfinger flexors\twrist flexors|wrist extensors\t\tnone\tnovice\tlight\thand gripper\t1\t\tfarmer's hold\t\t",
    'finger curl\tbarbell finger curl|finger roll|finger roll-up\tbarbell\tdynamic\tseated\tunderhand\t\t\t\tgrip\twrist flexion\t\t\tfinger flexors\twrist flexors|wrist extensors\t\tnone\tnovice\tlight\tbarbell|bench\t1\thand gripper squeeze\t\t\t',
    'finger extension with band\tband finger extension|finger opening|rubber-band finger extension\tband\tdynamic\tseated\t\t1\t\t\twrist extension\t\t\t\twrist extensors\t\t\tnone\tnovice\tlight\tband\t\t\t\t\t',
    'wrist deviation with a lever\tradial deviation|ulnar deviation|sledgehammer lever|lever lift\tdumbbell\tdynamic\tstanding\t\t1\t\t\twrist extension|wrist flexion\tgrip\t\t\twrist flexors|wrist extensors\tfinger flexors\t\tnone\tintermediate\tlight\tdumbbell\t1\twrist curl\t\t\t',
    "farmer's carry\tfarmer's walk|dumbbell farmer's carry|loaded carry|dumbbell carry|farmers\tdumbbell\tcarry\tstanding\tneutral\t\tcarry\tcarry\tgrip\tscapular elevation|trunk extension\t\t\tfinger flexors\terector spinae|multifidus|upper trapezius|wrist flexors|wrist extensors\t\tmoderate\tnovice\theavy\tdumbbell\t1\tfarmer's hold\ttrap bar carry\t\t",
    "suitcase carry\tsuitcase walk|one-arm farmer's carry|single-arm farmer's carry|one-sided carry|offset carry\tkettlebell\tcarry\tstanding\tneutral\t1\tcarry\tcarry\ttrunk side bend|grip\tscapular elevation\t\t\texternal oblique|internal oblique|quadratus lumborum|finger flexors\trectus abdominis|erector spinae|upper trapezius|wrist flexors|wrist extensors\t\tmoderate\tnovice\theavy\tkettlebell\t1\tside plank|farmer's carry\tsuitcase deadlift\t\t",
    'Turkish get-up\tTGU|get-up|kettlebell get-up|dumbbell get-up\tkettlebell\tdynamic\tstanding\t\t1\t\t\tscapular upward rotation|trunk flexion\tshoulder abduction|elbow extension|trunk rotation|hip abduction|hip extension|knee extension\thip~90 0|knee~90 0|ankle~10 0\tquadriceps~none~What the arm can hold overhead is far too light for the thigh.|gluteus maximus~none~What the arm can hold overhead is far too light for the hip.|adductor magnus~none~What the arm can hold overhead is far too light for the hip.\trectus abdominis|upper trapezius|serratus anterior\tgluteus medius|gluteus minimus|external oblique|internal oblique|middle trapezius|lower trapezius|middle deltoid|triceps long head|triceps lateral head|triceps medial head\t\tlow\tadvanced\tlight\tkettlebell|floor\t\thalf get-up|Turkish sit-up\tbottoms-up Turkish get-up\tWhole-body skill: the path is the last part, from half-kneeling to standing. The load is what the arm can hold overhead, light for the legs.\t',
    'medicine ball slam\tball slam|overhead slam|med ball slam|slam ball|overhead medicine ball slam|MB slam\tmedicine ball\tballistic\tstanding\t\t\tthrow\tthrow\tshoulder extension\ttrunk flexion|elbow extension\tshoulder~165 40|elbow~60 10\t\tlatissimus dorsi|teres major\trectus abdominis|posterior deltoid|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.7|triceps lateral head~0.28|triceps medial head~0.28\tnone\tnovice\tlight\tmedicine ball\t\tstraight-arm pulldown\trotational medicine ball slam\t\t',
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
    "towel farmer's carry\ttowel carry|thick-handle farmer's carry|fat-grip carry\tkettlebell\tcarry\tstanding\tneutral\t\tcarry\tcarry\tgrip\tscapular elevation|trunk extension\t\t\tfinger flexors\terector spinae|multifidus|upper trapezius|wrist flexors|wrist extensors\t\tmoderate\tintermediate\theavy\tkettlebell\t1\tkettlebell farmer's carry\t\t\t",
    'pinch carry\tplate pinch carry walk|plate pinch walk\tplate\tcarry\tstanding\t\t\tcarry\tcarry\tgrip\tscapular elevation|trunk extension\t\t\tfinger flexors\terector spinae|multifidus|upper trapezius|wrist flexors|wrist extensors\t\tlow\tnovice\tlight\tplate\t1\tplate pinch\t\t\t',
    'half get-up\thalf Turkish get-up|get-up to the hand|partial get-up|get-up to elbow\tkettlebell\tdynamic\tlying\t\t1\t\t\ttrunk flexion|scapular upward rotation\ttrunk rotation|shoulder abduction|elbow extension\tshoulder~90|elbow~0\t\trectus abdominis|upper trapezius|serratus anterior\texternal oblique|internal oblique|middle trapezius|lower trapezius|middle deltoid\t\tlow\tintermediate\tlight\tkettlebell|floor\t\tTurkish sit-up|arm bar\t\t\t',
    'bottoms-up Turkish get-up\tbottoms-up get-up\tkettlebell\tdynamic\tstanding\t\t1\t\t\tscapular upward rotation|trunk flexion\tshoulder abduction|elbow extension|trunk rotation|hip abduction|hip extension|knee extension|grip\thip~90 0|knee~90 0|ankle~10 0\tquadriceps~none~What the arm can hold overhead is far too light for the thigh.|gluteus maximus~none~What the arm can hold overhead is far too light for the hip.|adductor magnus~none~What the arm can hold overhead is far too light for the hip.\trectus abdominis|upper trapezius|serratus anterior\tgluteus medius|gluteus minimus|external oblique|internal oblique|middle trapezius|lower trapezius|middle deltoid|triceps long head|triceps lateral head|triceps medial head|finger flexors\t\tlow\tadvanced\tlight\tkettlebell|floor\t1\tTurkish get-up|bottoms-up kettlebell press\t\tWhole-body skill: the path is the last part, from half-kneeling to standing. The load is what the arm can hold overhead, light for the legs.\t',
    'sandbag get-up\tshouldered get-up|sandbag Turkish get-up\tsandbag\tdynamic\tstanding\t\t1\t\t\ttrunk flexion|knee extension\ttrunk rotation|hip extension|hip abduction\thip~90 0|knee~90 0|ankle~10 0\tquadriceps~none~What the arm can hold overhead is far too light for the thigh.|gluteus maximus~none~What the arm can hold overhead is far too light for the hip.|adductor magnus~none~What the arm can hold overhead is far too light for the hip.\trectus abdominis\tgluteus medius|gluteus minimus|external oblique|internal oblique\t\tmoderate\tintermediate\theavy\tsandbag|floor\t\tsit-up|bodyweight lunge\t\tThe path is the last part, from half-kneeling to standing.\t',
    'arm bar\tkettlebell arm bar|KB arm bar|screwdriver|lying arm bar\tkettlebell\tisometric\tlying\t\t1\t\t\tscapular upward rotation\tshoulder external rotation|scapular retraction\tshoulder~90|elbow~0\t\tupper trapezius|serratus anterior\tmiddle trapezius|lower trapezius|rhomboids|infraspinatus|teres minor\t\tnone\tintermediate\tlight\tkettlebell|floor\t\tserratus punch\thalf get-up\t\t',
    'kettlebell clean and press\tKB clean and press|one-arm clean and press|single-arm kettlebell clean and press|C&P\tkettlebell\tdynamic\tstanding\t\t1\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation|hip extension\tshoulder~50 165|elbow~120 5\tgluteus maximus~none~The bell that can be pressed is light for the hips.|adductor magnus~none~The bell that can be pressed is light for the hips.|hamstrings~none~The bell that can be pressed is light for the hips.\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.8|triceps lateral head~0.51|triceps medial head~0.51\tlow\tintermediate\theavy\tkettlebell\t\tkettlebell overhead press\tdouble kettlebell clean and press\tThe press limits it; the clean brings the bell to the shoulder.\t',
    'double kettlebell clean and press\tdouble clean and press|double KB clean and press|two-kettlebell clean and press\tkettlebell\tdynamic\tstanding\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation|hip extension\tshoulder~50 165|elbow~120 5\tgluteus maximus~none~The bells that can be pressed are light for the hips.|adductor magnus~none~The bells that can be pressed are light for the hips.|hamstrings~none~The bells that can be pressed are light for the hips.\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.8|triceps lateral head~0.51|triceps medial head~0.51\tmoderate\tadvanced\theavy\tkettlebell\t\tkettlebell clean and press|double kettlebell overhead press\t\tThe press limits it; the clean brings the bells to the shoulders.\t',
    'kettlebell push press\tKB push press|one-arm kettlebell push press\tkettlebell\tdynamic\tstanding\t\t1\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.8|triceps lateral head~0.51|triceps medial head~0.51\tlow\tintermediate\theavy\tkettlebell\t\tkettlebell overhead press\tkettlebell jerk\t\t',
    'kettlebell jerk\tKB jerk|one-arm kettlebell jerk|kettlebell push jerk\tkettlebell\tballistic\tstanding\t\t1\t\t\tknee extension|shoulder flexion\telbow extension|scapular upward rotation|plantarflexion\thip~30 0|knee~50 0|ankle~20 -15|shoulder~60 165|elbow~120 5\tquadriceps~indirect~A short, quick drive with a bell held in one hand: speed work for the thigh, not a heavy set.\tanterior deltoid\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius|soleus|upper trapezius|serratus anterior|clavicular chest|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\trectus femoris~0.55|vastus lateralis~0.25|vastus medialis~0.25|vastus intermedius~0.25|soleus~0.69|triceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tlow\tadvanced\theavy\tkettlebell\t\tkettlebell push press\t\t\t',
    'kettlebell pullover\tKB pullover|floor pullover with kettlebell\tkettlebell\tdynamic\tlying\t\t\t\t\tshoulder extension\t\tshoulder~170 85|elbow~15 15\t\tlatissimus dorsi|teres major\tposterior deltoid|triceps long head\ttriceps long head~0.68\tnone\tnovice\tlight\tkettlebell|floor\t\tstraight-arm pulldown\tdumbbell pullover\t\t',
    'rotational medicine ball slam\trotational slam|side slam|medicine ball side slam|med ball side slam|rainbow slam\tmedicine ball\tballistic\tstanding\t\t1\tthrow\tthrow\ttrunk rotation|shoulder extension\ttrunk flexion\tshoulder~160 40|elbow~50 10\t\texternal oblique|internal oblique|latissimus dorsi|teres major\trectus abdominis|transversus abdominis|posterior deltoid|triceps long head\ttriceps long head~0.69\tnone\tintermediate\tlight\tmedicine ball\t\tmedicine ball slam\t\t\t',
    'kneeling medicine ball slam\ttall-kneeling slam|half-kneeling slam|kneeling slam\tmedicine ball\tballistic\tkneeling\t\t\tthrow\tthrow\tshoulder extension\ttrunk flexion|elbow extension\tshoulder~165 40|elbow~60 10\t\tlatissimus dorsi|teres major\trectus abdominis|posterior deltoid|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.7|triceps lateral head~0.28|triceps medial head~0.28\tnone\tnovice\tlight\tmedicine ball\t\t\tmedicine ball slam\t\t',
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
    'backward overhead throw\toverhead backward throw|backward medicine ball throw|backwards overhead toss|BOMB throw|overhead back toss\tmedicine ball\tballistic\tstanding\t\t\tthrow\tthrow|hip hinge\thip extension|knee extension\tshoulder flexion|trunk extension|plantarflexion\thip~85 0|knee~70 0|ankle~20 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|anterior deltoid\tbiceps femoris long head~0.59|semitendinosus~0.59|semimembranosus~0.59|vastus lateralis~0.34|vastus medialis~0.34|vastus intermedius~0.34|gluteus maximus~0.61|adductor magnus~0.33|soleus~0.65\tnone\tintermediate\tlight\tmedicine ball\t\tkettlebell swing\tmedicine ball squat throw\t\t',
    'forward scoop throw\tunderhand forward throw|between-the-legs throw|forward medicine ball scoop|granny toss\tmedicine ball\tballistic\tstanding\t\t\tthrow\tthrow|hip hinge\thip extension|knee extension\tshoulder flexion|trunk extension|plantarflexion\thip~85 0|knee~70 0|ankle~20 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|anterior deltoid\tbiceps femoris long head~0.59|semitendinosus~0.59|semimembranosus~0.59|vastus lateralis~0.34|vastus medialis~0.34|vastus intermedius~0.34|gluteus maximus~0.61|adductor magnus~0.33|soleus~0.65\tnone\tintermediate\tlight\tmedicine ball\t\tkettlebell swing\tbackward overhead throw\t\t',
    'medicine ball squat throw\tsquat throw|vertical toss|medicine ball vertical throw|squat to press throw|overhead vertical throw\tmedicine ball\tballistic\tstanding\t\t\tthrow\tthrow\thip extension|knee extension\tshoulder flexion|elbow extension|plantarflexion\thip~90 0|knee~95 0|ankle~25 -20\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus|soleus|anterior deltoid|triceps long head|triceps lateral head|triceps medial head\tbiceps femoris long head~0.54|semitendinosus~0.54|semimembranosus~0.54|vastus lateralis~0.45|vastus medialis~0.45|vastus intermedius~0.45|gluteus maximus~0.63|adductor magnus~0.35|soleus~0.68\tnone\tintermediate\tlight\tmedicine ball\t\twall ball squat\t\t\t',
    'rope climb\tclimbing rope|rope climbing|rope ascent|arms-only rope climb\trope\tdynamic\thanging\t\t1\tvertical pull\tvertical pull\tshoulder extension|grip\telbow flexion|scapular retraction|scapular depression\tshoulder~150 30|elbow~30 120\ttriceps long head~none~The bending elbow lengthens it, and the climb loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|finger flexors\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis|wrist flexors|wrist extensors\tbiceps long head~0.39|brachialis~0.5\tnone\tadvanced\theavy\trope\t1\ttowel pull-up|towel hang\t\t\t',
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
    'broad jump\tstanding long jump|standing broad jump|SLJ|long jump standing|horizontal jump\tbodyweight\tplyometric\tstanding\t\t\tjump\tjump\thip extension|knee extension|plantarflexion\t\thip~90 0|knee~85 0|ankle~25 -30\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.41|vastus medialis~0.41|vastus intermedius~0.41|gluteus maximus~0.63|adductor magnus~0.35|soleus~0.6\tnone\tnovice\tlight\tfloor\t\tcountermovement jump\trepeated broad jump\t\t',
    'squat jump\tstatic squat jump|paused squat jump|non-countermovement jump|static jump|SJ\tbodyweight\tplyometric\tstanding\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\t\thip~80 0|knee~90 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.43|vastus medialis~0.43|vastus intermedius~0.43|gluteus maximus~0.6|adductor magnus~0.3|soleus~0.56\tnone\tnovice\tlight\tfloor\t\tbodyweight squat\tcountermovement jump\t\t',
    'depth jump\tdrop jump for height|depth drop jump|box depth jump|depth jump to box\tbox\tplyometric\tstanding\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\t\thip~60 0|knee~75 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\tgastrocnemius\tvastus lateralis~0.36|vastus medialis~0.36|vastus intermedius~0.36|gluteus maximus~0.51|adductor magnus~0.21|gastrocnemius~0.59|soleus~0.56\tnone\tadvanced\tlight\tbox|floor\t\tdrop landing|countermovement jump\t\tDrop height and number of contacts count, not hard sets.\t',
    'drop jump\tfast drop jump|reactive drop jump|DJ|rebound drop jump\tbox\tplyometric\tstanding\t\t\tjump\tjump\tplantarflexion|knee extension\thip extension\thip~30 0|knee~40 0|ankle~20 -30\trectus femoris~none~As in a squat: what it shortens at the knee it is stretched by at the hip.\tvastus lateralis|vastus medialis|vastus intermedius|gastrocnemius|soleus\tgluteus maximus\tvastus lateralis~0.2|vastus medialis~0.2|vastus intermedius~0.2|gluteus maximus~0.37|gastrocnemius~0.68|soleus~0.56\tnone\tadvanced\tlight\tbox|floor\t\tpogo jump|drop landing\t\t\t',
    'tuck jump\tknee-tuck jump|tuck jumps in place|repeated tuck jump\tbodyweight\tplyometric\tstanding\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\thip flexion\thip~70 0|knee~75 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\tgastrocnemius\tvastus lateralis~0.36|vastus medialis~0.36|vastus intermedius~0.36|gluteus maximus~0.56|adductor magnus~0.25|gastrocnemius~0.59|soleus~0.56\tnone\tintermediate\tlight\tfloor\t\tcountermovement jump\thurdle jump\t\t',
    'hurdle jump\tdouble-leg hurdle jump|hurdle hop|repeated hurdle jump|barrier jump\tbodyweight\tplyometric\tstanding\t\t\tjump\tjump\tplantarflexion|knee extension|hip extension\t\thip~45 0|knee~50 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|gastrocnemius|soleus\t\tvastus lateralis~0.25|vastus medialis~0.25|vastus intermedius~0.25|gluteus maximus~0.45|adductor magnus~0.14|gastrocnemius~0.65|soleus~0.56\tnone\tintermediate\tlight\thurdles|floor\t\tpogo jump|tuck jump\tdepth jump\t\t',
    'pogo jump\tpogo|pogo hop|ankle hop|ankle jump|stiff-leg hop|ankle bounce|double-leg pogo\tbodyweight\tplyometric\tstanding\t\t\tjump\tjump\tplantarflexion\t\thip~10 0|knee~15 5|ankle~15 -30\t\tgastrocnemius|soleus\t\tgastrocnemius~0.7|soleus~0.53\tnone\tnovice\tlight\tfloor\t\tjump rope\tsingle-leg pogo|drop jump\t\t',
    'jump rope\tskipping rope|rope skipping|rope jump|rope jumping|double unders|skip rope\trope\tplyometric\tstanding\t\t\tjump\tjump\tplantarflexion\t\thip~10 5|knee~15 5|ankle~12 -25\t\tgastrocnemius|soleus\t\tgastrocnemius~0.71|soleus~0.54\tnone\tnovice\tlight\tfloor|rope\t\tbodyweight calf raise\tpogo jump\t\t',
    'seated box jump\tseated jump|seated jump to box|box-seated jump|seated vertical jump\tbodyweight\tplyometric\tseated\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\t\thip~85 0|knee~90 0|ankle~15 -30\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.43|vastus medialis~0.43|vastus intermedius~0.43|gluteus maximus~0.61|adductor magnus~0.33|soleus~0.53\tnone\tintermediate\tlight\tbox\t\tsquat jump|box jump\tkneeling jump\t\t',
    'kneeling jump\tknee jump|jump from knees|kneeling jump to squat|kneeling to box jump\tbodyweight\tplyometric\tkneeling\t\t\tjump\tjump\thip extension|knee extension\tplantarflexion\thip~90 0|knee~110 20|ankle~-20 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.6|vastus medialis~0.6|vastus intermedius~0.6|gluteus maximus~0.63|adductor magnus~0.35\tnone\tadvanced\tlight\tfloor\t\tseated box jump\t\t\t',
    'repeated broad jump\tcontinuous broad jump|consecutive broad jumps|triple broad jump|multiple broad jumps|frog jump|frog leap\tbodyweight\tplyometric\tstanding\t\t\tjump\tjump\thip extension|knee extension|plantarflexion\t\thip~85 0|knee~85 0|ankle~25 -30\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.41|vastus medialis~0.41|vastus intermedius~0.41|gluteus maximus~0.61|adductor magnus~0.33|soleus~0.6\tnone\tintermediate\tlight\tfloor\t\tbroad jump\tbounding\t\t',
    'lateral hurdle jump\tside-to-side jump|lateral barrier jump|lateral line hop|lateral jump|lateral box jump\tbodyweight\tplyometric\tstanding\t\t\tjump\tjump\tplantarflexion|knee extension|hip extension\thip abduction\thip~45 0|knee~50 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|gastrocnemius|soleus\tgluteus medius|gluteus minimus\tvastus lateralis~0.25|vastus medialis~0.25|vastus intermedius~0.25|gluteus maximus~0.45|adductor magnus~0.14|gastrocnemius~0.65|soleus~0.56\tnone\tintermediate\tlight\thurdles|floor\t\tpogo jump|lateral bound\t\t\t',
    'rotational jump\t180-degree jump|jump turn|90-degree jump|quarter-turn jump|rotational box jump\tbodyweight\tplyometric\tstanding\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\t\thip~75 0|knee~80 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.39|vastus medialis~0.39|vastus intermedius~0.39|gluteus maximus~0.58|adductor magnus~0.28|soleus~0.56\tnone\tintermediate\tlight\tfloor\t\tcountermovement jump\t\t\t',
    'band-assisted jump\tassisted jump|overspeed jump|accelerated jump|band-assisted vertical jump\tband\tplyometric\tstanding\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\t\thip~65 0|knee~70 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\tgastrocnemius\tvastus lateralis~0.34|vastus medialis~0.34|vastus intermedius~0.34|gluteus maximus~0.54|adductor magnus~0.23|gastrocnemius~0.6|soleus~0.56\tnone\tintermediate\tlight\tband|rack\t\tcountermovement jump\t\t\t',
    'barbell squat jump\tbarbell jump squat|jump squat|loaded squat jump|weighted jump squat|loaded jump squat|loaded jump\tbarbell\tballistic\tstanding\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\t\thip~75 0|knee~80 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.39|vastus medialis~0.39|vastus intermedius~0.39|gluteus maximus~0.58|adductor magnus~0.28|soleus~0.56\tmoderate\tintermediate\tlight\tbarbell|rack\t\tdumbbell squat jump|trap bar jump\t\t\t',
    'trap bar jump\thex bar jump|trap bar jump squat|hex bar jump squat|trap bar squat jump\ttrap bar\tballistic\tstanding\tneutral\t\tjump\tjump|hip hinge\thip extension|knee extension|plantarflexion\t\thip~70 0|knee~65 0|ankle~15 -30\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\tgastrocnemius\tvastus lateralis~0.32|vastus medialis~0.32|vastus intermedius~0.32|gluteus maximus~0.56|adductor magnus~0.25|gastrocnemius~0.59|soleus~0.53\tmoderate\tintermediate\tlight\ttrap bar\t1\tdumbbell squat jump\tbarbell squat jump\t\t',
    'dumbbell squat jump\tDB squat jump|dumbbell jump squat|dumbbell countermovement jump|kettlebell squat jump|goblet squat jump\tdumbbell\tballistic\tstanding\tneutral\t\tjump\tjump\tknee extension|hip extension|plantarflexion\t\thip~75 0|knee~80 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.39|vastus medialis~0.39|vastus intermedius~0.39|gluteus maximus~0.58|adductor magnus~0.28|soleus~0.56\tlow\tnovice\tlight\tdumbbell\t1\tcountermovement jump\ttrap bar jump|barbell squat jump\t\t',
    'band-resisted jump\tbanded jump|resistance band jump|band-resisted broad jump|banded broad jump\tband\tballistic\tstanding\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\t\thip~75 0|knee~80 0|ankle~20 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.39|vastus medialis~0.39|vastus intermedius~0.39|gluteus maximus~0.58|adductor magnus~0.28|soleus~0.56\tlow\tintermediate\tlight\tband|floor\t\tcountermovement jump\t\t\t',
    'guided-bar squat jump\tguided-bar jump squat|fixed-track jump squat\tguided bar\tballistic\tstanding\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\t\thip~75 0|knee~85 0|ankle~18 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.41|vastus medialis~0.41|vastus intermedius~0.41|gluteus maximus~0.58|adductor magnus~0.28|soleus~0.55\tmoderate\tintermediate\tlight\tguided bar\t\tcountermovement jump\tbarbell squat jump\t\t',
    'leg press jump\thorizontal jump on leg press|leg press throw|ballistic leg press|sled jump\tmachine\tballistic\tsupported\t\t\tjump\tjump\tknee extension|hip extension|plantarflexion\t\thip~100 55|knee~95 5|ankle~15 -25\trectus femoris~indirect~It shortens little, and would bend the very hip that the press straightens.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\trectus femoris\trectus femoris~0.34|vastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47|gluteus maximus~0.88|adductor magnus~0.66|soleus~0.57\tlow\tintermediate\tlight\tmachine leg press\t\tleg press\tcountermovement jump\t\t',
    'split squat jump\tjump lunge|lunge jump|jumping lunge|split jump|scissor jump|alternating split squat jump|cycled split squat jump|split lunge jump\tbodyweight\tplyometric\tsplit\t\t1\tjump\tjump\tknee extension|hip extension\tplantarflexion|hip abduction\thip~85 10|knee~90 15|ankle~15 -20\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus|soleus\tvastus lateralis~0.5|vastus medialis~0.5|vastus intermedius~0.5|gluteus maximus~0.66|adductor magnus~0.36|soleus~0.61\tnone\tintermediate\tlight\tfloor\t\tsplit squat|countermovement jump\tsingle-leg box jump\t\t',
    'single-leg hop\thop|one-leg hop|forward hop|single-leg forward hop|single-leg broad jump|hop for distance|single-leg jump|single-leg vertical jump\tbodyweight\tplyometric\tsingle leg\t\t1\tjump\tjump\tknee extension|hip extension|plantarflexion\thip abduction\thip~60 0|knee~60 0|ankle~22 -30\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\tgluteus medius|gluteus minimus|gastrocnemius\tvastus lateralis~0.3|vastus medialis~0.3|vastus intermedius~0.3|gluteus maximus~0.51|adductor magnus~0.21|gastrocnemius~0.64|soleus~0.58\tnone\tintermediate\tlight\tfloor\t\thop and stick\ttriple hop\t\t',
    'hop and stick\tsingle-leg hop and stick|hop and hold|single-leg hop and hold|multidirectional hop and stick\tbodyweight\tplyometric\tsingle leg\t\t1\tjump\tjump\tknee extension|hip extension|plantarflexion\thip abduction\thip~50 0|knee~50 0|ankle~20 -30\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|gastrocnemius|soleus\tgluteus medius|gluteus minimus\tvastus lateralis~0.25|vastus medialis~0.25|vastus intermedius~0.25|gluteus maximus~0.47|adductor magnus~0.16|gastrocnemius~0.65|soleus~0.56\tnone\tnovice\tlight\tfloor\t\tsingle-leg landing|snap-down\tsingle-leg hop\t\t',
    'triple hop\tsingle-leg triple hop|repeated hop|repeated single-leg hop|continuous hops|speed hop|crossover hop\tbodyweight\tplyometric\tsingle leg\t\t1\tjump\tjump\tplantarflexion|knee extension|hip extension\thip abduction\thip~50 0|knee~50 0|ankle~22 -30\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|gastrocnemius|soleus\tgluteus medius|gluteus minimus\tvastus lateralis~0.25|vastus medialis~0.25|vastus intermedius~0.25|gluteus maximus~0.47|adductor magnus~0.16|gastrocnemius~0.66|soleus~0.58\tnone\tadvanced\tlight\tfloor\t\tsingle-leg hop\tbounding\t\t',
    'single-leg box jump\tone-leg box jump|single-leg jump to box|single-leg hop to box\tbox\tplyometric\tsingle leg\t\t1\tjump\tjump\tknee extension|hip extension|plantarflexion\thip abduction\thip~65 0|knee~65 0|ankle~20 -30\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\tgluteus medius|gluteus minimus|gastrocnemius\tvastus lateralis~0.32|vastus medialis~0.32|vastus intermedius~0.32|gluteus maximus~0.54|adductor magnus~0.23|gastrocnemius~0.62|soleus~0.56\tnone\tadvanced\tlight\tbox\t\tbox jump|single-leg hop\t\t\t',
    'single-leg pogo\tsingle-leg pogo jump|single-leg pogo hop|single-leg ankle hop|one-leg pogo\tbodyweight\tplyometric\tsingle leg\t\t1\tjump\tjump\tplantarflexion\thip abduction\thip~10 0|knee~15 5|ankle~15 -30\t\tgastrocnemius|soleus\tgluteus medius|gluteus minimus\tgastrocnemius~0.7|soleus~0.53\tnone\tintermediate\tlight\tfloor\t\tpogo jump|single-leg calf raise\ttriple hop\t\t',
    'lateral bound\tskater jump|skater hop|skater bound|side bound|lateral bound and stick|speed skater jump\tbodyweight\tplyometric\tsingle leg\t\t1\tjump\tjump\thip extension|knee extension|hip abduction\tplantarflexion\thip~65 0|knee~65 0|ankle~20 -25\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|gluteus medius|gluteus minimus|adductor magnus\ttensor fasciae latae|soleus\tvastus lateralis~0.32|vastus medialis~0.32|vastus intermedius~0.32|gluteus maximus~0.54|tensor fasciae latae~0.74|adductor magnus~0.23|soleus~0.6\tnone\tintermediate\tlight\tfloor\t\thop and stick|lateral lunge\tlateral hurdle jump\t\t',
    'bounding\tbounds|alternate-leg bound|alternating bounds|power bound|horizontal bounds|running bounds\tbodyweight\tplyometric\tsingle leg\t\t1\tjump\tjump|hip hinge\thip extension|plantarflexion|knee extension\thip abduction\thip~45 -10|knee~45 5|ankle~20 -30\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|gastrocnemius|soleus\tgluteus medius|gluteus minimus\tbiceps femoris long head~0.51|semitendinosus~0.51|semimembranosus~0.51|vastus lateralis~0.25|vastus medialis~0.25|vastus intermedius~0.25|gluteus maximus~0.39|adductor magnus~0.12|gastrocnemius~0.65|soleus~0.56\tnone\tadvanced\tlight\ttrack\t\tpower skip|single-leg hop\t\t\t',
    'power skip\tskip for height|skipping for height|skip for distance|A-skip\tbodyweight\tplyometric\tsingle leg\t\t1\tjump\tjump\tplantarflexion|hip extension|knee extension\thip flexion\thip~35 0|knee~35 0|ankle~18 -30\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|gastrocnemius|soleus\tadductor magnus\tvastus lateralis~0.18|vastus medialis~0.18|vastus intermedius~0.18|gluteus maximus~0.4|adductor magnus~0.1|gastrocnemius~0.68|soleus~0.55\tnone\tnovice\tlight\ttrack\t\tjump rope\tbounding\t\t',
    'explosive step-up\tstep-up jump|jumping step-up|alternating push-off|box push-off|plyometric step-up|alternating step-up jump\tbox\tplyometric\tsingle leg\t\t1\tjump\tjump\tknee extension|hip extension|plantarflexion\thip abduction\thip~75 0|knee~80 0|ankle~18 -30\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\tgluteus medius|gluteus minimus\tvastus lateralis~0.39|vastus medialis~0.39|vastus intermedius~0.39|gluteus maximus~0.58|adductor magnus~0.28|soleus~0.55\tnone\tintermediate\tlight\tbox\t\tbodyweight step-up\tsingle-leg box jump\t\t',
    'drop landing\tdepth drop|altitude landing|altitude drop|drop and stick|box drop landing|landing from box|drop squat landing\tbox\tplyometric\tstanding\t\t\tjump\tjump\tknee extension|hip extension\tplantarflexion\thip~70 0|knee~75 0|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.36|vastus medialis~0.36|vastus intermedius~0.36|gluteus maximus~0.56|adductor magnus~0.25\tnone\tnovice\tlight\tbox|floor\t\tsnap-down\tdepth jump|single-leg landing\tThe work is the landing; the path is run from the caught position back to standing.\t',
    'single-leg landing\tsingle-leg drop landing|single-leg drop and stick|single-leg depth drop|single-leg altitude landing\tbox\tplyometric\tsingle leg\t\t1\tjump\tjump\tknee extension|hip extension\tplantarflexion|hip abduction\thip~50 0|knee~55 0|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.27|vastus medialis~0.27|vastus intermedius~0.27|gluteus maximus~0.47|adductor magnus~0.16\tnone\tintermediate\tlight\tbox|floor\t\tdrop landing\thop and stick\t\t',
    'snap-down\tdrop squat|rapid squat drop|landing drill|snap-down to landing\tbodyweight\tplyometric\tstanding\t\t\tjump\tjump\tknee extension|hip extension\t\thip~70 0|knee~75 0|ankle~18 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.36|vastus medialis~0.36|vastus intermedius~0.36|gluteus maximus~0.56|adductor magnus~0.25\tnone\tnovice\tlight\tfloor\t\tbodyweight squat\tdrop landing|squat jump\t\t',
    'sled push\theavy sled push|push sled|weighted sled push|sled drive|sled march\tsled\tdynamic\tstanding\t\t1\t\t\tknee extension|hip extension|plantarflexion\t\thip~100 20|knee~95 15|ankle~25 -20\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tvastus lateralis~0.52|vastus medialis~0.52|vastus intermedius~0.52|gluteus maximus~0.75|adductor magnus~0.49|soleus~0.68\tlow\tnovice\theavy\tsled|track\t\tsled drag|step-up\tsled sprint\t\t',
    'sled drag\tforward sled drag|sled pull forward|sled pull|harness sled drag|sled tow|sled walk|forward sled pull\tsled\tdynamic\tstanding\t\t1\t\t\thip extension|knee extension|plantarflexion\t\thip~65 0|knee~65 20|ankle~22 -25\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\tgastrocnemius\tbiceps femoris long head~0.51|semitendinosus~0.51|semimembranosus~0.51|vastus lateralis~0.42|vastus medialis~0.42|vastus intermedius~0.42|gluteus maximus~0.54|adductor magnus~0.23|gastrocnemius~0.6|soleus~0.62\tnone\tnovice\theavy\tsled|track|harness\t\t\tsled push|resisted sprint\t\t',
    'backward sled drag\treverse sled drag|backward sled pull|backward sled walk|reverse sled pull|backward sled|reverse sled walk\tsled\tdynamic\tstanding\t\t1\t\t\tknee extension\tplantarflexion\thip~60 25|knee~85 20|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius\trectus femoris|soleus\trectus femoris~0.53|vastus lateralis~0.5|vastus medialis~0.5|vastus intermedius~0.5|soleus~0.84\tnone\tnovice\theavy\tsled|track\t1\tterminal knee extension\tsled push\t\t',
    'lateral sled drag\tside sled drag|lateral sled pull|sideways sled drag|crossover sled drag|lateral sled walk\tsled\tdynamic\tstanding\t\t1\t\t\thip abduction|hip adduction\tknee extension\thip~35 15|knee~35 10|ankle~15 0\t\tgracilis|gluteus medius|gluteus minimus|adductor magnus|adductor longus|adductor brevis|pectineus\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|tensor fasciae latae\tvastus lateralis~0.23|vastus medialis~0.23|vastus intermedius~0.23|gracilis~0.53|gluteus maximus~0.48|tensor fasciae latae~0.79|adductor magnus~0.15|adductor longus~0.35|adductor brevis~0.35\tnone\tnovice\tlight\tsled|track|harness\t\tlateral band walk\t\t\t',
    'sled sprint\tlight sled push|sled push sprint|sprint sled push|sled push for speed|fast sled push\tsled\tballistic\tstanding\t\t1\t\t\thip extension|knee extension|plantarflexion\t\thip~90 5|knee~85 15|ankle~20 -25\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\t\tbiceps femoris long head~0.54|semitendinosus~0.54|semimembranosus~0.54|vastus lateralis~0.48|vastus medialis~0.48|vastus intermedius~0.48|gluteus maximus~0.66|adductor magnus~0.37|soleus~0.6\tlow\tintermediate\tlight\tsled|track\t\tsled push\tresisted sprint\t\t',
    'resisted sprint\tsled-towing sprint|sled sprint tow|towed sprint|resisted sprinting|sled pull sprint|sled-resisted sprint|sled tow sprint\tsled\tballistic\tstanding\t\t1\t\t\thip extension|plantarflexion|knee extension\t\thip~75 -10|knee~70 15|ankle~20 -30\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\tgastrocnemius\tbiceps femoris long head~0.51|semitendinosus~0.51|semimembranosus~0.51|vastus lateralis~0.41|vastus medialis~0.41|vastus intermedius~0.41|gluteus maximus~0.53|adductor magnus~0.25|gastrocnemius~0.57|soleus~0.56\tnone\tintermediate\tlight\tsled|track|harness\t\tsled drag|hill sprint\t\t\t',
    'bear-crawl sled drag\tbear crawl sled pull|sled bear crawl|quadruped sled drag\tsled\tdynamic\tquadruped\t\t1\t\t\tknee extension|hip extension\tplantarflexion\thip~105 60|knee~100 45|ankle~20 -15\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus\tvastus lateralis~0.67|vastus medialis~0.67|vastus intermedius~0.67|gluteus maximus~0.9|adductor magnus~0.72|soleus~0.69\tnone\tintermediate\tlight\tsled|floor|harness\t\tsled drag\tsled push\t\t',
    'sled hip extension walk\tlong-stride sled drag|sled powerwalk|sled lunge walk|straight-leg sled drag|strap between legs sled walk\tsled\tdynamic\tstanding\t\t1\t\thip hinge\thip extension\tplantarflexion|knee extension\thip~65 -10|knee~25 5|ankle~15 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tgastrocnemius|soleus\tbiceps femoris long head~0.6|semitendinosus~0.6|semimembranosus~0.6|gluteus maximus~0.49|adductor magnus~0.2|gastrocnemius~0.72|soleus~0.61\tnone\tnovice\tlight\tsled|track|harness\t\tsled drag\tresisted sprint\t\t',
    'sprint\tflat sprint|sprinting|acceleration|acceleration sprint|flying sprint|build-up sprint\tbodyweight\tplyometric\tsingle leg\t\t1\t\t\thip extension|plantarflexion|knee extension\thip flexion|knee flexion\thip~70 -10|knee~70 15|ankle~20 -30\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\tgastrocnemius\tbiceps femoris long head~0.49|semitendinosus~0.49|semimembranosus~0.49|vastus lateralis~0.41|vastus medialis~0.41|vastus intermedius~0.41|gluteus maximus~0.51|adductor magnus~0.22|gastrocnemius~0.57|soleus~0.56\tnone\tintermediate\tlight\ttrack\t\thill sprint\tresisted sprint\t\t',
    'hill sprint\tuphill sprint|incline sprint|hill run|uphill run\tbodyweight\tplyometric\tsingle leg\t\t1\t\t\thip extension|plantarflexion|knee extension\thip flexion\thip~75 -5|knee~75 15|ankle~25 -30\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\tgastrocnemius\tbiceps femoris long head~0.51|semitendinosus~0.51|semimembranosus~0.51|vastus lateralis~0.44|vastus medialis~0.44|vastus intermedius~0.44|gluteus maximus~0.55|adductor magnus~0.26|gastrocnemius~0.58|soleus~0.6\tnone\tnovice\tlight\thill\t\tloaded hill walk\tsprint\t\t',
    'stair run\tstair sprint|stair running|stadium run|stair bounding|step sprint\tbodyweight\tplyometric\tsingle leg\t\t1\t\t\tknee extension|hip extension|plantarflexion\thip flexion\thip~70 0|knee~75 5|ankle~20 -30\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus|soleus\tgastrocnemius\tvastus lateralis~0.39|vastus medialis~0.39|vastus intermedius~0.39|gluteus maximus~0.56|adductor magnus~0.25|gastrocnemius~0.58|soleus~0.56\tnone\tnovice\tlight\tstairs\t\tloaded stair climb\thill sprint\t\t',
    'yoke carry\tyoke walk|super yoke|yoke|barbell back carry|frame yoke carry\tbarbell\tcarry\tstanding\t\t1\tcarry\tcarry\ttrunk extension\thip extension|knee extension|plantarflexion\thip~25 -5|knee~25 5|ankle~10 -15\t\terector spinae|multifidus\tgluteus maximus|soleus\tgluteus maximus~0.32|soleus~0.61\thigh\tadvanced\theavy\tyoke|floor\t\tsandbag carry\t\t\t',
    'sandbag carry\tsandbag bear-hug carry|bear-hug carry|sandbag walk|sandbag front carry|odd-object carry|stone carry|keg carry\tsandbag\tcarry\tstanding\t\t1\tcarry\tcarry\ttrunk extension\thip extension\thip~30 0|knee~25 5|ankle~10 -15\t\terector spinae|multifidus\tgluteus maximus\tgluteus maximus~0.37\tmoderate\tnovice\theavy\tsandbag|floor\t1\t\tyoke carry\t\t',
    'marching carry\tfarmer march|loaded march in place|high-knee carry|suitcase march|marching farmer carry|loaded high-knee march\tdumbbell\tcarry\tsingle leg\t\t1\tcarry\tcarry\tgrip|hip flexion\thip abduction|trunk side bend\thip~0 90|knee~5 90|ankle~0 0\t\tiliacus|psoas major|finger flexors\tsartorius|gluteus medius|gluteus minimus|tensor fasciae latae|external oblique|internal oblique|quadratus lumborum|wrist flexors|wrist extensors\tsartorius~0.63|tensor fasciae latae~0.65|iliacus~0.55|psoas major~0.55\tmoderate\tnovice\tlight\tdumbbell|floor\t1\tstanding knee raise\t\t\t',
    'ruck\trucking|loaded march|weighted walk|pack march|ruck march|weighted vest walk|backpack walk\tnone\tcarry\tstanding\t\t1\tcarry\tcarry\tplantarflexion\thip extension\thip~30 -10|knee~20 5|ankle~12 -20\t\tgastrocnemius|soleus\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus\tbiceps femoris long head~0.53|semitendinosus~0.53|semimembranosus~0.53|gluteus maximus~0.32|gastrocnemius~0.72|soleus~0.58\tmoderate\tnovice\tlight\ttrack\t\t\tloaded hill walk\t\t',
    'loaded hill walk\tincline walk|weighted hill walk|uphill walk|incline treadmill walk|uphill ruck|loaded incline walk\tsandbag\tcarry\tstanding\t\t1\tcarry\tcarry\thip extension|plantarflexion\tknee extension\thip~48 10|knee~40 10|ankle~22 -20\t\tgluteus maximus|adductor magnus|gastrocnemius|soleus\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius\tbiceps femoris long head~0.56|semitendinosus~0.56|semimembranosus~0.56|vastus lateralis~0.25|vastus medialis~0.25|vastus intermedius~0.25|gluteus maximus~0.51|adductor magnus~0.19|gastrocnemius~0.7|soleus~0.66\tlow\tnovice\tlight\thill\t\truck\thill sprint|loaded stair climb\t\t',
    'loaded stair climb\tstair climb|weighted stair climb|stair climb with load|weighted vest stair climb|stair walk|stair machine\tsandbag\tcarry\tstanding\t\t1\tcarry\tcarry\tknee extension|hip extension\tplantarflexion\thip~65 0|knee~70 5|ankle~18 -20\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus\tvastus lateralis~0.37|vastus medialis~0.37|vastus intermedius~0.37|gluteus maximus~0.54|adductor magnus~0.23|soleus~0.63\tlow\tnovice\tlight\tstairs\t\tbodyweight step-up\tstep-up|stair run\t\t',
    'backward walk\tbackward treadmill walk|reverse walk|backwards walking|retro walk|backward uphill walk|backward walk on unpowered treadmill\tbodyweight\tdynamic\tstanding\t\t1\t\t\tknee extension\tplantarflexion\thip~35 10|knee~50 10|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius\trectus femoris\trectus femoris~0.53|vastus lateralis~0.3|vastus medialis~0.3|vastus intermedius~0.3\tnone\tnovice\tlight\ttreadmill|track\t\t\tbackward sled drag\t\t',
    'deadlift\tconventional deadlift|barbell deadlift|DL|BB deadlift|deadlift from the floor\tbarbell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\tknee extension|trunk extension\thip~80 0|knee~60 0|ankle~10 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|erector spinae|multifidus\tbiceps femoris long head~0.6|semitendinosus~0.6|semimembranosus~0.6|vastus lateralis~0.3|vastus medialis~0.3|vastus intermedius~0.3|gluteus maximus~0.6|adductor magnus~0.3\thigh\tintermediate\theavy\tbarbell|floor\t1\tkettlebell deadlift|trap bar deadlift\tdeficit deadlift|paused deadlift\t\t',
    'Romanian deadlift\tRDL|barbell RDL|barbell Romanian deadlift|Romanian\tbarbell\tdynamic\tstanding\toverhand\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~90 0|knee~15 15|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.69|semitendinosus~0.69|semimembranosus~0.69|gluteus maximus~0.63|adductor magnus~0.35\thigh\tintermediate\theavy\tbarbell\t1\tdumbbell Romanian deadlift|kettlebell deadlift\tdeficit Romanian deadlift|snatch-grip Romanian deadlift\t\t',
    'stiff-leg deadlift\tSLDL|stiff-legged deadlift|straight-leg deadlift|barbell stiff-leg deadlift|stiff leg DL\tbarbell\tdynamic\tstanding\toverhand\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~90 0|knee~10 5|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.71|semitendinosus~0.71|semimembranosus~0.71|gluteus maximus~0.63|adductor magnus~0.35\thigh\tintermediate\theavy\tbarbell|floor\t1\tdumbbell stiff-leg deadlift|Romanian deadlift\tdeficit stiff-leg deadlift\t\t',
    'dumbbell Romanian deadlift\tDB RDL|dumbbell RDL|DB Romanian deadlift|kettlebell Romanian deadlift|KB RDL\tdumbbell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~90 0|knee~15 15|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.69|semitendinosus~0.69|semimembranosus~0.69|gluteus maximus~0.63|adductor magnus~0.35\tmoderate\tnovice\tlight\tdumbbell\t1\tkettlebell deadlift|band good morning\tRomanian deadlift|single-leg Romanian deadlift\t\t',
    'trap bar deadlift\thex bar deadlift|TBDL|trap-bar DL|high-handle trap bar deadlift|HBDL\ttrap bar\tdynamic\tstanding\tneutral\t\thip hinge\thip hinge\thip extension|knee extension\ttrunk extension\thip~80 0|knee~75 0|ankle~15 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus|erector spinae|multifidus\tbiceps femoris long head~0.56|semitendinosus~0.56|semimembranosus~0.56|vastus lateralis~0.36|vastus medialis~0.36|vastus intermedius~0.36|gluteus maximus~0.6|adductor magnus~0.3\thigh\tnovice\theavy\ttrap bar|floor\t1\tkettlebell deadlift|dumbbell deadlift\tdeadlift|deficit trap bar deadlift\t\t',
    'sumo deadlift\twide-stance deadlift|sumo DL|barbell sumo deadlift\tbarbell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\tknee extension|hip adduction|trunk extension\thip~80 0|knee~65 0|ankle~5 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|gracilis|adductor longus|adductor brevis|pectineus|erector spinae|multifidus\tbiceps femoris long head~0.58|semitendinosus~0.58|semimembranosus~0.58|vastus lateralis~0.32|vastus medialis~0.32|vastus intermedius~0.32|gracilis~0.52|gluteus maximus~0.6|adductor magnus~0.3|adductor longus~0.24|adductor brevis~0.24\thigh\tintermediate\theavy\tbarbell|floor\t1\tkettlebell sumo deadlift|deadlift\tdeficit deadlift\t\t',
    'single-leg Romanian deadlift\tSL RDL|single-leg RDL|one-leg RDL|dumbbell single-leg RDL|single-leg deadlift|single-leg stiff-leg deadlift\tdumbbell\tdynamic\tsingle leg\t\t1\thip hinge\thip hinge\thip extension\thip abduction|trunk extension\thip~85 0|knee~20 15|ankle~2 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus|erector spinae|multifidus\tbiceps femoris long head~0.66|semitendinosus~0.66|semimembranosus~0.66|gluteus maximus~0.61|adductor magnus~0.33\tlow\tintermediate\tlight\tdumbbell\t1\tB-stance Romanian deadlift|dumbbell Romanian deadlift\tbarbell single-leg Romanian deadlift\t\t',
    'good morning\tbarbell good morning|GM|bent-knee good morning\tbarbell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~80 0|knee~20 20|ankle~5 5\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.64|semitendinosus~0.64|semimembranosus~0.64|gluteus maximus~0.6|adductor magnus~0.3\thigh\tintermediate\theavy\tbarbell|rack\t\tband good morning|dumbbell Romanian deadlift\tsafety bar good morning\t\t',
    'kettlebell deadlift\tKB deadlift|KB DL\tkettlebell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\tknee extension|trunk extension\thip~75 0|knee~45 0|ankle~5 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|erector spinae|multifidus\tbiceps femoris long head~0.62|semitendinosus~0.62|semimembranosus~0.62|vastus lateralis~0.23|vastus medialis~0.23|vastus intermedius~0.23|gluteus maximus~0.58|adductor magnus~0.28\tlow\tnovice\tlight\tkettlebell\t1\tband pull-through|hip hinge drill\ttrap bar deadlift|kettlebell swing\t\t',
    'dumbbell deadlift\tDB deadlift|two-dumbbell deadlift\tdumbbell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\tknee extension|trunk extension\thip~80 0|knee~60 0|ankle~10 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|erector spinae|multifidus\tbiceps femoris long head~0.6|semitendinosus~0.6|semimembranosus~0.6|vastus lateralis~0.3|vastus medialis~0.3|vastus intermedius~0.3|gluteus maximus~0.6|adductor magnus~0.3\tmoderate\tnovice\theavy\tdumbbell\t1\tkettlebell deadlift\ttrap bar deadlift|deadlift\t\t',
    'dumbbell stiff-leg deadlift\tDB SLDL|DB stiff-leg deadlift|dumbbell straight-leg deadlift|dumbbell SLDL\tdumbbell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~90 0|knee~10 5|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.71|semitendinosus~0.71|semimembranosus~0.71|gluteus maximus~0.63|adductor magnus~0.35\tmoderate\tnovice\tlight\tdumbbell\t1\tdumbbell Romanian deadlift\tstiff-leg deadlift\t\t',
    'rack pull\tblock pull|deadlift from blocks|deadlift from pins|partial deadlift|block deadlift\tbarbell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~50 0|knee~25 0|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.6|semitendinosus~0.6|semimembranosus~0.6|gluteus maximus~0.47|adductor magnus~0.16\thigh\tintermediate\theavy\tbarbell|rack\t1\tkettlebell deadlift\tdeadlift\t\t',
    'deficit deadlift\tdeadlift off plate|deadlift from deficit\tbarbell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\tknee extension|trunk extension\thip~90 0|knee~75 0|ankle~15 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|erector spinae|multifidus\tbiceps femoris long head~0.59|semitendinosus~0.59|semimembranosus~0.59|vastus lateralis~0.36|vastus medialis~0.36|vastus intermedius~0.36|gluteus maximus~0.63|adductor magnus~0.35\thigh\tadvanced\theavy\tbarbell|plate|floor\t1\tdeadlift\t\t\t',
    'paused deadlift\tpause deadlift|deadlift with pause at the knee\tbarbell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\tknee extension|trunk extension\thip~80 0|knee~60 0|ankle~10 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|erector spinae|multifidus\tbiceps femoris long head~0.6|semitendinosus~0.6|semimembranosus~0.6|vastus lateralis~0.3|vastus medialis~0.3|vastus intermedius~0.3|gluteus maximus~0.6|adductor magnus~0.3\thigh\tadvanced\theavy\tbarbell|floor\t1\tdeadlift\tdeficit deadlift\t\t',
    'snatch-grip deadlift\twide-grip deadlift|snatch grip DL|SGDL\tbarbell\tdynamic\tstanding\twide\t\thip hinge\thip hinge\thip extension\tknee extension|trunk extension\thip~88 0|knee~70 0|ankle~12 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|erector spinae|multifidus\tbiceps femoris long head~0.59|semitendinosus~0.59|semimembranosus~0.59|vastus lateralis~0.34|vastus medialis~0.34|vastus intermedius~0.34|gluteus maximus~0.62|adductor magnus~0.34\thigh\tadvanced\theavy\tbarbell|floor\t1\tdeadlift\t\t\t',
    'snatch-grip Romanian deadlift\tsnatch-grip RDL|wide-grip RDL\tbarbell\tdynamic\tstanding\twide\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~95 0|knee~20 15|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.69|semitendinosus~0.69|semimembranosus~0.69|gluteus maximus~0.65|adductor magnus~0.38\thigh\tadvanced\theavy\tbarbell\t1\tRomanian deadlift\t\t\t',
    'deficit Romanian deadlift\tdeficit RDL|RDL off plate\tbarbell\tdynamic\tstanding\toverhand\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~98 0|knee~15 15|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.7|semitendinosus~0.7|semimembranosus~0.7|gluteus maximus~0.66|adductor magnus~0.39\thigh\tadvanced\theavy\tbarbell|plate\t1\tRomanian deadlift\t\t\t',
    'deficit stiff-leg deadlift\tdeficit SLDL|stiff-leg deadlift off plate\tbarbell\tdynamic\tstanding\toverhand\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~98 0|knee~10 5|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.73|semitendinosus~0.73|semimembranosus~0.73|gluteus maximus~0.66|adductor magnus~0.39\thigh\tadvanced\theavy\tbarbell|plate|floor\t1\tstiff-leg deadlift\t\t\t',
    'deficit trap bar deadlift\tlow-handle trap bar deadlift|deficit hex bar deadlift\ttrap bar\tdynamic\tstanding\tneutral\t\thip hinge\thip hinge\thip extension|knee extension\ttrunk extension\thip~88 0|knee~80 0|ankle~18 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus|erector spinae|multifidus\tbiceps femoris long head~0.57|semitendinosus~0.57|semimembranosus~0.57|vastus lateralis~0.39|vastus medialis~0.39|vastus intermedius~0.39|gluteus maximus~0.62|adductor magnus~0.34\thigh\tintermediate\theavy\ttrap bar|plate|floor\t1\ttrap bar deadlift\t\t\t',
    'trap bar Romanian deadlift\ttrap bar RDL|hex bar RDL|hex bar Romanian deadlift\ttrap bar\tdynamic\tstanding\tneutral\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~88 0|knee~15 15|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.68|semitendinosus~0.68|semimembranosus~0.68|gluteus maximus~0.62|adductor magnus~0.34\thigh\tnovice\theavy\ttrap bar\t1\tdumbbell Romanian deadlift\tRomanian deadlift\t\t',
    'kettlebell sumo deadlift\tKB sumo deadlift|dumbbell sumo deadlift|sumo kettlebell deadlift\tkettlebell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\tknee extension|hip adduction|trunk extension\thip~80 0|knee~60 0|ankle~5 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|gracilis|adductor longus|adductor brevis|pectineus|erector spinae|multifidus\tbiceps femoris long head~0.6|semitendinosus~0.6|semimembranosus~0.6|vastus lateralis~0.3|vastus medialis~0.3|vastus intermedius~0.3|gracilis~0.54|gluteus maximus~0.6|adductor magnus~0.3|adductor longus~0.24|adductor brevis~0.24\tlow\tnovice\tlight\tkettlebell\t1\thip hinge drill\tsumo deadlift\t\t',
    'sumo Romanian deadlift\tsumo RDL|wide-stance RDL\tbarbell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\thip adduction|trunk extension\thip~85 0|knee~15 15|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tgracilis|adductor longus|adductor brevis|pectineus|erector spinae|multifidus\tbiceps femoris long head~0.67|semitendinosus~0.67|semimembranosus~0.67|gracilis~0.63|gluteus maximus~0.61|adductor magnus~0.33|adductor longus~0.23|adductor brevis~0.23\thigh\tintermediate\theavy\tbarbell\t1\tRomanian deadlift\t\t\t',
    'B-stance Romanian deadlift\tB-stance RDL|kickstand RDL|kickstand Romanian deadlift|staggered-stance RDL|split-stance RDL\tdumbbell\tdynamic\tsplit\t\t1\thip hinge\thip hinge\thip extension\thip abduction|trunk extension\thip~88 0|knee~15 15|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus|erector spinae|multifidus\tbiceps femoris long head~0.68|semitendinosus~0.68|semimembranosus~0.68|gluteus maximus~0.62|adductor magnus~0.34\tmoderate\tnovice\tlight\tdumbbell\t1\tdumbbell Romanian deadlift\tsingle-leg Romanian deadlift\t\t',
    'barbell single-leg Romanian deadlift\tbarbell single-leg RDL|BB SL RDL|barbell SL RDL\tbarbell\tdynamic\tsingle leg\t\t1\thip hinge\thip hinge\thip extension\thip abduction|trunk extension\thip~85 0|knee~20 15|ankle~2 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus|erector spinae|multifidus\tbiceps femoris long head~0.66|semitendinosus~0.66|semimembranosus~0.66|gluteus maximus~0.61|adductor magnus~0.33\tmoderate\tadvanced\theavy\tbarbell\t1\tsingle-leg Romanian deadlift\t\t\t',
    'landmine single-leg Romanian deadlift\tlandmine single-leg RDL|landmine SL RDL|angled-bar single-leg RDL\tbarbell\tdynamic\tsingle leg\t\t1\thip hinge\thip hinge\thip extension\thip abduction|trunk extension\thip~85 0|knee~20 15|ankle~2 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus|erector spinae|multifidus\tbiceps femoris long head~0.66|semitendinosus~0.66|semimembranosus~0.66|gluteus maximus~0.61|adductor magnus~0.33\tlow\tintermediate\tlight\tlandmine|barbell\t1\tB-stance Romanian deadlift\tsingle-leg Romanian deadlift\t\t',
    'bodyweight single-leg Romanian deadlift\tbodyweight single-leg RDL|single-leg hinge|single-leg hip hinge|single-leg reach|bodyweight SL RDL\tbodyweight\tdynamic\tsingle leg\t\t1\thip hinge\thip hinge\thip extension\thip abduction\thip~85 0|knee~20 15|ankle~2 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tbiceps femoris long head~0.66|semitendinosus~0.66|semimembranosus~0.66|gluteus maximus~0.61|adductor magnus~0.33\tnone\tnovice\tlight\tfloor\t\thip hinge drill\tsingle-leg Romanian deadlift\t\t',
    'suitcase deadlift\tone-arm deadlift|single-arm deadlift|kettlebell suitcase deadlift\tkettlebell\tdynamic\tstanding\tneutral\t1\thip hinge\thip hinge\thip extension\tknee extension|trunk extension|trunk side bend\thip~80 0|knee~60 0|ankle~10 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|external oblique|internal oblique|erector spinae|multifidus|quadratus lumborum\tbiceps femoris long head~0.6|semitendinosus~0.6|semimembranosus~0.6|vastus lateralis~0.3|vastus medialis~0.3|vastus intermedius~0.3|gluteus maximus~0.6|adductor magnus~0.3\tlow\tintermediate\tlight\tkettlebell\t1\tkettlebell deadlift\tdeadlift\t\t',
    'guided-bar Romanian deadlift\tguided-bar RDL|fixed-track RDL|guided-bar stiff-leg deadlift\tguided bar\tdynamic\tstanding\toverhand\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~88 0|knee~15 15|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.68|semitendinosus~0.68|semimembranosus~0.68|gluteus maximus~0.62|adductor magnus~0.34\thigh\tnovice\theavy\tguided bar\t1\tdumbbell Romanian deadlift\tRomanian deadlift\t\t',
    'cable Romanian deadlift\tcable RDL|cable stiff-leg deadlift|cable deadlift\tcable\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~88 0|knee~15 15|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.68|semitendinosus~0.68|semimembranosus~0.68|gluteus maximus~0.62|adductor magnus~0.34\tlow\tnovice\tlight\tcable\t1\tcable pull-through\tdumbbell Romanian deadlift\t\t',
    'cable pull-through\tpull-through|cable hip hinge|rope pull-through\tcable\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~85 0|knee~25 10|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.66|semitendinosus~0.66|semimembranosus~0.66|gluteus maximus~0.61|adductor magnus~0.33\tlow\tnovice\tlight\tcable\t1\tband pull-through\tkettlebell swing|Romanian deadlift\t\t',
    'band pull-through\tbanded pull-through|resistance band pull-through\tband\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\t\thip~85 0|knee~25 10|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\t\tbiceps femoris long head~0.66|semitendinosus~0.66|semimembranosus~0.66|gluteus maximus~0.61|adductor magnus~0.33\tnone\tnovice\tlight\tband|rack\t1\thip hinge drill\tcable pull-through\t\t',
    'hip hinge drill\thinge drill|dowel hip hinge|broomstick hinge|wall hinge|bodyweight hip hinge|bodyweight good morning\tnone\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\t\thip~80 0|knee~20 15|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\t\tbiceps femoris long head~0.65|semitendinosus~0.65|semimembranosus~0.65|gluteus maximus~0.6|adductor magnus~0.3\tnone\tnovice\tlight\tfloor\t\tglute bridge\tband good morning|kettlebell deadlift\t\t',
    'band good morning\tbanded good morning|resistance band good morning\tband\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~80 0|knee~20 15|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.65|semitendinosus~0.65|semimembranosus~0.65|gluteus maximus~0.6|adductor magnus~0.3\tlow\tnovice\tlight\tband\t\thip hinge drill\tgood morning|dumbbell Romanian deadlift\t\t',
    'safety bar good morning\tSSB good morning|safety squat bar good morning\tbarbell\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~80 0|knee~20 20|ankle~5 5\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.64|semitendinosus~0.64|semimembranosus~0.64|gluteus maximus~0.6|adductor magnus~0.3\thigh\tintermediate\theavy\tbarbell|rack\t\tgood morning\t\t\t',
    'seated good morning\tseated barbell good morning\tbarbell\tdynamic\tseated\t\t\t\t\thip extension|trunk extension\t\thip~105 75|knee~90 90|ankle~0 0\t\tadductor magnus|erector spinae|multifidus\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus\tbiceps femoris long head~0.57|semitendinosus~0.57|semimembranosus~0.57|gluteus maximus~0.94|adductor magnus~0.8\tmoderate\tintermediate\tlight\tbarbell|rack|bench\t\tback extension\tgood morning\tThe lower back does as much of it as the hips.\t',
    'sandbag deadlift\tsandbag lift|odd-object deadlift\tsandbag\tdynamic\tstanding\t\t\thip hinge\thip hinge\thip extension\tknee extension|trunk extension\thip~85 0|knee~65 0|ankle~10 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|erector spinae|multifidus\tbiceps femoris long head~0.6|semitendinosus~0.6|semimembranosus~0.6|vastus lateralis~0.32|vastus medialis~0.32|vastus intermedius~0.32|gluteus maximus~0.61|adductor magnus~0.33\tmoderate\tintermediate\theavy\tsandbag|floor\t1\tkettlebell deadlift\tsandbag over shoulder\t\t',
    'isometric mid-thigh pull\tIMTP|isometric deadlift|rack isometric pull\tbarbell\tisometric\tstanding\t\t\t\t\thip extension|knee extension\ttrunk extension\thip~35|knee~40|ankle~10\trectus femoris~none~Held as in a squat: it would bend the hip that the hold keeps from bending.\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.53|semitendinosus~0.53|semimembranosus~0.53|vastus lateralis~0.4|vastus medialis~0.4|vastus intermedius~0.4|gluteus maximus~0.57|adductor magnus~0.23\thigh\tintermediate\theavy\tbarbell|rack\t1\t\track pull\t\t',
    'back extension\t45-degree back extension|hyperextension|45-degree hyperextension|45 degree hip extension|incline back extension\tbodyweight\tdynamic\tincline\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~85 0|knee~0 0|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.73|semitendinosus~0.73|semimembranosus~0.73|gluteus maximus~0.61|adductor magnus~0.33\tnone\tnovice\tlight\t45-degree bench\t\tprone hip extension|hip hinge drill\tweighted back extension|single-leg back extension\t\t',
    'weighted back extension\tweighted hyperextension|loaded back extension|barbell back extension|plate back extension\tplate\tdynamic\tincline\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~85 0|knee~0 0|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.73|semitendinosus~0.73|semimembranosus~0.73|gluteus maximus~0.61|adductor magnus~0.33\tlow\tintermediate\theavy\t45-degree bench|plate\t1\tback extension\tsingle-leg back extension\t\t',
    'single-leg back extension\tone-leg back extension|single-leg hyperextension|single-leg hip extension on bench\tbodyweight\tdynamic\tincline\t\t1\thip hinge\thip hinge\thip extension\ttrunk extension|hip abduction\thip~85 0|knee~0 0|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus|erector spinae|multifidus\tbiceps femoris long head~0.73|semitendinosus~0.73|semimembranosus~0.73|gluteus maximus~0.61|adductor magnus~0.33\tnone\tintermediate\tlight\t45-degree bench\t\tback extension\t\t\t',
    'horizontal back extension\tRoman chair back extension|90-degree back extension|GHD back extension|hip extension on Roman chair|GHD hip extension\tbodyweight\tdynamic\tprone\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~85 0|knee~0 0|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.73|semitendinosus~0.73|semimembranosus~0.73|gluteus maximus~0.61|adductor magnus~0.33\tnone\tintermediate\tlight\tglute-ham bench\t\tback extension\tweighted back extension|glute-ham raise\t\t',
    'back extension hold\tisometric back extension|trunk extension hold|Roman chair hold|isometric hip extension hold\tbodyweight\tisometric\tprone\t\t\t\t\thip extension|trunk extension\t\thip~5|knee~0|ankle~0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus|erector spinae|multifidus\t\tbiceps femoris long head~0.55|semitendinosus~0.55|semimembranosus~0.55|gluteus maximus~0.27|adductor magnus~0.03\tnone\tnovice\tlight\tglute-ham bench\t\tprone hip extension\tsingle-leg back extension hold\t\t',
    'single-leg back extension hold\tsingle-leg Roman chair hold|single-leg isometric back extension\tbodyweight\tisometric\tprone\t\t1\t\t\thip extension|trunk extension\thip abduction\thip~5|knee~5|ankle~0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus|erector spinae|multifidus\tgluteus medius|gluteus minimus\tbiceps femoris long head~0.53|semitendinosus~0.53|semimembranosus~0.53|gluteus maximus~0.27|adductor magnus~0.03\tnone\tintermediate\tlight\tglute-ham bench\t\tback extension hold\t\t\t',
    'reverse hyperextension\treverse hyper|reverse back extension\tmachine\tdynamic\tprone\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~85 -5|knee~10 5|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.69|semitendinosus~0.69|semimembranosus~0.69|gluteus maximus~0.59|adductor magnus~0.31\tnone\tnovice\theavy\tmachine reverse hyperextension\t\tbench reverse hyperextension\t\t\t',
    'bench reverse hyperextension\tbodyweight reverse hyper|ball reverse hyper|bodyweight reverse hyperextension\tbodyweight\tdynamic\tprone\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~75 -5|knee~5 5|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.68|semitendinosus~0.68|semimembranosus~0.68|gluteus maximus~0.55|adductor magnus~0.26\tnone\tnovice\tlight\tbench\t\tprone hip extension\treverse hyperextension\t\t',
    'hip thrust\tbarbell hip thrust|BHT|BB hip thrust|thrust|bench hip thrust\tbarbell\tdynamic\tsupported\t\t\thip thrust\thip thrust\thip extension\t\thip~80 0|knee~90 90|ankle~10 10\t\tgluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus\tbiceps femoris long head~0.34|semitendinosus~0.34|semimembranosus~0.34|gluteus maximus~0.6|adductor magnus~0.3\tnone\tnovice\theavy\tbarbell|bench\t\tglute bridge|dumbbell hip thrust\tsingle-leg hip thrust\t\t',
    'glute bridge\tbridge|hip bridge|bodyweight glute bridge|bodyweight bridge|hip raise|two-leg bridge\tbodyweight\tdynamic\tlying\t\t\thip thrust\thip thrust\thip extension\t\thip~50 -5|knee~95 95|ankle~0 0\t\tgluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus\tbiceps femoris long head~0.24|semitendinosus~0.24|semimembranosus~0.24|gluteus maximus~0.44|adductor magnus~0.15\tnone\tnovice\tlight\tfloor\t\t\tsingle-leg glute bridge|hip thrust\t\t',
    'single-leg hip thrust\tone-leg hip thrust|SL hip thrust|single-leg bench hip thrust\tbodyweight\tdynamic\tsupported\t\t1\thip thrust\thip thrust\thip extension\thip abduction\thip~80 0|knee~90 90|ankle~10 10\t\tgluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus medius|gluteus minimus\tbiceps femoris long head~0.34|semitendinosus~0.34|semimembranosus~0.34|gluteus maximus~0.6|adductor magnus~0.3\tnone\tintermediate\tlight\tbench\t\tsingle-leg glute bridge|hip thrust\t\t\t',
    'dumbbell hip thrust\tDB hip thrust|kettlebell hip thrust|bodyweight hip thrust\tdumbbell\tdynamic\tsupported\t\t\thip thrust\thip thrust\thip extension\t\thip~80 0|knee~90 90|ankle~10 10\t\tgluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus\tbiceps femoris long head~0.34|semitendinosus~0.34|semimembranosus~0.34|gluteus maximus~0.6|adductor magnus~0.3\tnone\tnovice\tlight\tdumbbell|bench\t\tglute bridge\thip thrust|B-stance hip thrust\t\t',
    'hip thrust machine\tmachine hip thrust|glute bridge machine|lever hip thrust\tmachine\tdynamic\tsupported\t\t\thip thrust\thip thrust\thip extension\t\thip~85 0|knee~90 90|ankle~10 10\t\tgluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus\tbiceps femoris long head~0.35|semitendinosus~0.35|semimembranosus~0.35|gluteus maximus~0.61|adductor magnus~0.33\tnone\tnovice\theavy\tmachine hip thrust\t\tglute bridge\thip thrust\t\t',
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
    'cable hip extension\tcable kickback|cable glute kickback|glute kickback|standing hip extension|multi-hip extension\tcable\tdynamic\tstanding\t\t1\t\thip hinge\thip extension\t\thip~50 -15|knee~15 15|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\t\tbiceps femoris long head~0.56|semitendinosus~0.56|semimembranosus~0.56|gluteus maximus~0.39|adductor magnus~0.13\tnone\tnovice\tlight\tcable\t\tband kickback\tmachine glute kickback\t\t',
    'machine glute kickback\tglute machine|rear kick machine|kneeling glute machine|machine kickback|machine hip extension\tmachine\tdynamic\tsupported\t\t1\t\t\thip extension\tknee extension\thip~95 5|knee~95 40|ankle~0 0\t\tgluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius\tbiceps femoris long head~0.48|semitendinosus~0.48|semimembranosus~0.48|vastus lateralis~0.63|vastus medialis~0.63|vastus intermedius~0.63|gluteus maximus~0.67|adductor magnus~0.4\tnone\tnovice\theavy\tmachine glute kickback\t\tdonkey kick\tcable hip extension\t\t',
    'band kickback\tbanded kickback|band hip extension|standing band hip extension\tband\tdynamic\tstanding\t\t1\t\thip hinge\thip extension\t\thip~30 -15|knee~10 10|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus\tadductor magnus\tbiceps femoris long head~0.53|semitendinosus~0.53|semimembranosus~0.53|gluteus maximus~0.29|adductor magnus~0.06\tnone\tnovice\tlight\tband\t\tprone hip extension\tcable hip extension\t\t',
    'donkey kick\tquadruped hip extension|bent-knee kickback|glute kickback on all fours|bird-dog leg lift\tbodyweight\tdynamic\tquadruped\t\t1\t\t\thip extension\t\thip~90 -5|knee~90 90|ankle~0 0\t\tgluteus maximus|adductor magnus\tbiceps femoris long head|semitendinosus|semimembranosus\tbiceps femoris long head~0.35|semitendinosus~0.35|semimembranosus~0.35|gluteus maximus~0.61|adductor magnus~0.33\tnone\tnovice\tlight\tfloor\t\tglute bridge\tmachine glute kickback\t\t',
    'prone hip extension\tprone leg lift|lying hip extension|prone leg raise\tbodyweight\tdynamic\tprone\t\t1\t\t\thip extension\ttrunk extension\thip~10 -15|knee~0 0|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus\terector spinae|multifidus\tbiceps femoris long head~0.52|semitendinosus~0.52|semimembranosus~0.52|gluteus maximus~0.19\tnone\tnovice\tlight\tfloor\t\t\tdonkey kick|bench reverse hyperextension\t\t',
    'kettlebell swing\tswing|KB swing|KBS|Russian swing|two-hand swing|two-hand kettlebell swing|hip-hinge swing|dumbbell swing\tkettlebell\tballistic\tstanding\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~85 0|knee~30 0|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.67|semitendinosus~0.67|semimembranosus~0.67|gluteus maximus~0.61|adductor magnus~0.33\tmoderate\tintermediate\tlight\tkettlebell\t1\tkettlebell deadlift|cable pull-through\tsingle-arm kettlebell swing|heavy kettlebell swing\t\t',
    'single-arm kettlebell swing\tone-arm swing|single-arm swing|one-hand swing|one-arm kettlebell swing\tkettlebell\tballistic\tstanding\t\t1\thip hinge\thip hinge\thip extension\ttrunk extension\thip~85 0|knee~30 0|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.67|semitendinosus~0.67|semimembranosus~0.67|gluteus maximus~0.61|adductor magnus~0.33\tmoderate\tintermediate\tlight\tkettlebell\t1\tkettlebell swing\tkettlebell snatch\t\t',
    'overhead kettlebell swing\toverhead swing|full swing|kettlebell swing overhead\tkettlebell\tballistic\tstanding\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~85 0|knee~30 0|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.67|semitendinosus~0.67|semimembranosus~0.67|gluteus maximus~0.61|adductor magnus~0.33\tmoderate\tintermediate\tlight\tkettlebell\t1\tkettlebell swing\tkettlebell snatch\t\t',
    'heavy kettlebell swing\tdouble kettlebell swing|heavy swing|double swing\tkettlebell\tballistic\tstanding\t\t\thip hinge\thip hinge\thip extension\ttrunk extension\thip~85 0|knee~35 0|ankle~5 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\terector spinae|multifidus\tbiceps femoris long head~0.66|semitendinosus~0.66|semimembranosus~0.66|gluteus maximus~0.61|adductor magnus~0.33\tmoderate\tadvanced\theavy\tkettlebell\t1\tkettlebell swing\t\t\t',
    'band swing\tbanded hip snap|band-resisted hinge jump|band-resisted swing\tband\tballistic\tstanding\t\t\thip hinge\thip hinge\thip extension\t\thip~75 0|knee~30 0|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\t\tbiceps femoris long head~0.65|semitendinosus~0.65|semimembranosus~0.65|gluteus maximus~0.58|adductor magnus~0.28\tnone\tnovice\tlight\tband|rack\t\tband pull-through\tkettlebell swing\t\t',
    'power clean\tPC|barbell power clean|power clean from the floor\tbarbell\tballistic\tstanding\toverhand\t\t\t\thip extension|knee extension\tscapular elevation|trunk extension|plantarflexion\thip~85 75 45 0|knee~75 35 50 0|ankle~15 0 12 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius\tbiceps femoris long head~0.62|semitendinosus~0.62|semimembranosus~0.62|vastus lateralis~0.4|vastus medialis~0.4|vastus intermedius~0.4|gluteus maximus~0.71|adductor magnus~0.44|soleus~0.7\thigh\tadvanced\theavy\tbarbell|floor\t1\thang power clean|clean pull\tclean\t\t',
    'clean\tfull clean|squat clean|barbell clean|clean from the floor\tbarbell\tballistic\tstanding\toverhand\t\t\t\thip extension|knee extension\tscapular elevation|trunk extension|plantarflexion\thip~85 75 45 0|knee~75 35 50 0|ankle~15 0 12 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius\tbiceps femoris long head~0.62|semitendinosus~0.62|semimembranosus~0.62|vastus lateralis~0.4|vastus medialis~0.4|vastus intermedius~0.4|gluteus maximus~0.71|adductor magnus~0.44|soleus~0.7\thigh\tadvanced\theavy\tbarbell|floor\t1\tpower clean|hang clean\tclean and jerk\t\t',
    'hang power clean\tHPC|hang power clean from above the knee\tbarbell\tballistic\tstanding\toverhand\t\thip hinge\thip hinge\thip extension|knee extension\tscapular elevation|trunk extension|plantarflexion\thip~65 40 0|knee~25 45 0|ankle~3 10 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius\tbiceps femoris long head~0.59|semitendinosus~0.59|semimembranosus~0.59|vastus lateralis~0.28|vastus medialis~0.28|vastus intermedius~0.28|gluteus maximus~0.57|adductor magnus~0.26|soleus~0.66\thigh\tintermediate\theavy\tbarbell\t1\tjump shrug|hang clean pull\tpower clean|hang clean\t\t',
    'hang clean\thang squat clean|clean from the hang|hang full clean\tbarbell\tballistic\tstanding\toverhand\t\thip hinge\thip hinge\thip extension|knee extension\tscapular elevation|trunk extension|plantarflexion\thip~65 40 0|knee~25 45 0|ankle~3 10 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius\tbiceps femoris long head~0.59|semitendinosus~0.59|semimembranosus~0.59|vastus lateralis~0.28|vastus medialis~0.28|vastus intermedius~0.28|gluteus maximus~0.57|adductor magnus~0.26|soleus~0.66\thigh\tadvanced\theavy\tbarbell\t1\thang power clean\tclean\t\t',
    'block power clean\tpower clean from blocks|clean from blocks|block clean\tbarbell\tballistic\tstanding\toverhand\t\thip hinge\thip hinge\thip extension|knee extension\tscapular elevation|trunk extension|plantarflexion\thip~65 40 0|knee~30 45 0|ankle~3 10 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius\tbiceps femoris long head~0.58|semitendinosus~0.58|semimembranosus~0.58|vastus lateralis~0.3|vastus medialis~0.3|vastus intermedius~0.3|gluteus maximus~0.57|adductor magnus~0.26|soleus~0.66\thigh\tintermediate\theavy\tbarbell|box\t1\thang power clean\tpower clean\t\t',
    'muscle clean\thang muscle clean\tbarbell\tballistic\tstanding\toverhand\t\t\t\thip extension|knee extension\tscapular elevation|shoulder abduction|elbow flexion|trunk extension\thip~85 75 45 0|knee~75 35 50 0|ankle~15 0 12 -15\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\terector spinae|multifidus|upper trapezius|middle deltoid|biceps long head|biceps short head|brachialis\tbiceps femoris long head~0.62|semitendinosus~0.62|semimembranosus~0.62|vastus lateralis~0.4|vastus medialis~0.4|vastus intermedius~0.4|gluteus maximus~0.71|adductor magnus~0.44\tmoderate\tintermediate\tlight\tbarbell\t1\tclean pull\tpower clean\t\t',
    'clean and jerk\tC&J|clean & jerk|CJ|clean and split jerk|power clean and jerk\tbarbell\tballistic\tstanding\toverhand\t\t\t\thip extension|knee extension\tscapular elevation|shoulder flexion|shoulder abduction|elbow extension|trunk extension|plantarflexion\thip~85 75 45 0|knee~75 35 50 0|ankle~15 0 12 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius|anterior deltoid|middle deltoid|triceps long head|triceps lateral head|triceps medial head\tbiceps femoris long head~0.62|semitendinosus~0.62|semimembranosus~0.62|vastus lateralis~0.4|vastus medialis~0.4|vastus intermedius~0.4|gluteus maximus~0.71|adductor magnus~0.44|soleus~0.7\thigh\tadvanced\theavy\tbarbell|floor\t1\tpower clean\t\t\t',
    'clean pull\tclean-grip pull|clean pull from the floor\tbarbell\tballistic\tstanding\toverhand\t\t\t\thip extension|knee extension\tscapular elevation|trunk extension|plantarflexion\thip~85 75 45 0|knee~75 35 50 0|ankle~15 0 12 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius\tbiceps femoris long head~0.62|semitendinosus~0.62|semimembranosus~0.62|vastus lateralis~0.4|vastus medialis~0.4|vastus intermedius~0.4|gluteus maximus~0.71|adductor magnus~0.44|soleus~0.7\thigh\tintermediate\theavy\tbarbell|floor\t1\tdeadlift|hang clean pull\tclean high pull|power clean\t\t',
    'hang clean pull\thang pull|clean pull from the hang\tbarbell\tballistic\tstanding\toverhand\t\thip hinge\thip hinge\thip extension|knee extension\tscapular elevation|trunk extension|plantarflexion\thip~65 40 0|knee~25 45 0|ankle~3 10 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius\tbiceps femoris long head~0.59|semitendinosus~0.59|semimembranosus~0.59|vastus lateralis~0.28|vastus medialis~0.28|vastus intermedius~0.28|gluteus maximus~0.57|adductor magnus~0.26|soleus~0.66\thigh\tintermediate\theavy\tbarbell\t1\tRomanian deadlift|jump shrug\thang power clean|clean pull\t\t',
    'clean high pull\thigh pull|barbell high pull|high pull from the floor|clean-grip high pull\tbarbell\tballistic\tstanding\toverhand\t\t\t\thip extension|knee extension\tscapular elevation|shoulder abduction|elbow flexion|trunk extension|plantarflexion\thip~85 75 45 0|knee~75 35 50 0|ankle~15 0 12 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius|middle deltoid|biceps long head|biceps short head|brachialis\tbiceps femoris long head~0.62|semitendinosus~0.62|semimembranosus~0.62|vastus lateralis~0.4|vastus medialis~0.4|vastus intermedius~0.4|gluteus maximus~0.71|adductor magnus~0.44|soleus~0.7\thigh\tintermediate\theavy\tbarbell|floor\t1\tclean pull\tpower clean\t\t',
    'hang high pull\thang clean high pull|high pull from the hang\tbarbell\tballistic\tstanding\toverhand\t\thip hinge\thip hinge\thip extension|knee extension\tscapular elevation|shoulder abduction|elbow flexion|trunk extension|plantarflexion\thip~65 40 0|knee~25 45 0|ankle~3 10 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius|middle deltoid|biceps long head|biceps short head|brachialis\tbiceps femoris long head~0.59|semitendinosus~0.59|semimembranosus~0.59|vastus lateralis~0.28|vastus medialis~0.28|vastus intermedius~0.28|gluteus maximus~0.57|adductor magnus~0.26|soleus~0.66\thigh\tintermediate\theavy\tbarbell\t1\thang clean pull|jump shrug\thang power clean\t\t',
    'mid-thigh pull\tclean mid-thigh pull|mid-thigh clean pull|dynamic mid-thigh pull\tbarbell\tballistic\tstanding\toverhand\t\t\t\thip extension|knee extension\tscapular elevation|trunk extension|plantarflexion\thip~35 0|knee~40 0|ankle~12 -20\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus\tadductor magnus|soleus|erector spinae|multifidus|upper trapezius\tvastus lateralis~0.2|vastus medialis~0.2|vastus intermedius~0.2|gluteus maximus~0.4|adductor magnus~0.1|soleus~0.58\thigh\tintermediate\theavy\tbarbell|rack\t1\tjump shrug\thang power clean\t\t',
    'jump shrug\thang jump shrug|barbell jump shrug\tbarbell\tballistic\tstanding\toverhand\t\thip hinge\thip hinge\thip extension|knee extension\tscapular elevation|trunk extension|plantarflexion\thip~60 35 0|knee~25 45 0|ankle~3 12 -25\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius\tbiceps femoris long head~0.57|semitendinosus~0.57|semimembranosus~0.57|vastus lateralis~0.28|vastus medialis~0.28|vastus intermedius~0.28|gluteus maximus~0.54|adductor magnus~0.23|soleus~0.65\thigh\tintermediate\theavy\tbarbell\t1\tRomanian deadlift\thang clean pull|hang high pull\t\t',
    'dumbbell hang clean\tDB hang clean|dumbbell power clean|dumbbell clean|DB clean\tdumbbell\tballistic\tstanding\t\t\thip hinge\thip hinge\thip extension|knee extension\tscapular elevation|trunk extension|plantarflexion\thip~65 0|knee~35 0|ankle~5 -15\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\terector spinae|multifidus|upper trapezius\tbiceps femoris long head~0.61|semitendinosus~0.61|semimembranosus~0.61|vastus lateralis~0.18|vastus medialis~0.18|vastus intermedius~0.18|gluteus maximus~0.54|adductor magnus~0.23\tmoderate\tintermediate\tlight\tdumbbell\t1\tkettlebell swing\thang power clean\t\t',
    'kettlebell clean\tKB clean|single-arm kettlebell clean|double kettlebell clean|one-arm clean\tkettlebell\tballistic\tstanding\t\t1\thip hinge\thip hinge\thip extension\tknee extension|trunk extension\thip~80 0|knee~35 0|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|erector spinae|multifidus\tbiceps femoris long head~0.65|semitendinosus~0.65|semimembranosus~0.65|vastus lateralis~0.18|vastus medialis~0.18|vastus intermedius~0.18|gluteus maximus~0.6|adductor magnus~0.3\tmoderate\tintermediate\tlight\tkettlebell\t1\tkettlebell swing\tkettlebell snatch\t\t',
    'sandbag over shoulder\tsandbag to shoulder|sandbag clean|sandbag shouldering|sandbag toss over shoulder\tsandbag\tballistic\tstanding\t\t\t\t\thip extension\tknee extension|trunk extension|elbow flexion\thip~90 75 0|knee~70 60 0|ankle~10 5 -10\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|erector spinae|multifidus|biceps long head|biceps short head|brachialis\tbiceps femoris long head~0.61|semitendinosus~0.61|semimembranosus~0.61|vastus lateralis~0.45|vastus medialis~0.45|vastus intermedius~0.45|gluteus maximus~0.74|adductor magnus~0.5\tmoderate\tintermediate\theavy\tsandbag|floor\t1\tsandbag deadlift\t\t\t',
    'power snatch\tbarbell power snatch|power snatch from the floor\tbarbell\tballistic\tstanding\twide\t\t\t\thip extension|knee extension\tscapular elevation|shoulder abduction|trunk extension|plantarflexion\thip~92 80 45 0|knee~80 40 50 0|ankle~18 2 12 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius|middle deltoid\tbiceps femoris long head~0.62|semitendinosus~0.62|semimembranosus~0.62|vastus lateralis~0.42|vastus medialis~0.42|vastus intermedius~0.42|gluteus maximus~0.72|adductor magnus~0.47|soleus~0.71\thigh\tadvanced\theavy\tbarbell|floor\t1\thang power snatch|snatch pull\tsnatch\t\t',
    'snatch\tfull snatch|squat snatch|barbell snatch|snatch from the floor\tbarbell\tballistic\tstanding\twide\t\t\t\thip extension|knee extension\tscapular elevation|shoulder abduction|trunk extension|plantarflexion\thip~92 80 45 0|knee~80 40 50 0|ankle~18 2 12 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius|middle deltoid\tbiceps femoris long head~0.62|semitendinosus~0.62|semimembranosus~0.62|vastus lateralis~0.42|vastus medialis~0.42|vastus intermedius~0.42|gluteus maximus~0.72|adductor magnus~0.47|soleus~0.71\thigh\tadvanced\theavy\tbarbell|floor\t1\tpower snatch|overhead squat\t\t\t',
    'hang power snatch\thang power snatch from above the knee|HPS\tbarbell\tballistic\tstanding\twide\t\thip hinge\thip hinge\thip extension|knee extension\tscapular elevation|shoulder abduction|trunk extension|plantarflexion\thip~75 45 0|knee~25 45 0|ankle~3 10 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius|middle deltoid\tbiceps femoris long head~0.61|semitendinosus~0.61|semimembranosus~0.61|vastus lateralis~0.28|vastus medialis~0.28|vastus intermedius~0.28|gluteus maximus~0.61|adductor magnus~0.31|soleus~0.66\thigh\tadvanced\theavy\tbarbell\t1\thang muscle snatch|dumbbell snatch\tpower snatch\t\t',
    'hang snatch\thang squat snatch|snatch from the hang\tbarbell\tballistic\tstanding\twide\t\thip hinge\thip hinge\thip extension|knee extension\tscapular elevation|shoulder abduction|trunk extension|plantarflexion\thip~75 45 0|knee~25 45 0|ankle~3 10 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius|middle deltoid\tbiceps femoris long head~0.61|semitendinosus~0.61|semimembranosus~0.61|vastus lateralis~0.28|vastus medialis~0.28|vastus intermedius~0.28|gluteus maximus~0.61|adductor magnus~0.31|soleus~0.66\thigh\tadvanced\theavy\tbarbell\t1\thang power snatch\tsnatch\t\t',
    'hang muscle snatch\tmuscle snatch\tbarbell\tballistic\tstanding\twide\t\thip hinge\thip hinge\thip extension|knee extension\tscapular elevation|shoulder abduction|elbow extension|trunk extension\thip~75 45 0|knee~25 45 0|ankle~3 10 -10\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\terector spinae|multifidus|upper trapezius|middle deltoid|triceps long head|triceps lateral head|triceps medial head\tbiceps femoris long head~0.61|semitendinosus~0.61|semimembranosus~0.61|vastus lateralis~0.28|vastus medialis~0.28|vastus intermedius~0.28|gluteus maximus~0.61|adductor magnus~0.31\tmoderate\tintermediate\tlight\tbarbell\t1\tdumbbell snatch\thang power snatch\t\t',
    'snatch pull\tsnatch-grip pull|snatch pull from the floor\tbarbell\tballistic\tstanding\twide\t\t\t\thip extension|knee extension\tscapular elevation|trunk extension|plantarflexion\thip~92 80 45 0|knee~80 40 50 0|ankle~18 2 12 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius\tbiceps femoris long head~0.62|semitendinosus~0.62|semimembranosus~0.62|vastus lateralis~0.42|vastus medialis~0.42|vastus intermedius~0.42|gluteus maximus~0.72|adductor magnus~0.47|soleus~0.71\thigh\tintermediate\theavy\tbarbell|floor\t1\tsnatch-grip deadlift\tsnatch high pull|power snatch\t\t',
    'snatch high pull\tsnatch-grip high pull|wide-grip high pull\tbarbell\tballistic\tstanding\twide\t\t\t\thip extension|knee extension\tscapular elevation|shoulder abduction|elbow flexion|trunk extension|plantarflexion\thip~92 80 45 0|knee~80 40 50 0|ankle~18 2 12 -20\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius|middle deltoid|biceps long head|biceps short head|brachialis\tbiceps femoris long head~0.62|semitendinosus~0.62|semimembranosus~0.62|vastus lateralis~0.42|vastus medialis~0.42|vastus intermedius~0.42|gluteus maximus~0.72|adductor magnus~0.47|soleus~0.71\thigh\tintermediate\theavy\tbarbell|floor\t1\tsnatch pull\tpower snatch\t\t',
    'dumbbell snatch\tDB snatch|single-arm dumbbell snatch|one-arm dumbbell snatch|dumbbell hang snatch\tdumbbell\tballistic\tstanding\t\t1\thip hinge\thip hinge\thip extension|knee extension\tscapular elevation|shoulder abduction|trunk extension|plantarflexion\thip~80 0|knee~55 0|ankle~8 -15\t\tbiceps femoris long head|semitendinosus|semimembranosus|vastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tsoleus|erector spinae|multifidus|upper trapezius|middle deltoid\tbiceps femoris long head~0.61|semitendinosus~0.61|semimembranosus~0.61|vastus lateralis~0.27|vastus medialis~0.27|vastus intermedius~0.27|gluteus maximus~0.6|adductor magnus~0.3|soleus~0.59\tmoderate\tintermediate\tlight\tdumbbell\t1\tkettlebell swing|dumbbell hang clean\thang power snatch\t\t',
    'kettlebell snatch\tKB snatch|single-arm kettlebell snatch|one-arm snatch\tkettlebell\tballistic\tstanding\t\t1\thip hinge\thip hinge\thip extension\tknee extension|shoulder abduction|shoulder flexion|trunk extension\thip~85 0|knee~35 0|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|erector spinae|multifidus|anterior deltoid|middle deltoid\tbiceps femoris long head~0.66|semitendinosus~0.66|semimembranosus~0.66|vastus lateralis~0.18|vastus medialis~0.18|vastus intermedius~0.18|gluteus maximus~0.61|adductor magnus~0.33\tmoderate\tadvanced\tlight\tkettlebell\t1\tkettlebell clean|single-arm kettlebell swing\t\t\t',
    'kettlebell high pull\tKB high pull|single-arm kettlebell high pull|sumo deadlift high pull\tkettlebell\tballistic\tstanding\t\t\thip hinge\thip hinge\thip extension\tknee extension|scapular elevation|shoulder abduction|elbow flexion|trunk extension\thip~80 0|knee~45 0|ankle~3 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tvastus lateralis|vastus medialis|vastus intermedius|erector spinae|multifidus|upper trapezius|middle deltoid|biceps long head|biceps short head|brachialis\tbiceps femoris long head~0.63|semitendinosus~0.63|semimembranosus~0.63|vastus lateralis~0.23|vastus medialis~0.23|vastus intermedius~0.23|gluteus maximus~0.6|adductor magnus~0.3\tmoderate\tintermediate\tlight\tkettlebell\t1\tkettlebell swing\tkettlebell snatch\t\t',
    'hip abduction machine\tmachine hip abduction|seated hip abduction|abductor machine|hip abduction|abduction machine|seated abduction\tmachine\tdynamic\tseated\t\t\t\t\thip abduction\t\thip~85|knee~90|ankle~0\t\tgluteus medius|gluteus minimus\tgluteus maximus|tensor fasciae latae\tgluteus maximus~0.93|tensor fasciae latae~0.34\tnone\tnovice\theavy\tmachine hip abduction\t\tseated band hip abduction\tleaning hip abduction machine|cable hip abduction\t\t',
    'cable hip abduction\tstanding cable hip abduction|cable abduction|standing hip abduction|multi-hip abduction\tcable\tdynamic\tstanding\t\t1\t\t\thip abduction\t\thip~0|knee~5|ankle~0\t\tgluteus medius|gluteus minimus\tgluteus maximus|tensor fasciae latae\tgluteus maximus~0.21|tensor fasciae latae~0.89\tnone\tnovice\tlight\tcable\t\tstanding band hip abduction\tside plank with leg raise\t\t',
    'side-lying hip abduction\tside-lying leg raise|side leg raise|lying hip abduction|side-lying abduction\tbodyweight\tdynamic\tside-lying\t\t1\t\t\thip abduction\t\thip~-5|knee~0|ankle~0\t\tgluteus medius|gluteus minimus\tgluteus maximus|tensor fasciae latae\tgluteus maximus~0.16|tensor fasciae latae~0.9\tnone\tnovice\tlight\tfloor\t\tclamshell\tstanding band hip abduction|side plank with leg raise\t\t',
    'lateral band walk\tband walk|side-step with band|mini-band walk|X-band walk|lateral walk|crab walk with band|banded side step|sideways band walk\tband\tdynamic\tstanding\t\t\t\t\thip abduction\thip external rotation\thip~35|knee~35|ankle~10\t\tgluteus medius|gluteus minimus\tgluteus maximus|tensor fasciae latae|deep hip rotators\tgluteus maximus~0.57|tensor fasciae latae~0.74\tnone\tnovice\tlight\tband|floor\t\tclamshell\tcable hip abduction|monster walk\t\t',
    'monster walk\tbanded monster walk|forward band walk|diagonal band walk\tband\tdynamic\tstanding\t\t\t\t\thip abduction\thip external rotation|hip flexion\thip~30|knee~30|ankle~10\t\tgluteus medius|gluteus minimus\tgluteus maximus|tensor fasciae latae|deep hip rotators\tgluteus maximus~0.53|tensor fasciae latae~0.77\tnone\tnovice\tlight\tband|floor\t\tlateral band walk\tcable hip abduction\t\t',
    'clamshell\tclam|clam shell exercise|banded clamshell|band clamshell|side-lying clam\tband\tdynamic\tside-lying\t\t1\t\t\thip external rotation|hip abduction\t\thip~45|knee~90|ankle~0\t\tgluteus maximus|gluteus medius|gluteus minimus|deep hip rotators\ttensor fasciae latae\tgluteus maximus~0.66|tensor fasciae latae~0.7\tnone\tnovice\tlight\tband|floor\t\t\tside-lying hip abduction|fire hydrant\t\t',
    'seated band hip abduction\tbanded seated abduction|seated band abduction|band hip abduction seated|seated banded hip abduction\tband\tdynamic\tseated\t\t\t\t\thip abduction\thip external rotation\thip~85|knee~90|ankle~0\t\tgluteus medius|gluteus minimus\tgluteus maximus|tensor fasciae latae\tgluteus maximus~0.93|tensor fasciae latae~0.34\tnone\tnovice\tlight\tband|bench\t\tclamshell\thip abduction machine\t\t',
    'standing band hip abduction\tband hip abduction|banded standing abduction|band abduction\tband\tdynamic\tstanding\t\t1\t\t\thip abduction\t\thip~0|knee~5|ankle~0\t\tgluteus medius|gluteus minimus\tgluteus maximus|tensor fasciae latae\tgluteus maximus~0.21|tensor fasciae latae~0.89\tnone\tnovice\tlight\tband\t\tside-lying hip abduction\tcable hip abduction\t\t',
    'leaning hip abduction machine\tlean-forward hip abduction|forward-lean abduction machine|hovering hip abduction\tmachine\tdynamic\tseated\t\t\t\t\thip abduction\t\thip~105|knee~90|ankle~0\t\tgluteus medius|gluteus minimus\tgluteus maximus|tensor fasciae latae\tgluteus maximus~0.99|tensor fasciae latae~0.12\tnone\tnovice\theavy\tmachine hip abduction\t\thip abduction machine\t\t\t',
    'fire hydrant\tquadruped hip abduction|banded fire hydrant|hydrant\tbodyweight\tdynamic\tquadruped\t\t1\t\t\thip abduction\thip external rotation\thip~90|knee~90|ankle~0\t\tgluteus medius|gluteus minimus\tgluteus maximus|tensor fasciae latae\tgluteus maximus~0.95|tensor fasciae latae~0.29\tnone\tnovice\tlight\tfloor\t\tclamshell\tseated band hip abduction\t\t',
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
    'cable hip flexion\tstanding cable hip flexion|cable knee raise|cable knee drive|standing cable knee drive\tcable\tdynamic\tstanding\t\t1\t\t\thip flexion\t\thip~-5 100|knee~20 95|ankle~0 0\t\tiliacus|psoas major\trectus femoris|sartorius|tensor fasciae latae\trectus femoris~0.52|sartorius~0.58|tensor fasciae latae~0.62|iliacus~0.52|psoas major~0.52\tnone\tnovice\tlight\tcable\t\tband hip flexion\tmachine hip flexion\t\t',
    'band hip flexion\tpsoas march|banded march|standing band hip flexion|banded hip flexion|band knee drive|supine band march|banded psoas march\tband\tdynamic\tstanding\t\t1\t\t\thip flexion\t\thip~0 100|knee~10 95|ankle~0 0\t\tiliacus|psoas major\trectus femoris|sartorius|tensor fasciae latae\trectus femoris~0.48|sartorius~0.58|tensor fasciae latae~0.6|iliacus~0.5|psoas major~0.5\tnone\tnovice\tlight\tband\t\tstanding knee raise\tcable hip flexion\t\t',
    'machine hip flexion\tstanding hip flexion machine|multi-hip flexion|hip flexion machine|hip flexor machine\tmachine\tdynamic\tstanding\t\t1\t\t\thip flexion\t\thip~-5 95|knee~30 90|ankle~0 0\t\tiliacus|psoas major\trectus femoris|sartorius|tensor fasciae latae\trectus femoris~0.54|sartorius~0.59|tensor fasciae latae~0.65|iliacus~0.54|psoas major~0.54\tnone\tnovice\theavy\tmachine standing hip\t\tcable hip flexion\t\t\t',
    'supine straight-leg raise\tSLR|single-leg straight-leg raise|supine straight leg lift|lying single leg raise|single straight-leg raise\tbodyweight\tdynamic\tlying\t\t1\t\t\thip flexion\tknee extension\thip~0 50|knee~0 0|ankle~0 0\tquadriceps~indirect~It holds the knee straight against the weight of the leg, and that is what the exercise is for.\tiliacus|psoas major\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius|sartorius|tensor fasciae latae\trectus femoris~0.39|vastus lateralis~0.0|vastus medialis~0.0|vastus intermedius~0.0|sartorius~0.87|tensor fasciae latae~0.76|iliacus~0.71|psoas major~0.71\tnone\tnovice\tlight\tfloor\t\tquad set\tseated straight-leg lift\t\t',
    'standing knee raise\tstanding march|high knee march|standing knee lift|marching in place|kettlebell knee raise|foot-loaded knee raise\tbodyweight\tdynamic\tsingle leg\t\t1\t\t\thip flexion\thip abduction\thip~0 100|knee~5 95|ankle~0 0\t\tiliacus|psoas major\trectus femoris|sartorius|gluteus medius|gluteus minimus|tensor fasciae latae\trectus femoris~0.47|sartorius~0.59|tensor fasciae latae~0.6|iliacus~0.5|psoas major~0.5\tnone\tnovice\tlight\tfloor\t\t\tband hip flexion|cable hip flexion\t\t',
    'seated straight-leg lift\tseated leg lift|seated pike lift|pike compression|seated leg raise over object|pike leg lift|compression lift\tbodyweight\tdynamic\tseated\t\t1\t\t\thip flexion\tknee extension\thip~75 100|knee~0 0|ankle~0 0\t\tiliacus|psoas major\trectus femoris|sartorius|tensor fasciae latae\trectus femoris~0.08|sartorius~0.52|tensor fasciae latae~0.25|iliacus~0.18|psoas major~0.18\tnone\tintermediate\tlight\tfloor\t\tsupine straight-leg raise\t\t\t',
    'lying cable knee drive\tlying cable hip flexion|reverse squat|supine cable knee raise|lying banded knee drive\tcable\tdynamic\tlying\t\t\t\t\thip flexion\ttrunk flexion\thip~10 110|knee~30 100|ankle~0 0\t\tiliacus|psoas major\trectus femoris|sartorius|tensor fasciae latae|rectus abdominis\trectus femoris~0.49|sartorius~0.49|tensor fasciae latae~0.53|iliacus~0.42|psoas major~0.42\tnone\tintermediate\tlight\tcable|floor\t\tband hip flexion\tcable hip flexion\t\t',
    'hip flexion hold\tisometric hip flexion|knee raise hold|standing hip flexion hold|isometric knee raise\tbodyweight\tisometric\tsingle leg\t\t1\t\t\thip flexion\thip abduction\thip~100|knee~95|ankle~0\t\tiliacus|psoas major\trectus femoris|sartorius|gluteus medius|gluteus minimus|tensor fasciae latae\trectus femoris~0.41|sartorius~0.15|tensor fasciae latae~0.18|iliacus~0.07|psoas major~0.07\tnone\tnovice\tlight\tfloor\t\tstanding knee raise\tband hip flexion\t\t',
    'hip flexor lowering\tkneeling hip flexor eccentric|eccentric hip flexion|strap-assisted leg lowering|lying leg lowering|single-leg lowering\tband\tdynamic\tlying\t\t1\t\t\thip flexion\t\thip~-10 60|knee~10 10|ankle~0 0\t\tiliacus|psoas major\trectus femoris|sartorius|tensor fasciae latae\trectus femoris~0.43|sartorius~0.84|tensor fasciae latae~0.76|iliacus~0.71|psoas major~0.71\tnone\tintermediate\tlight\tband|bench\t\tsupine straight-leg raise\tcable hip flexion\t\t',
    'seated hip internal rotation\tseated band hip internal rotation|band hip internal rotation|hip internal rotation|cable hip internal rotation|seated internal hip rotation\tband\tdynamic\tseated\t\t1\t\t\thip internal rotation\t\thip~85|knee~90|ankle~0\t\tgluteus medius|gluteus minimus\ttensor fasciae latae\ttensor fasciae latae~0.34\tnone\tnovice\tlight\tband|box\t\treverse clamshell\t\t\t',
    'seated hip external rotation\tseated band hip external rotation|band hip external rotation|hip external rotation|cable hip external rotation|seated external hip rotation\tband\tdynamic\tseated\t\t1\t\t\thip external rotation\t\thip~55|knee~90|ankle~0\t\tgluteus maximus|deep hip rotators\t\tgluteus maximus~0.74\tnone\tnovice\tlight\tband|box\t\tclamshell\t\tSit high: with the hip bent further than 60 degrees the rotators turn the other way.\t',
    'prone hip internal rotation\tlying hip internal rotation|prone band hip internal rotation|prone internal rotation of the hip\tband\tdynamic\tprone\t\t1\t\t\thip internal rotation\t\thip~0|knee~90|ankle~0\t\tgluteus minimus\t\t\tnone\tnovice\tlight\tband|floor\t\t\tseated hip internal rotation\t\t',
    'prone hip external rotation\tlying hip external rotation|prone band hip external rotation|prone external rotation of the hip|heel squeeze rotation\tband\tdynamic\tprone\t\t1\t\t\thip external rotation\t\thip~0|knee~90|ankle~0\t\tgluteus maximus|deep hip rotators\tgluteus medius\tgluteus maximus~0.21\tnone\tnovice\tlight\tband|floor\t\tclamshell\thip airplane\t\t',
    'reverse clamshell\treverse clam|side-lying hip internal rotation|reverse clam shell exercise\tbodyweight\tdynamic\tside-lying\t\t1\t\t\thip internal rotation\thip abduction\thip~45|knee~90|ankle~0\t\tgluteus medius|gluteus minimus\ttensor fasciae latae\ttensor fasciae latae~0.7\tnone\tnovice\tlight\tfloor\t\t\tseated hip internal rotation\t\t',
    'hip airplane\thip aeroplane|single-leg hip rotation|standing hip airplane\tbodyweight\tdynamic\tsingle leg\t\t1\t\t\thip external rotation|hip abduction\thip internal rotation|hip extension\thip~60|knee~20|ankle~5\t\tgluteus maximus|gluteus medius|gluteus minimus|deep hip rotators\ttensor fasciae latae\tgluteus maximus~0.78|tensor fasciae latae~0.53\tnone\tadvanced\tlight\tfloor\t\tbodyweight single-leg Romanian deadlift|clamshell\t\t\t',
    '90/90 hip lift-off\t90-90 lift-off|90/90 hip rotation|hip 90-90|shin box lift-off|90-90 internal rotation lift\tbodyweight\tdynamic\tseated\t\t1\t\t\thip internal rotation\thip abduction\thip~80|knee~90|ankle~0\t\tgluteus medius|gluteus minimus\ttensor fasciae latae\ttensor fasciae latae~0.39\tnone\tintermediate\tlight\tfloor\t\treverse clamshell\t\t\t',
    'seated leg curl\tseated hamstring curl|machine seated leg curl|seated knee flexion|SLC\tmachine\tdynamic\tseated\t\t\t\t\tknee flexion\t\thip~85 85|knee~0 110|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.7|semitendinosus~0.7|semimembranosus~0.7|biceps femoris short head~0.52|sartorius~0.37|gracilis~0.57\tnone\tnovice\theavy\tmachine seated leg curl\t\tband leg curl\tsingle-leg seated leg curl|leaning seated leg curl\t\t',
    'lying leg curl\tleg curl|prone leg curl|hamstring curl|lying hamstring curl|machine leg curl|prone hamstring curl|LLC|knee flexion\tmachine\tdynamic\tprone\t\t\t\t\tknee flexion\t\thip~15 15|knee~0 110|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.36|semitendinosus~0.36|semimembranosus~0.36|biceps femoris short head~0.52|sartorius~0.76|gracilis~0.34\tnone\tnovice\theavy\tmachine lying leg curl\t\tband leg curl\tsingle-leg lying leg curl|Nordic curl\t\t',
    'single-leg seated leg curl\tone-leg seated leg curl|unilateral seated leg curl|single-leg seated hamstring curl\tmachine\tdynamic\tseated\t\t1\t\t\tknee flexion\t\thip~85 85|knee~0 110|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.7|semitendinosus~0.7|semimembranosus~0.7|biceps femoris short head~0.52|sartorius~0.37|gracilis~0.57\tnone\tnovice\theavy\tmachine seated leg curl\t\tseated leg curl\teccentric seated leg curl\t\t',
    'single-leg lying leg curl\tone-leg lying leg curl|single-leg prone leg curl|unilateral leg curl|single-leg leg curl\tmachine\tdynamic\tprone\t\t1\t\t\tknee flexion\t\thip~15 15|knee~0 110|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.36|semitendinosus~0.36|semimembranosus~0.36|biceps femoris short head~0.52|sartorius~0.76|gracilis~0.34\tnone\tnovice\theavy\tmachine lying leg curl\t\tlying leg curl\teccentric lying leg curl\t\t',
    'standing leg curl\tstanding hamstring curl|machine standing leg curl|single-leg standing leg curl\tmachine\tdynamic\tstanding\t\t1\t\t\tknee flexion\t\thip~5 5|knee~0 110|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.32|semitendinosus~0.32|semimembranosus~0.32|biceps femoris short head~0.52|sartorius~0.79|gracilis~0.34\tnone\tnovice\theavy\tmachine standing leg curl\t\tband standing leg curl\tsingle-leg lying leg curl\t\t',
    'kneeling leg curl\tkneeling hamstring curl|machine kneeling leg curl\tmachine\tdynamic\tkneeling\t\t1\t\t\tknee flexion\t\thip~35 35|knee~0 110|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.46|semitendinosus~0.46|semimembranosus~0.46|biceps femoris short head~0.52|sartorius~0.66|gracilis~0.36\tnone\tnovice\theavy\tmachine kneeling leg curl\t\tlying leg curl\t\t\t',
    'leaning seated leg curl\tlean-forward seated leg curl|forward-lean leg curl|lengthened seated leg curl\tmachine\tdynamic\tseated\t\t\t\t\tknee flexion\t\thip~105 105|knee~0 100|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.78|semitendinosus~0.78|semimembranosus~0.78|biceps femoris short head~0.56|sartorius~0.28|gracilis~0.71\tnone\tintermediate\theavy\tmachine seated leg curl\t\tseated leg curl\t\tThe pelvis tips forward over the thighs, not the upper back.\t',
    'eccentric seated leg curl\tseated leg curl two up one down|seated leg curl eccentric|eccentric overload seated leg curl\tmachine\tdynamic\tseated\t\t1\t\t\tknee flexion\t\thip~85 85|knee~0 110|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.7|semitendinosus~0.7|semimembranosus~0.7|biceps femoris short head~0.52|sartorius~0.37|gracilis~0.57\tnone\tintermediate\theavy\tmachine seated leg curl\t\tsingle-leg seated leg curl\t\t\t',
    'eccentric lying leg curl\ttwo up one down leg curl|lying leg curl eccentric|eccentric leg curl|eccentric overload leg curl\tmachine\tdynamic\tprone\t\t1\t\t\tknee flexion\t\thip~15 15|knee~0 110|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.36|semitendinosus~0.36|semimembranosus~0.36|biceps femoris short head~0.52|sartorius~0.76|gracilis~0.34\tnone\tintermediate\theavy\tmachine lying leg curl\t\tsingle-leg lying leg curl\tNordic curl\t\t',
    'cable leg curl\tstanding cable leg curl|cable hamstring curl|ankle-strap leg curl\tcable\tdynamic\tstanding\t\t1\t\t\tknee flexion\t\thip~5 5|knee~0 100|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.34|semitendinosus~0.34|semimembranosus~0.34|biceps femoris short head~0.56|sartorius~0.81|gracilis~0.37\tnone\tnovice\tlight\tcable\t\tband standing leg curl\tstanding leg curl\t\t',
    'lying cable leg curl\tprone cable leg curl|cable lying leg curl\tcable\tdynamic\tprone\t\t1\t\t\tknee flexion\t\thip~5 5|knee~0 100|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.34|semitendinosus~0.34|semimembranosus~0.34|biceps femoris short head~0.56|sartorius~0.81|gracilis~0.37\tnone\tnovice\tlight\tcable|bench\t\tcable leg curl\tlying leg curl\t\t',
    'band leg curl\tbanded leg curl|prone band leg curl|resistance band leg curl|band hamstring curl|lying band leg curl\tband\tdynamic\tprone\t\t\t\t\tknee flexion\t\thip~5 5|knee~0 100|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.34|semitendinosus~0.34|semimembranosus~0.34|biceps femoris short head~0.56|sartorius~0.81|gracilis~0.37\tnone\tnovice\tlight\tband|floor\t\tlong-lever bridge hold\tlying leg curl|slider leg curl\t\t',
    'seated band leg curl\tband seated leg curl|seated resistance band leg curl|banded seated leg curl\tband\tdynamic\tseated\t\t\t\t\tknee flexion\t\thip~80 80|knee~0 95|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.71|semitendinosus~0.71|semimembranosus~0.71|biceps femoris short head~0.58|sartorius~0.43|gracilis~0.58\tnone\tnovice\tlight\tband|box\t\tband leg curl\tseated leg curl\t\t',
    'band standing leg curl\tstanding band leg curl|ankle-weight leg curl|standing ankle-weight leg curl\tband\tdynamic\tstanding\t\t1\t\t\tknee flexion\t\thip~0 0|knee~0 95|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.33|semitendinosus~0.33|semimembranosus~0.33|biceps femoris short head~0.58|sartorius~0.83|gracilis~0.39\tnone\tnovice\tlight\tband\t\t\tcable leg curl|standing leg curl\t\t',
    'dumbbell leg curl\tDB leg curl|dumbbell lying leg curl|dumbbell hamstring curl|prone dumbbell leg curl\tdumbbell\tdynamic\tprone\t\t\t\t\tknee flexion\t\thip~10 10|knee~0 90|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.38|semitendinosus~0.38|semimembranosus~0.38|biceps femoris short head~0.61|sartorius~0.81|gracilis~0.39\tnone\tintermediate\tlight\tdumbbell|bench\t\tband leg curl\tlying leg curl\t\t',
    'isometric leg curl\tleg curl hold|leg curl isometric|isometric knee flexion|hamstring isometric\tmachine\tisometric\tprone\t\t\t\t\tknee flexion\t\thip~15|knee~30|ankle~0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.47|semitendinosus~0.47|semimembranosus~0.47|biceps femoris short head~0.78|sartorius~0.85|gracilis~0.48\tnone\tnovice\theavy\tmachine lying leg curl\t\tlong-lever bridge hold\tlying leg curl\t\t',
    'seated isometric leg curl\tisometric seated leg curl|seated leg curl hold|seated hamstring isometric\tmachine\tisometric\tseated\t\t\t\t\tknee flexion\t\thip~85|knee~30|ankle~0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.81|semitendinosus~0.81|semimembranosus~0.81|biceps femoris short head~0.78|sartorius~0.47|gracilis~0.71\tnone\tnovice\theavy\tmachine seated leg curl\t\tlong-lever bridge hold\tseated leg curl\t\t',
    'Nordic curl\tNordic|Nordic hamstring curl|Nordic hamstring exercise|NHE|Nordic lower|Nordic leg curl|Russian leg curl|eccentric Nordic curl\tbodyweight\tdynamic\tkneeling\t\t\t\t\tknee flexion\thip extension\thip~0 0|knee~0 90|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.34|semitendinosus~0.34|semimembranosus~0.34|biceps femoris short head~0.61|sartorius~0.84|gracilis~0.4\tnone\tadvanced\theavy\tfloor|partner\t\tassisted Nordic curl|eccentric lying leg curl\tweighted Nordic curl\t\t',
    'assisted Nordic curl\tband-assisted Nordic curl|band Nordic|band-assisted Nordic|push-up assisted Nordic curl\tband\tdynamic\tkneeling\t\t\t\t\tknee flexion\thip extension\thip~0 0|knee~0 90|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.34|semitendinosus~0.34|semimembranosus~0.34|biceps femoris short head~0.61|sartorius~0.84|gracilis~0.4\tnone\tintermediate\tlight\tband|rack\t\tslider leg curl|lying leg curl\tNordic curl\t\t',
    'weighted Nordic curl\tloaded Nordic curl|Nordic curl with plate|full Nordic curl|concentric Nordic curl\tplate\tdynamic\tkneeling\t\t\t\t\tknee flexion\thip extension\thip~0 0|knee~0 90|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.34|semitendinosus~0.34|semimembranosus~0.34|biceps femoris short head~0.61|sartorius~0.84|gracilis~0.4\tnone\tadvanced\theavy\tfloor|plate|partner\t1\tNordic curl\t\t\t',
    'razor curl\tbent-hip Nordic curl|hip-flexed Nordic curl|razor hamstring curl\tbodyweight\tdynamic\tkneeling\t\t\t\t\tknee flexion\thip extension\thip~70 70|knee~15 85|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.66|semitendinosus~0.66|semimembranosus~0.66|biceps femoris short head~0.57|sartorius~0.49|gracilis~0.52\tnone\tadvanced\tlight\tfloor|partner\t\tassisted Nordic curl\tNordic curl\t\t',
    'Nordic hold\tisometric Nordic curl|Nordic isometric|Nordic curl hold\tbodyweight\tisometric\tkneeling\t\t\t\t\tknee flexion\thip extension\thip~0|knee~50|ankle~0\tgluteus maximus~none~It only keeps the hip straight; the bending of the knee is the work.|adductor magnus~none~It only keeps the hip straight; the bending of the knee is the work.\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.32|semitendinosus~0.32|semimembranosus~0.32|biceps femoris short head~0.57|sartorius~0.83|gracilis~0.38\tnone\tintermediate\tlight\tfloor|partner\t\tlong-lever bridge hold\tNordic curl\t\t',
    'glute-ham raise\tGHR|glute ham raise on bench|glute-ham developer raise|GHD raise|glute-ham\tbodyweight\tdynamic\tprone\t\t\t\t\tknee flexion|hip extension\ttrunk extension\thip~85 0 0|knee~0 0 90|ankle~0 0 0\tgluteus maximus~indirect~Straightening the hip costs it little here: the bending of the knee ends the set.|adductor magnus~indirect~Straightening the hip costs it little here: the bending of the knee ends the set.\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tgracilis|gluteus maximus|adductor magnus|erector spinae|multifidus\tbiceps femoris long head~0.53|semitendinosus~0.53|semimembranosus~0.53|biceps femoris short head~0.8|gracilis~0.54|gluteus maximus~0.42|adductor magnus~0.18\tnone\tadvanced\theavy\tglute-ham bench\t\tback extension|assisted glute-ham raise\tweighted glute-ham raise\t\t',
    'assisted glute-ham raise\tband-assisted glute-ham raise|band-assisted GHR|assisted GHR\tband\tdynamic\tprone\t\t\t\t\tknee flexion|hip extension\ttrunk extension\thip~85 0 0|knee~0 0 90|ankle~0 0 0\tgluteus maximus~indirect~Straightening the hip costs it little here: the bending of the knee ends the set.|adductor magnus~indirect~Straightening the hip costs it little here: the bending of the knee ends the set.\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tgracilis|gluteus maximus|adductor magnus|erector spinae|multifidus\tbiceps femoris long head~0.53|semitendinosus~0.53|semimembranosus~0.53|biceps femoris short head~0.8|gracilis~0.54|gluteus maximus~0.42|adductor magnus~0.18\tnone\tintermediate\tlight\tglute-ham bench|band\t\tback extension|slider leg curl\tglute-ham raise\t\t',
    'weighted glute-ham raise\tloaded GHR|weighted GHR|plate glute-ham raise\tplate\tdynamic\tprone\t\t\t\t\tknee flexion|hip extension\ttrunk extension\thip~85 0 0|knee~0 0 90|ankle~0 0 0\tgluteus maximus~indirect~Straightening the hip costs it little here: the bending of the knee ends the set.|adductor magnus~indirect~Straightening the hip costs it little here: the bending of the knee ends the set.\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tgracilis|gluteus maximus|adductor magnus|erector spinae|multifidus\tbiceps femoris long head~0.53|semitendinosus~0.53|semimembranosus~0.53|biceps femoris short head~0.8|gracilis~0.54|gluteus maximus~0.42|adductor magnus~0.18\tlow\tadvanced\theavy\tglute-ham bench|plate\t1\tglute-ham raise\t\t\t',
    'slider leg curl\tsliding leg curl|slide leg curl|hamstring slide|slider hamstring curl|towel leg curl|slide-board leg curl\tsliders\tdynamic\tlying\t\t\t\t\tknee flexion\thip extension\thip~0 0|knee~20 100|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.28|semitendinosus~0.28|semimembranosus~0.28|biceps femoris short head~0.47|sartorius~0.79|gracilis~0.32\tnone\tintermediate\tlight\tsliders|floor\t\teccentric slider leg curl|ball leg curl\tsingle-leg slider leg curl\t\t',
    'eccentric slider leg curl\tslider leg curl eccentric|hamstring slide-out|eccentric sliding leg curl\tsliders\tdynamic\tlying\t\t\t\t\tknee flexion\thip extension\thip~0 0|knee~20 100|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.28|semitendinosus~0.28|semimembranosus~0.28|biceps femoris short head~0.47|sartorius~0.79|gracilis~0.32\tnone\tnovice\tlight\tsliders|floor\t\tlong-lever bridge|hamstring walkout\tslider leg curl\t\t',
    'single-leg slider leg curl\tsingle-leg sliding leg curl|one-leg slider leg curl\tsliders\tdynamic\tlying\t\t1\t\t\tknee flexion\thip extension|hip abduction\thip~0 0|knee~20 100|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis|gluteus medius|gluteus minimus\tbiceps femoris long head~0.28|semitendinosus~0.28|semimembranosus~0.28|biceps femoris short head~0.47|sartorius~0.79|gracilis~0.32\tnone\tadvanced\tlight\tsliders|floor\t\tslider leg curl\tNordic curl\t\t',
    'ball leg curl\tstability ball leg curl|Swiss ball leg curl|exercise ball leg curl|Swiss ball hamstring curl|gym ball leg curl|physio ball curl|SB leg curl\tbodyweight\tdynamic\tlying\t\t\t\t\tknee flexion\thip extension\thip~0 0|knee~20 100|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis\tbiceps femoris long head~0.28|semitendinosus~0.28|semimembranosus~0.28|biceps femoris short head~0.47|sartorius~0.79|gracilis~0.32\tnone\tnovice\tlight\texercise ball|floor\t\tlong-lever bridge\tslider leg curl|single-leg ball leg curl\t\t',
    'single-leg ball leg curl\tsingle-leg Swiss ball leg curl|single-leg stability ball leg curl|one-leg ball curl\tbodyweight\tdynamic\tlying\t\t1\t\t\tknee flexion\thip extension|hip abduction\thip~0 0|knee~20 100|ankle~0 0\t\tbiceps femoris long head|semitendinosus|semimembranosus|biceps femoris short head\tsartorius|gracilis|gluteus medius|gluteus minimus\tbiceps femoris long head~0.28|semitendinosus~0.28|semimembranosus~0.28|biceps femoris short head~0.47|sartorius~0.79|gracilis~0.32\tnone\tintermediate\tlight\texercise ball|floor\t\tball leg curl\tsingle-leg slider leg curl\t\t',
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
    'barbell calf raise\tBB calf raise|standing barbell calf raise|barbell standing calf raise|barbell heel raise\tbarbell\tdynamic\tstanding\t\t\t\t\tplantarflexion\t\thip~0 0|knee~0 0|ankle~15 -35\t\tgastrocnemius|soleus\t\tgastrocnemius~0.72|soleus~0.48\thigh\tintermediate\theavy\tbarbell|rack|plate\t\tdumbbell calf raise\tguided-bar calf raise\t\t',
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
    'ball-squeeze calf raise\tcalf raise with ball between heels|tibialis posterior calf raise|heel-squeeze calf raise|ball squeeze heel raise\tbodyweight\tdynamic\tstanding\t\t\t\t\tplantarflexion|ankle inversion\t\thip~0 0|knee~0 0|ankle~10 -35\t\tgastrocnemius|soleus|tibialis posterior\ttibialis anterior|long toe flexors\tgastrocnemius~0.69|soleus~0.45|tibialis anterior~0.61\tnone\tnovice\tlight\tfloor\t\tbodyweight calf raise\tsingle-leg calf raise\t\t',
    'short foot\tshort foot exercise|foot doming|arch raise|foot dome|arch lift\tnone\tisometric\tseated\t\t1\t\t\tankle inversion\t\thip~85|knee~90|ankle~0\t\ttibialis posterior\ttibialis anterior|long toe flexors\ttibialis anterior~0.42\tnone\tnovice\tlight\tfloor\t\t\ttowel scrunch|single-leg balance\tMainly the small muscles of the sole, which no count here covers.\t',
    'towel scrunch\ttowel toe curl|towel curl with toes|toe scrunch|towel gathering|toe yoga\tnone\tdynamic\tseated\t\t1\t\t\tankle inversion\t\thip~85|knee~90|ankle~0\t\ttibialis posterior\ttibialis anterior|long toe flexors\ttibialis anterior~0.42\tnone\tnovice\tlight\tfloor\t\tshort foot\tsingle-leg calf raise\tMainly the small muscles of the sole, which no count here covers.\t',
    'single-leg balance\tsingle-leg stance|one-leg balance|single-leg stand|balance on one leg|wobble board balance\tnone\tisometric\tsingle leg\t\t1\t\t\tankle eversion|ankle inversion\thip abduction\thip~5|knee~10|ankle~5\t\ttibialis posterior|peroneals\tgluteus medius|gluteus minimus|tibialis anterior|long toe flexors\ttibialis anterior~0.34\tnone\tnovice\tlight\tfloor\t\t\tsingle-leg calf raise\t\t',
    'back squat\tsquat|barbell squat|barbell back squat|high-bar squat|high-bar back squat|full squat|deep squat|parallel squat|tempo squat\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~110 0|knee~120 0|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.54|vastus medialis~0.54|vastus intermedius~0.54|gluteus maximus~0.69|adductor magnus~0.45\thigh\tintermediate\theavy\tbarbell|rack\t\tgoblet squat|box squat\tpaused squat|overhead squat\t\t',
    'front squat\tbarbell front squat|FS|clean-grip front squat\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~100 0|knee~120 0|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.54|vastus medialis~0.54|vastus intermedius~0.54|gluteus maximus~0.66|adductor magnus~0.4\thigh\tintermediate\theavy\tbarbell|rack\t\tgoblet squat|kettlebell front squat\toverhead squat\t\t',
    'goblet squat\tdumbbell goblet squat|kettlebell goblet squat|DB goblet squat|KB goblet squat\tdumbbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~105 0|knee~115 0|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.53|vastus medialis~0.53|vastus intermedius~0.53|gluteus maximus~0.68|adductor magnus~0.43\tlow\tnovice\tlight\tdumbbell\t1\tbodyweight squat\tfront squat|dumbbell squat\t\t',
    'bodyweight squat\tair squat|BW squat|free squat\tbodyweight\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~105 0|knee~115 0|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.53|vastus medialis~0.53|vastus intermedius~0.53|gluteus maximus~0.68|adductor magnus~0.43\tnone\tnovice\tlight\tfloor\t\tchair squat|suspension squat\tgoblet squat\t\t',
    'low-bar back squat\tlow-bar squat|LBBS\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\thip extension|knee extension\t\thip~115 0|knee~105 0|ankle~18 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.49|vastus medialis~0.49|vastus intermedius~0.49|gluteus maximus~0.71|adductor magnus~0.48\thigh\tintermediate\theavy\tbarbell|rack\t\tbox squat|goblet squat\tpaused squat\t\t',
    'box squat\tbarbell box squat|back squat to box\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\thip extension|knee extension\t\thip~95 0|knee~90 0|ankle~8 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.43|vastus medialis~0.43|vastus intermedius~0.43|gluteus maximus~0.65|adductor magnus~0.38\thigh\tintermediate\theavy\tbarbell|rack|box\t\tgoblet squat\tback squat\t\t',
    'safety bar squat\tSSB squat|safety squat bar squat|yoke bar squat\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~105 0|knee~115 0|ankle~23 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.53|vastus medialis~0.53|vastus intermedius~0.53|gluteus maximus~0.68|adductor magnus~0.43\thigh\tintermediate\theavy\tbarbell|rack\t\tgoblet squat\tback squat|front squat\t\t',
    'paused squat\tpause squat|pause back squat|paused back squat\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~110 0|knee~120 0|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.54|vastus medialis~0.54|vastus intermedius~0.54|gluteus maximus~0.69|adductor magnus~0.45\thigh\tintermediate\theavy\tbarbell|rack\t\tback squat\tpin squat\t\t',
    'half squat\thalf back squat|half-depth squat\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~80 0|knee~90 0|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.43|vastus medialis~0.43|vastus intermedius~0.43|gluteus maximus~0.6|adductor magnus~0.3\thigh\tintermediate\theavy\tbarbell|rack\t\tgoblet squat\tback squat\t\t',
    'quarter squat\tquarter back squat|partial squat\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~45 0|knee~55 0|ankle~15 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.27|vastus medialis~0.27|vastus intermedius~0.27|gluteus maximus~0.45|adductor magnus~0.14\thigh\tintermediate\theavy\tbarbell|rack\t\tgoblet squat\thalf squat\t\t',
    'pin squat\tdead-stop squat|bottom-up squat|squat from pins\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~95 0|knee~100 0|ankle~20 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47|gluteus maximus~0.65|adductor magnus~0.38\thigh\tadvanced\theavy\tbarbell|rack\t\tbox squat\t\t\t',
    'guided-bar squat\tfixed-track squat|guided-bar back squat\tguided bar\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~100 0|knee~110 0|ankle~15 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.51|vastus medialis~0.51|vastus intermedius~0.51|gluteus maximus~0.66|adductor magnus~0.4\thigh\tnovice\theavy\tguided bar\t\tgoblet squat\tback squat\t\t',
    'hack squat\tmachine hack squat|hack squat machine|sled hack squat\tmachine\tdynamic\tsupported\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~95 5|knee~115 5|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.55|vastus medialis~0.55|vastus intermedius~0.55|gluteus maximus~0.67|adductor magnus~0.4\tmoderate\tnovice\theavy\tmachine hack squat\t\tleg press\tpendulum squat|back squat\t\t',
    'pendulum squat\tmachine pendulum squat\tmachine\tdynamic\tsupported\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~100 5|knee~120 5|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.57|vastus medialis~0.57|vastus intermedius~0.57|gluteus maximus~0.69|adductor magnus~0.42\tmoderate\tintermediate\theavy\tmachine pendulum squat\t\thack squat\t\t\t',
    'machine squat\tlever squat machine|V-squat|standing squat machine\tmachine\tdynamic\tsupported\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~100 0|knee~110 0|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.51|vastus medialis~0.51|vastus intermedius~0.51|gluteus maximus~0.66|adductor magnus~0.4\thigh\tnovice\theavy\tmachine squat\t\thack squat\tback squat\t\t',
    'belt squat\thip-belt squat|belt squat machine\tmachine\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~100 0|knee~110 0|ankle~22 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.51|vastus medialis~0.51|vastus intermedius~0.51|gluteus maximus~0.66|adductor magnus~0.4\tnone\tnovice\theavy\tmachine belt squat\t\tgoblet squat\tback squat\t\t',
    'heel-elevated squat\tcyclist squat|heel-elevated goblet squat|heels-raised squat|wedge squat|slant-board squat\tdumbbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension\thip extension\thip~90 0|knee~120 0|ankle~10 -15\t\tvastus lateralis|vastus medialis|vastus intermedius\tgluteus maximus|adductor magnus\tvastus lateralis~0.54|vastus medialis~0.54|vastus intermedius~0.54|gluteus maximus~0.63|adductor magnus~0.35\tlow\tintermediate\tlight\tdumbbell|plate\t1\tgoblet squat\tfront squat|sissy squat\t\t',
    'overhead squat\tbarbell overhead squat|OHS\tbarbell\tdynamic\tstanding\twide\t\tsquat\tsquat\tknee extension|hip extension\t\thip~105 0|knee~120 0|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.54|vastus medialis~0.54|vastus intermedius~0.54|gluteus maximus~0.68|adductor magnus~0.43\thigh\tadvanced\tlight\tbarbell|rack\t\tfront squat\t\t\t',
    'dumbbell squat\tDB squat|dumbbell suitcase squat|two-dumbbell squat\tdumbbell\tdynamic\tstanding\tneutral\t\tsquat\tsquat\tknee extension|hip extension\t\thip~105 0|knee~110 0|ankle~22 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.51|vastus medialis~0.51|vastus intermedius~0.51|gluteus maximus~0.68|adductor magnus~0.43\tmoderate\tnovice\theavy\tdumbbell\t1\tgoblet squat\tback squat|trap bar deadlift\t\t',
    'kettlebell front squat\tdouble kettlebell front squat|KB front squat|kettlebell rack squat|dumbbell front squat\tkettlebell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~100 0|knee~115 0|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.53|vastus medialis~0.53|vastus intermedius~0.53|gluteus maximus~0.66|adductor magnus~0.4\tmoderate\tintermediate\theavy\tkettlebell\t1\tgoblet squat\tfront squat\t\t',
    'sumo squat\tplie squat|wide-stance squat|dumbbell sumo squat|kettlebell sumo squat\tdumbbell\tdynamic\tstanding\t\t\tsquat\tsquat\thip extension|knee extension\thip adduction\thip~90 0|knee~95 0|ankle~10 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgracilis|adductor longus|adductor brevis|pectineus\tvastus lateralis~0.45|vastus medialis~0.45|vastus intermedius~0.45|gracilis~0.46|gluteus maximus~0.63|adductor magnus~0.35|adductor longus~0.22|adductor brevis~0.22\tlow\tnovice\tlight\tdumbbell\t1\tbodyweight squat\tgoblet squat|sumo deadlift\t\t',
    'landmine squat\tangled-bar squat|landmine goblet squat\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~95 0|knee~105 0|ankle~15 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.49|vastus medialis~0.49|vastus intermedius~0.49|gluteus maximus~0.65|adductor magnus~0.38\tlow\tnovice\tlight\tlandmine|barbell\t1\tgoblet squat\tfront squat\t\t',
    'sandbag squat\tsandbag bear-hug squat|bear-hug squat|sandbag front squat\tsandbag\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\ttrunk extension\thip~105 0|knee~110 0|ankle~22 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\terector spinae|multifidus\tvastus lateralis~0.51|vastus medialis~0.51|vastus intermedius~0.51|gluteus maximus~0.68|adductor magnus~0.43\tmoderate\tintermediate\theavy\tsandbag\t1\tgoblet squat\t\t\t',
    'elbow-crook squat\tcrook-of-the-elbow squat|bar-in-elbows squat\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\ttrunk extension\thip~105 0|knee~115 0|ankle~23 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\terector spinae|multifidus\tvastus lateralis~0.53|vastus medialis~0.53|vastus intermedius~0.53|gluteus maximus~0.68|adductor magnus~0.43\thigh\tadvanced\theavy\tbarbell|rack\t\tgoblet squat|front squat\t\t\t',
    'hand-assisted safety bar squat\thands-assisted squat|assisted safety bar squat\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~100 0|knee~115 0|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.53|vastus medialis~0.53|vastus intermedius~0.53|gluteus maximus~0.66|adductor magnus~0.4\thigh\tintermediate\theavy\tbarbell|rack\t\tsafety bar squat\t\t\t',
    'banded squat\tband squat|resistance band squat|band-resisted squat\tband\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~100 0|knee~110 0|ankle~22 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.51|vastus medialis~0.51|vastus intermedius~0.51|gluteus maximus~0.66|adductor magnus~0.4\tlow\tnovice\tlight\tband\t\tbodyweight squat\tgoblet squat\t\t',
    'suspension squat\tassisted squat|suspension-assisted squat|strap squat\tsuspension\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~100 0|knee~110 0|ankle~15 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.51|vastus medialis~0.51|vastus intermedius~0.51|gluteus maximus~0.66|adductor magnus~0.4\tnone\tnovice\tlight\tsuspension\t\tchair squat\tbodyweight squat\t\t',
    'chair squat\tsit-to-stand|chair stand|bodyweight box squat|sit to stand from chair\tbodyweight\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~85 0|knee~90 0|ankle~12 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.43|vastus medialis~0.43|vastus intermedius~0.43|gluteus maximus~0.61|adductor magnus~0.33\tnone\tnovice\tlight\tbox\t\tsuspension squat\tbodyweight squat\t\t',
    'wall ball squat\tball wall squat|wall squat with ball|stability ball wall squat\tbodyweight\tdynamic\tsupported\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~85 0|knee~90 0|ankle~5 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.43|vastus medialis~0.43|vastus intermedius~0.43|gluteus maximus~0.61|adductor magnus~0.33\tnone\tnovice\tlight\texercise ball|wall\t\twall sit\tbodyweight squat\t\t',
    'Spanish squat\tband-behind-knee squat|banded Spanish squat\tband\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension\thip extension\thip~85 0|knee~100 0|ankle~0 0\t\tvastus lateralis|vastus medialis|vastus intermedius\tgluteus maximus|adductor magnus\tvastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47|gluteus maximus~0.61|adductor magnus~0.33\tlow\tnovice\tlight\tband|rack\t\twall sit\theel-elevated squat\t\t',
    'sissy squat\tsissy squat machine|sissy squat bench\tbodyweight\tdynamic\tstanding\t\t\t\t\tknee extension\t\thip~0 0|knee~120 0|ankle~25 -10\t\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.74|vastus lateralis~0.54|vastus medialis~0.54|vastus intermedius~0.54\tnone\tadvanced\tlight\tfloor\t\theel-elevated squat|reverse Nordic curl\t\t\t',
    'thruster\tbarbell thruster|squat to press|front squat to press\tbarbell\tdynamic\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\tshoulder flexion|shoulder abduction|elbow extension\thip~100 0|knee~115 0|ankle~25 0|shoulder~60 170|elbow~130 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tanterior deltoid|middle deltoid|triceps long head|triceps lateral head|triceps medial head\tvastus lateralis~0.53|vastus medialis~0.53|vastus intermedius~0.53|gluteus maximus~0.66|adductor magnus~0.4|triceps long head~0.82|triceps lateral head~0.53|triceps medial head~0.53\thigh\tintermediate\tlight\tbarbell\t\tgoblet squat|front squat\t\t\t',
    'dumbbell thruster\tDB thruster|dumbbell squat to press|kettlebell thruster\tdumbbell\tdynamic\tstanding\tneutral\t\tsquat\tsquat\tknee extension|hip extension\tshoulder flexion|shoulder abduction|elbow extension\thip~100 0|knee~110 0|ankle~22 0|shoulder~60 170|elbow~130 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tanterior deltoid|middle deltoid|triceps long head|triceps lateral head|triceps medial head\tvastus lateralis~0.51|vastus medialis~0.51|vastus intermedius~0.51|gluteus maximus~0.66|adductor magnus~0.4|triceps long head~0.82|triceps lateral head~0.53|triceps medial head~0.53\tmoderate\tintermediate\tlight\tdumbbell\t1\tgoblet squat\tthruster\t\t',
    'Cossack squat\tside-to-side squat|Cossack lunge\tbodyweight\tdynamic\tstanding\t\t1\tlunge\tlunge\tknee extension|hip extension\thip adduction|hip abduction\thip~110 0|knee~120 0|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgracilis|gluteus medius|gluteus minimus|adductor longus|adductor brevis|pectineus\tvastus lateralis~0.54|vastus medialis~0.54|vastus intermedius~0.54|gracilis~0.44|gluteus maximus~0.69|adductor magnus~0.45|adductor longus~0.2|adductor brevis~0.2\tnone\tintermediate\tlight\tfloor\t\tlateral lunge\tpistol squat\t\t',
    'pistol squat\tpistol|single-leg pistol squat|one-leg squat\tbodyweight\tdynamic\tsingle leg\t\t1\tsquat\tsquat\tknee extension|hip extension\thip abduction|hip flexion\thip~115 0|knee~120 0|ankle~25 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.54|vastus medialis~0.54|vastus intermedius~0.54|gluteus maximus~0.71|adductor magnus~0.48\tnone\tadvanced\tlight\tfloor\t\tsingle-leg box squat|skater squat\t\t\t',
    'single-leg box squat\tsingle-leg squat to box|single-leg sit-to-stand|one-leg chair squat|single-leg bench squat\tbodyweight\tdynamic\tsingle leg\t\t1\tsquat\tsquat\tknee extension|hip extension\thip abduction\thip~90 0|knee~95 0|ankle~18 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.45|vastus medialis~0.45|vastus intermedius~0.45|gluteus maximus~0.63|adductor magnus~0.35\tnone\tintermediate\tlight\tbox\t\tstep-down|chair squat\tpistol squat\t\t',
    'single-leg squat\tsingle-leg squat off box|SL squat|off-box pistol\tbodyweight\tdynamic\tsingle leg\t\t1\tsquat\tsquat\tknee extension|hip extension\thip abduction\thip~95 0|knee~100 0|ankle~23 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47|gluteus maximus~0.65|adductor magnus~0.38\tnone\tintermediate\tlight\tbox\t\tsingle-leg box squat|step-down\tpistol squat\t\t',
    'skater squat\tairborne lunge|skater lunge\tbodyweight\tdynamic\tsingle leg\t\t1\tsquat\tsquat\tknee extension|hip extension\thip abduction\thip~100 0|knee~105 0|ankle~23 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.49|vastus medialis~0.49|vastus intermedius~0.49|gluteus maximus~0.66|adductor magnus~0.4\tnone\tadvanced\tlight\tfloor\t\tsingle-leg box squat|rear-foot-elevated split squat\tshrimp squat\t\t',
    'shrimp squat\tsingle-leg shrimp squat\tbodyweight\tdynamic\tsingle leg\t\t1\tsquat\tsquat\tknee extension|hip extension\thip abduction\thip~90 0|knee~115 0|ankle~25 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.53|vastus medialis~0.53|vastus intermedius~0.53|gluteus maximus~0.63|adductor magnus~0.35\tnone\tadvanced\tlight\tfloor\t\tskater squat\t\t\t',
    'wall sit\twall squat|wall squat hold|wall sit hold|isometric wall sit\tbodyweight\tisometric\tsupported\t\t\t\t\tknee extension\t\thip~80|knee~90|ankle~0\trectus femoris~indirect~It helps to hold the knee, but with the hip at a right angle it is too short to do much.\tvastus lateralis|vastus medialis|vastus intermedius\trectus femoris\trectus femoris~0.47|vastus lateralis~0.8|vastus medialis~0.8|vastus intermedius~0.8\tnone\tnovice\tlight\twall\t\t\tsingle-leg wall sit|Spanish squat hold\t\t',
    'single-leg wall sit\tone-leg wall sit|single-leg wall squat\tbodyweight\tisometric\tsupported\t\t1\t\t\tknee extension\t\thip~80|knee~90|ankle~0\trectus femoris~indirect~It helps to hold the knee, but with the hip at a right angle it is too short to do much.\tvastus lateralis|vastus medialis|vastus intermedius\trectus femoris\trectus femoris~0.47|vastus lateralis~0.8|vastus medialis~0.8|vastus intermedius~0.8\tnone\tintermediate\tlight\twall\t\twall sit\tsingle-leg squat\t\t',
    'Spanish squat hold\tisometric Spanish squat|Spanish squat isometric\tband\tisometric\tstanding\t\t\tsquat\tsquat\tknee extension\t\thip~75|knee~90|ankle~0\trectus femoris~none~Held as in a squat: it would bend the hip that the hold keeps from bending.\tvastus lateralis|vastus medialis|vastus intermedius\t\tvastus lateralis~0.8|vastus medialis~0.8|vastus intermedius~0.8\tlow\tnovice\tlight\tband|rack\t\twall sit\tSpanish squat\t\t',
    'isometric squat\tisometric back squat|squat isometric|squat against pins|isometric pin squat\tbarbell\tisometric\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~75|knee~90|ankle~18\trectus femoris~none~Held as in a squat: it would bend the hip that the hold keeps from bending.|hamstrings~none~Held as in a squat: they would bend the knee that the hold keeps from bending.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.8|vastus medialis~0.8|vastus intermedius~0.8|gluteus maximus~0.88|adductor magnus~0.64\thigh\tintermediate\theavy\tbarbell|rack\t\twall sit\tpin squat\t\t',
    'squat hold\tdeep squat hold|goblet squat hold|bodyweight squat hold\tbodyweight\tisometric\tstanding\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~105|knee~115|ankle~25\trectus femoris~none~Held as in a squat: it would bend the hip that the hold keeps from bending.|hamstrings~none~Held as in a squat: they would bend the knee that the hold keeps from bending.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.97|vastus medialis~0.97|vastus intermedius~0.97|gluteus maximus~0.99|adductor magnus~0.95\tnone\tnovice\tlight\tfloor\t\twall sit\tgoblet squat\t\t',
    'split squat hold\tisometric split squat|split squat isometric|lunge hold|isometric lunge\tbodyweight\tisometric\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~75|knee~90|ankle~10\trectus femoris~none~Held as in a squat: it would bend the hip that the hold keeps from bending.|hamstrings~none~Held as in a squat: they would bend the knee that the hold keeps from bending.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.8|vastus medialis~0.8|vastus intermedius~0.8|gluteus maximus~0.88|adductor magnus~0.64\tnone\tnovice\tlight\tfloor\t\twall sit\tsplit squat\t\t',
    'leg press\t45-degree leg press|incline leg press|sled leg press|LP|machine leg press\tmachine\tdynamic\tsupported\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~110 60|knee~100 5|ankle~15 0\trectus femoris~indirect~It shortens little, and would bend the very hip that the press straightens.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\trectus femoris\trectus femoris~0.31|vastus lateralis~0.49|vastus medialis~0.49|vastus intermedius~0.49|gluteus maximus~0.91|adductor magnus~0.74\tlow\tnovice\theavy\tmachine leg press\t\thorizontal leg press\tsingle-leg leg press|hack squat\t\t',
    'horizontal leg press\tseated leg press|selectorised leg press|stack leg press\tmachine\tdynamic\tseated\t\t\tsquat\tsquat\tknee extension|hip extension\t\thip~105 60|knee~100 5|ankle~12 0\trectus femoris~indirect~It shortens little, and would bend the very hip that the press straightens.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\trectus femoris\trectus femoris~0.32|vastus lateralis~0.49|vastus medialis~0.49|vastus intermedius~0.49|gluteus maximus~0.9|adductor magnus~0.72\tlow\tnovice\theavy\tmachine leg press\t\tchair squat\tleg press\t\t',
    'single-leg leg press\tone-leg leg press|unilateral leg press|SL leg press\tmachine\tdynamic\tsupported\t\t1\tsquat\tsquat\tknee extension|hip extension\t\thip~110 60|knee~100 5|ankle~15 0\trectus femoris~indirect~It shortens little, and would bend the very hip that the press straightens.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\trectus femoris\trectus femoris~0.31|vastus lateralis~0.49|vastus medialis~0.49|vastus intermedius~0.49|gluteus maximus~0.91|adductor magnus~0.74\tlow\tnovice\theavy\tmachine leg press\t\tleg press\t\t\t',
    'high-foot leg press\thigh and wide leg press|leg press feet high|wide-stance leg press\tmachine\tdynamic\tsupported\t\t\tsquat\tsquat\thip extension|knee extension\t\thip~115 55|knee~90 5|ankle~0 -5\trectus femoris~indirect~It shortens little, and would bend the very hip that the press straightens.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\trectus femoris\trectus femoris~0.3|vastus lateralis~0.45|vastus medialis~0.45|vastus intermedius~0.45|gluteus maximus~0.91|adductor magnus~0.74\tlow\tnovice\theavy\tmachine leg press\t\tleg press\t\t\t',
    'low-foot leg press\tleg press feet low|narrow-stance leg press|quad-focused leg press\tmachine\tdynamic\tsupported\t\t\tsquat\tsquat\tknee extension\thip extension\thip~105 60|knee~110 5|ankle~25 0\trectus femoris~indirect~It shortens little, and would bend the very hip that the press straightens.\tvastus lateralis|vastus medialis|vastus intermedius\trectus femoris|gluteus maximus|adductor magnus\trectus femoris~0.34|vastus lateralis~0.53|vastus medialis~0.53|vastus intermedius~0.53|gluteus maximus~0.9|adductor magnus~0.72\tlow\tnovice\theavy\tmachine leg press\t\tleg press\thack squat\t\t',
    'leg extension\tknee extension|seated leg extension|machine leg extension|seated knee extension|quad extension\tmachine\tdynamic\tseated\t\t\t\t\tknee extension\t\thip~85 85|knee~100 0|ankle~0 0\t\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.3|vastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47\tnone\tnovice\theavy\tmachine leg extension\t\tquad set\tsingle-leg leg extension|reclined leg extension\t\t',
    'single-leg leg extension\tone-leg leg extension|single-leg knee extension|unilateral leg extension\tmachine\tdynamic\tseated\t\t1\t\t\tknee extension\t\thip~85 85|knee~100 0|ankle~0 0\t\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.3|vastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47\tnone\tnovice\theavy\tmachine leg extension\t\tleg extension\t\t\t',
    'reclined leg extension\tleaned-back leg extension|lean-back leg extension|reclined knee extension\tmachine\tdynamic\tseated\t\t\t\t\tknee extension\t\thip~40 40|knee~100 0|ankle~0 0\t\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.52|vastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47\tnone\tnovice\theavy\tmachine leg extension\t\tleg extension\treverse Nordic curl\t\t',
    'reverse Nordic curl\treverse Nordic|kneeling quad lean|reverse Nordic hamstring curl|natural leg extension\tbodyweight\tdynamic\tkneeling\t\t\t\t\tknee extension\t\thip~0 0|knee~120 90|ankle~-30 -30\tquadriceps~direct~The knee bends to about 140; the table of lengths ends at 120 and so shows half the travel.\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.9|vastus lateralis~0.9|vastus medialis~0.9|vastus intermedius~0.9\tnone\tintermediate\tlight\tfloor\t\tband-assisted reverse Nordic curl|leg extension\tsissy squat\t\t',
    'band-assisted reverse Nordic curl\tassisted reverse Nordic\tband\tdynamic\tkneeling\t\t\t\t\tknee extension\t\thip~0 0|knee~120 90|ankle~-30 -30\tquadriceps~direct~The knee bends to about 140; the table of lengths ends at 120 and so shows half the travel.\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.9|vastus lateralis~0.9|vastus medialis~0.9|vastus intermedius~0.9\tnone\tnovice\tlight\tband|rack\t\tleg extension\treverse Nordic curl\t\t',
    'cable leg extension\tstanding cable knee extension|cable knee extension\tcable\tdynamic\tstanding\t\t1\t\t\tknee extension\t\thip~30 30|knee~90 0|ankle~0 0\t\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.56|vastus lateralis~0.43|vastus medialis~0.43|vastus intermedius~0.43\tnone\tnovice\tlight\tcable\t\tterminal knee extension\tleg extension\t\t',
    'band leg extension\tbanded leg extension|seated band knee extension|band knee extension\tband\tdynamic\tseated\t\t1\t\t\tknee extension\t\thip~85 85|knee~95 0|ankle~0 0\t\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.29|vastus lateralis~0.45|vastus medialis~0.45|vastus intermedius~0.45\tnone\tnovice\tlight\tband|box\t\tquad set\tleg extension\t\t',
    'ankle-weight leg extension\tlong-arc quad|seated knee extension with ankle weight|ankle weight knee extension\tplate\tdynamic\tseated\t\t1\t\t\tknee extension\t\thip~85 85|knee~90 0|ankle~0 0\t\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.28|vastus lateralis~0.43|vastus medialis~0.43|vastus intermedius~0.43\tnone\tnovice\tlight\tbench\t\tquad set\tleg extension\t\t',
    'terminal knee extension\tTKE|band TKE|banded terminal knee extension|cable TKE\tband\tdynamic\tstanding\t\t1\t\t\tknee extension\t\thip~5 5|knee~35 0|ankle~5 0\t\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.56|vastus lateralis~0.18|vastus medialis~0.18|vastus intermedius~0.18\tnone\tnovice\tlight\tband|rack\t\tquad set\tSpanish squat\t\t',
    'isometric leg extension\tisometric knee extension|leg extension hold|knee extension isometric\tmachine\tisometric\tseated\t\t\t\t\tknee extension\t\thip~85|knee~60|ankle~0\t\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.34|vastus lateralis~0.57|vastus medialis~0.57|vastus intermedius~0.57\tnone\tnovice\theavy\tmachine leg extension\t\tquad set\tleg extension\t\t',
    'quad set\tquadriceps set|isometric quad set|static quad contraction\tnone\tisometric\tlying\t\t1\t\t\tknee extension\t\thip~0|knee~0|ankle~0\t\trectus femoris|vastus lateralis|vastus medialis|vastus intermedius\t\trectus femoris~0.5|vastus lateralis~0.0|vastus medialis~0.0|vastus intermedius~0.0\tnone\tnovice\tlight\tfloor\t\t\tterminal knee extension|ankle-weight leg extension\t\t',
    'split squat\tbodyweight split squat|static lunge|stationary lunge\tbodyweight\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~85 10|knee~100 10|ankle~15 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.51|vastus medialis~0.51|vastus intermedius~0.51|gluteus maximus~0.66|adductor magnus~0.36\tnone\tnovice\tlight\tfloor\t\tsplit squat hold|suspension lunge\tdumbbell split squat\t\t',
    'dumbbell split squat\tDB split squat|goblet split squat|kettlebell split squat\tdumbbell\tdynamic\tsplit\tneutral\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~85 10|knee~100 10|ankle~15 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.51|vastus medialis~0.51|vastus intermedius~0.51|gluteus maximus~0.66|adductor magnus~0.36\tlow\tnovice\theavy\tdumbbell\t1\tsplit squat\trear-foot-elevated split squat|barbell split squat\t\t',
    'rear-foot-elevated split squat\tBulgarian split squat|RFESS|BSS|dumbbell Bulgarian split squat|dumbbell rear-foot-elevated split squat|rear-foot-raised split squat\tdumbbell\tdynamic\tsplit\tneutral\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~100 15|knee~105 10|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.53|vastus medialis~0.53|vastus intermedius~0.53|gluteus maximus~0.73|adductor magnus~0.46\tlow\tintermediate\theavy\tdumbbell|bench\t1\tdumbbell split squat\tbarbell rear-foot-elevated split squat\t\t',
    'barbell split squat\tBB split squat|barbell static lunge\tbarbell\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~85 10|knee~100 10|ankle~15 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.51|vastus medialis~0.51|vastus intermedius~0.51|gluteus maximus~0.66|adductor magnus~0.36\thigh\tintermediate\theavy\tbarbell|rack\t\tdumbbell split squat\tbarbell rear-foot-elevated split squat\t\t',
    'barbell rear-foot-elevated split squat\tbarbell Bulgarian split squat|barbell RFESS|BB RFESS\tbarbell\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~100 15|knee~105 10|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.53|vastus medialis~0.53|vastus intermedius~0.53|gluteus maximus~0.73|adductor magnus~0.46\thigh\tadvanced\theavy\tbarbell|rack|bench\t\trear-foot-elevated split squat\t\t\t',
    'front-foot-elevated split squat\tFFESS|deficit split squat|front-foot-raised split squat\tdumbbell\tdynamic\tsplit\tneutral\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~105 10|knee~115 10|ankle~23 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.57|vastus medialis~0.57|vastus intermedius~0.57|gluteus maximus~0.72|adductor magnus~0.47\tlow\tintermediate\theavy\tdumbbell|plate\t1\tsplit squat\trear-foot-elevated split squat\t\t',
    'guided-bar split squat\tguided-bar lunge|fixed-track split squat\tguided bar\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\t\thip~90 10|knee~100 10|ankle~10 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.51|vastus medialis~0.51|vastus intermedius~0.51|gluteus maximus~0.68|adductor magnus~0.39\tmoderate\tnovice\theavy\tguided bar\t\tsplit squat\tbarbell split squat\t\t',
    'hand-assisted safety bar split squat\thands-assisted split squat|safety bar split squat\tbarbell\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\t\thip~90 10|knee~105 10|ankle~18 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\t\tvastus lateralis~0.53|vastus medialis~0.53|vastus intermedius~0.53|gluteus maximus~0.68|adductor magnus~0.39\thigh\tintermediate\theavy\tbarbell|rack\t\tdumbbell split squat\tbarbell rear-foot-elevated split squat\t\t',
    'forward lunge\tlunge|dumbbell lunge|DB lunge|front lunge|dumbbell forward lunge|goblet lunge|kettlebell lunge\tdumbbell\tdynamic\tsplit\tneutral\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~95 10|knee~90 10|ankle~20 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47|gluteus maximus~0.69|adductor magnus~0.42\tlow\tnovice\theavy\tdumbbell\t1\tbodyweight lunge|reverse lunge\twalking lunge|barbell lunge\t\t',
    'walking lunge\tdumbbell walking lunge|DB walking lunge|lunge walk|travelling lunge\tdumbbell\tdynamic\tsplit\tneutral\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~95 5|knee~95 5|ankle~20 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47|gluteus maximus~0.67|adductor magnus~0.4\tlow\tnovice\theavy\tdumbbell|floor\t1\tforward lunge\tbarbell walking lunge|overhead walking lunge\t\t',
    'reverse lunge\tdumbbell reverse lunge|DB reverse lunge|backward lunge|step-back lunge|rear lunge|goblet reverse lunge|kettlebell reverse lunge\tdumbbell\tdynamic\tsplit\tneutral\t1\tlunge\tlunge\thip extension|knee extension\thip abduction\thip~95 10|knee~95 10|ankle~12 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.49|vastus medialis~0.49|vastus intermedius~0.49|gluteus maximus~0.69|adductor magnus~0.42\tlow\tnovice\theavy\tdumbbell\t1\tsplit squat|slider reverse lunge\tdeficit reverse lunge|barbell reverse lunge\t\t',
    'bodyweight lunge\tBW lunge|bodyweight walking lunge|bodyweight reverse lunge|alternating lunge\tbodyweight\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~95 10|knee~90 10|ankle~20 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47|gluteus maximus~0.69|adductor magnus~0.42\tnone\tnovice\tlight\tfloor\t\tsplit squat|suspension lunge\tforward lunge\t\t',
    'lateral lunge\tside lunge|dumbbell lateral lunge|goblet lateral lunge\tdumbbell\tdynamic\tstanding\t\t1\tlunge\tlunge\tknee extension|hip extension\thip adduction|hip abduction\thip~100 0|knee~95 0|ankle~15 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgracilis|gluteus medius|gluteus minimus|adductor longus|adductor brevis|pectineus\tvastus lateralis~0.45|vastus medialis~0.45|vastus intermedius~0.45|gracilis~0.48|gluteus maximus~0.66|adductor magnus~0.4|adductor longus~0.2|adductor brevis~0.2\tlow\tnovice\tlight\tdumbbell\t1\tslider lateral lunge|sumo squat\tCossack squat\t\t',
    'barbell lunge\tbarbell forward lunge|BB lunge|barbell front lunge\tbarbell\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~95 10|knee~90 10|ankle~20 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47|gluteus maximus~0.69|adductor magnus~0.42\thigh\tintermediate\theavy\tbarbell|rack\t\tforward lunge\tbarbell walking lunge\t\t',
    'barbell reverse lunge\tBB reverse lunge|barbell step-back lunge\tbarbell\tdynamic\tsplit\t\t1\tlunge\tlunge\thip extension|knee extension\thip abduction\thip~95 10|knee~95 10|ankle~12 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.49|vastus medialis~0.49|vastus intermedius~0.49|gluteus maximus~0.69|adductor magnus~0.42\thigh\tintermediate\theavy\tbarbell|rack\t\treverse lunge\tfront-rack reverse lunge\t\t',
    'barbell walking lunge\tBB walking lunge\tbarbell\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~95 5|knee~95 5|ankle~20 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47|gluteus maximus~0.67|adductor magnus~0.4\thigh\tintermediate\theavy\tbarbell|floor\t\twalking lunge\toverhead walking lunge\t\t',
    'deficit reverse lunge\treverse lunge from box|deficit step-back lunge\tdumbbell\tdynamic\tsplit\tneutral\t1\tlunge\tlunge\thip extension|knee extension\thip abduction\thip~110 10|knee~105 10|ankle~15 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.53|vastus medialis~0.53|vastus intermedius~0.53|gluteus maximus~0.74|adductor magnus~0.49\tlow\tintermediate\theavy\tdumbbell|box\t1\treverse lunge\tbarbell reverse lunge\t\t',
    'front-rack reverse lunge\tfront-rack lunge|barbell front-rack lunge|front squat lunge\tbarbell\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~90 10|knee~95 10|ankle~15 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.49|vastus medialis~0.49|vastus intermedius~0.49|gluteus maximus~0.68|adductor magnus~0.39\thigh\tadvanced\theavy\tbarbell|rack\t\tbarbell reverse lunge\t\t\t',
    'overhead walking lunge\toverhead lunge|plate overhead lunge|overhead plate walking lunge\tplate\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~90 5|knee~95 5|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47|gluteus maximus~0.66|adductor magnus~0.37\tmoderate\tintermediate\tlight\tplate|floor\t1\twalking lunge\t\t\t',
    'curtsy lunge\tcrossover lunge|curtsey lunge|cross-behind lunge\tdumbbell\tdynamic\tsplit\tneutral\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction|hip external rotation\thip~95 10|knee~90 10|ankle~18 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus|deep hip rotators\tvastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47|gluteus maximus~0.69|adductor magnus~0.42\tlow\tintermediate\tlight\tdumbbell\t1\treverse lunge\t\t\t',
    'slider reverse lunge\tsliding reverse lunge|slide-board reverse lunge|slide-board lunge\tsliders\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~100 10|knee~95 10|ankle~15 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.49|vastus medialis~0.49|vastus intermedius~0.49|gluteus maximus~0.71|adductor magnus~0.44\tnone\tnovice\tlight\tsliders|floor\t\tsuspension lunge\treverse lunge\t\t',
    'slider lateral lunge\tsliding lateral lunge|slide-board lateral lunge\tsliders\tdynamic\tstanding\t\t1\tlunge\tlunge\tknee extension|hip extension\thip adduction|hip abduction\thip~100 0|knee~95 0|ankle~20 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgracilis|gluteus medius|gluteus minimus|adductor longus|adductor brevis|pectineus\tvastus lateralis~0.45|vastus medialis~0.45|vastus intermedius~0.45|gracilis~0.48|gluteus maximus~0.66|adductor magnus~0.4|adductor longus~0.2|adductor brevis~0.2\tnone\tintermediate\tlight\tsliders|floor\t\tlateral lunge\tCossack squat\t\t',
    'suspension lunge\tsuspension-assisted lunge|assisted lunge|suspension split squat\tsuspension\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~90 10|knee~95 10|ankle~12 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.49|vastus medialis~0.49|vastus intermedius~0.49|gluteus maximus~0.68|adductor magnus~0.39\tnone\tnovice\tlight\tsuspension\t\tsplit squat hold\tbodyweight lunge\t\t',
    'lunge with rotation\trotational lunge|medicine ball lunge with rotation|lunge twist\tmedicine ball\tdynamic\tsplit\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction|trunk rotation\thip~95 10|knee~90 10|ankle~20 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus|external oblique|internal oblique\tvastus lateralis~0.47|vastus medialis~0.47|vastus intermedius~0.47|gluteus maximus~0.69|adductor magnus~0.42\tlow\tnovice\tlight\tmedicine ball|floor\t1\tbodyweight lunge\twalking lunge\t\t',
    'step-up\tdumbbell step-up|DB step-up|box step-up|forward step-up\tdumbbell\tdynamic\tsingle leg\tneutral\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~90 0|knee~90 0|ankle~18 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.43|vastus medialis~0.43|vastus intermedius~0.43|gluteus maximus~0.63|adductor magnus~0.35\tlow\tnovice\theavy\tdumbbell|box\t1\tbodyweight step-up\tbarbell step-up|high step-up\t\t',
    'bodyweight step-up\tBW step-up|step-up without load|stair step-up\tbodyweight\tdynamic\tsingle leg\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~75 0|knee~80 0|ankle~18 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.39|vastus medialis~0.39|vastus intermedius~0.39|gluteus maximus~0.58|adductor magnus~0.28\tnone\tnovice\tlight\tbox\t\tchair squat\tstep-up\t\t',
    'barbell step-up\tBB step-up\tbarbell\tdynamic\tsingle leg\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~90 0|knee~90 0|ankle~18 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.43|vastus medialis~0.43|vastus intermedius~0.43|gluteus maximus~0.63|adductor magnus~0.35\thigh\tintermediate\theavy\tbarbell|rack|box\t\tstep-up\t\t\t',
    'high step-up\thigh box step-up\tdumbbell\tdynamic\tsingle leg\tneutral\t1\tlunge\tlunge\thip extension|knee extension\thip abduction\thip~115 0|knee~105 0|ankle~18 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.49|vastus medialis~0.49|vastus intermedius~0.49|gluteus maximus~0.71|adductor magnus~0.48\tlow\tintermediate\theavy\tdumbbell|box\t1\tstep-up\t\t\t',
    'lateral step-up\tside step-up|dumbbell lateral step-up\tdumbbell\tdynamic\tsingle leg\tneutral\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~75 0|knee~85 0|ankle~20 0\t\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.41|vastus medialis~0.41|vastus intermedius~0.41|gluteus maximus~0.58|adductor magnus~0.28\tlow\tnovice\tlight\tdumbbell|box\t1\tstep-down\tsingle-leg squat\t\t',
    'crossover step-up\t\tdumbbell\tdynamic\tsingle leg\tneutral\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction|hip external rotation\thip~85 0|knee~85 0|ankle~18 0\thamstrings~none~As in a squat: what they shorten at the hip they are stretched by at the knee.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus|deep hip rotators\tvastus lateralis~0.41|vastus medialis~0.41|vastus intermedius~0.41|gluteus maximus~0.61|adductor magnus~0.33\tlow\tintermediate\tlight\tdumbbell|box\t1\tlateral step-up\t\t\t',
    'step-down\tlateral step-down|forward step-down|eccentric step-down|heel tap|box step-down\tbodyweight\tdynamic\tsingle leg\t\t1\tlunge\tlunge\tknee extension|hip extension\thip abduction\thip~50 0|knee~65 0|ankle~23 0\trectus femoris~none~As in a squat: what it shortens at the knee it is stretched by at the hip.\tvastus lateralis|vastus medialis|vastus intermedius|gluteus maximus|adductor magnus\tgluteus medius|gluteus minimus\tvastus lateralis~0.32|vastus medialis~0.32|vastus intermedius~0.32|gluteus maximus~0.47|adductor magnus~0.16\tnone\tnovice\tlight\tbox\t\tbodyweight step-up\tsingle-leg box squat|single-leg squat\t\t',
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
    'stability-ball neck hold\tball neck isometric|wall ball neck hold|neck ball press\tbodyweight\tisometric\tstanding\t\t\t\t\tneck extension\t\t\t\tsplenius|semispinalis\tupper trapezius\t\tnone\tnovice\tlight\tstability ball|wall\t\tisometric neck extension\tneck bridge\tLight and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'neck bridge\tback neck bridge|rear neck bridge|wrestling bridge|head bridge\tbodyweight\tisometric\tsupported\t\t\t\t\tneck extension\t\t\t\tsplenius|semispinalis\tupper trapezius\t\tnone\tadvanced\theavy\tfloor\t\tstability-ball neck hold|harness neck extension\t\tBody weight on the bent neck: only for trained wrestlers who need it, never as general neck work. Light and slow, through a range free of pain; dizziness, tingling or pain down an arm ends the set and asks for licensed advice.\t',
    'bent-over row\tbarbell row|bent-over barbell row|BB row|bent row|barbell bent-over row|BOR\tbarbell\tdynamic\tstanding\toverhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk extension\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\terector spinae|multifidus|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tmoderate\tintermediate\theavy\tbarbell\t1\tchest-supported dumbbell row|seated cable row\tdead-stop row\t\t',
    'pull-up\toverhand pull-up|strict pull-up|bodyweight pull-up|pronated pull-up\tbodyweight\tdynamic\thanging\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 115\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.6\tnone\tintermediate\theavy\tpull-up bar\t1\tassisted pull-up|lat pulldown\tweighted pull-up\t\t',
    'lat pulldown\tpulldown|LPD|cable pulldown|front pulldown|overhand pulldown|overhand lat pulldown|machine pulldown\tmachine\tdynamic\tseated\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 110\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.62\tnone\tnovice\theavy\tmachine pulldown\t1\tband pulldown\tassisted pull-up|pull-up\t\t',
    'seated cable row\tcable row|seated row|low row|seated cable pull|close-grip seated row|close-grip cable row\tcable\tdynamic\tseated\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tlow\tnovice\theavy\tmachine cable row\t1\tmachine row\tone-arm dumbbell row|bent-over row\t\t',
    'one-arm dumbbell row\tdumbbell row|DB row|single-arm dumbbell row|one-arm DB row|single-arm DB row|supported dumbbell row|one-arm row|single-arm row|three-point row\tdumbbell\tdynamic\tsupported\tneutral\t1\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tlow\tnovice\theavy\tdumbbell|bench\t1\tseated cable row\tbent-over row\t\t',
    'chin-up\tunderhand pull-up|chin|supinated pull-up|bodyweight chin-up\tbodyweight\tdynamic\thanging\tunderhand\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 10|elbow~10 120\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.48|brachialis~0.58\tnone\tintermediate\theavy\tpull-up bar\t1\tassisted chin-up|underhand lat pulldown\tweighted chin-up\t\t',
    'inverted row\tbody row|bodyweight row|horizontal pull-up|Australian pull-up|supine row\tbodyweight\tdynamic\tsupported\toverhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~80 -5|elbow~5 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.68\tnone\tnovice\tlight\track|barbell\t1\tinverted row with bent knees|suspension row\tfeet-elevated inverted row\t\t',
    'face pull\tcable face pull|rope face pull\tcable\tdynamic\tstanding\tneutral\t\thorizontal pull\thorizontal pull\tshoulder horizontal abduction|scapular retraction\tshoulder external rotation\telbow~20 100\t\tmiddle trapezius|rhomboids|posterior deltoid\tlower trapezius|middle deltoid|infraspinatus|teres minor\t\tnone\tnovice\tlight\tcable\t\tband face pull|band pull-apart\tdumbbell reverse fly\t\t',
    'chest-supported dumbbell row\tchest-supported row|incline dumbbell row|chest-supported DB row|incline row|incline bench row|CSR\tdumbbell\tdynamic\tsupported\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tnone\tnovice\theavy\tdumbbell|bench\t1\tmachine row\tbent-over dumbbell row\t\t',
    'machine row\tseated machine row|row machine|chest-supported machine row|plate-loaded row|seated row machine\tmachine\tdynamic\tsupported\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tnone\tnovice\theavy\tmachine row\t1\t\tseated cable row|chest-supported dumbbell row\t\t',
    'T-bar row\tlandmine row|T-bar|corner bar row|standing T-bar row\tbarbell\tdynamic\tstanding\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk extension\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\terector spinae|multifidus|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tmoderate\tintermediate\theavy\tlandmine|barbell\t1\tchest-supported T-bar row\t\t\t',
    'chest-supported T-bar row\tsupported T-bar row|lying T-bar row|machine T-bar row\tmachine\tdynamic\tsupported\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tnone\tnovice\theavy\tmachine T-bar row\t1\tmachine row\tT-bar row\t\t',
    'neutral-grip lat pulldown\tneutral-grip pulldown|parallel-grip pulldown|hammer-grip pulldown\tmachine\tdynamic\tseated\tneutral\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 15|elbow~10 110\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.51|brachialis~0.62\tnone\tnovice\theavy\tmachine pulldown\t1\tband pulldown\tneutral-grip pull-up\t\t',
    'close-grip lat pulldown\tclose-grip pulldown|V-bar pulldown|narrow-grip pulldown|narrow-grip lat pulldown\tmachine\tdynamic\tseated\tclose\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 15|elbow~10 110\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.51|brachialis~0.62\tnone\tnovice\theavy\tmachine pulldown\t1\t\tneutral-grip pull-up\t\t',
    'underhand lat pulldown\tunderhand pulldown|reverse-grip pulldown|supinated pulldown|reverse-grip lat pulldown|supinated lat pulldown\tmachine\tdynamic\tseated\tunderhand\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 15|elbow~10 110\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.51|brachialis~0.62\tnone\tnovice\theavy\tmachine pulldown\t1\t\tchin-up\t\t',
    'wide-grip lat pulldown\twide-grip pulldown|wide pulldown|wide lat pulldown\tmachine\tdynamic\tseated\twide\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 95\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.69\tnone\tnovice\theavy\tmachine pulldown\t1\t\twide-grip pull-up\t\t',
    'one-arm lat pulldown\tsingle-arm lat pulldown|single-arm pulldown|one-arm pulldown|single-arm cable pulldown|half-kneeling one-arm pulldown\tcable\tdynamic\tkneeling\tneutral\t1\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 15|elbow~10 110\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.51|brachialis~0.62\tnone\tnovice\theavy\tcable\t1\tlat pulldown\t\t\t',
    'behind-the-neck pulldown\tpulldown behind the neck|BTN pulldown|rear pulldown\tmachine\tdynamic\tseated\twide\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 95\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.69\tnone\tintermediate\theavy\tmachine pulldown\t1\tlat pulldown\t\tAsks for a shoulder that reaches the position freely and without pain; the front pulldown trains the same muscles.\t',
    'band pulldown\tband lat pulldown|banded pulldown|resistance band pulldown\tband\tdynamic\tkneeling\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 110\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.62\tnone\tnovice\tlight\tband\t\t\tlat pulldown\t\t',
    'plate-loaded pulldown\tlever pulldown|converging pulldown|converging lat pulldown\tmachine\tdynamic\tseated\tneutral\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 110\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.62\tnone\tnovice\theavy\tmachine lever pulldown\t1\t\tlat pulldown\t\t',
    'assisted pull-up\tmachine-assisted pull-up|pull-up machine|assisted pull-up machine\tmachine\tdynamic\thanging\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 115\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.6\tnone\tnovice\theavy\tmachine assisted pull-up\t1\tlat pulldown\tpull-up\t\t',
    'assisted chin-up\tmachine-assisted chin-up|assisted chin-up machine\tmachine\tdynamic\thanging\tunderhand\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 10|elbow~10 120\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.48|brachialis~0.58\tnone\tnovice\theavy\tmachine assisted pull-up\t1\tunderhand lat pulldown\tchin-up\t\t',
    'band-assisted pull-up\tbanded pull-up|band pull-up|pull-up with band\tband\tdynamic\thanging\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 115\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.6\tnone\tnovice\theavy\tpull-up bar|band\t1\tlat pulldown\tpull-up\t\t',
    'negative pull-up\teccentric pull-up|pull-up lowering|slow-lowering pull-up|jumping negative pull-up\tbodyweight\tdynamic\thanging\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 115\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.6\tnone\tnovice\theavy\tpull-up bar\t1\tassisted pull-up\tpull-up\t\t',
    'weighted pull-up\tloaded pull-up|pull-up with added weight\tplate\tdynamic\thanging\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 115\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.6\tnone\tadvanced\theavy\tpull-up bar|plate\t1\tpull-up\t\t\t',
    'weighted chin-up\tloaded chin-up|chin-up with added weight|weighted chin\tplate\tdynamic\thanging\tunderhand\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 10|elbow~10 120\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.48|brachialis~0.58\tnone\tadvanced\theavy\tpull-up bar|plate\t1\tchin-up\t\t\t',
    'neutral-grip pull-up\tparallel-grip pull-up|hammer-grip pull-up|neutral-grip chin-up|neutral pull-up\tbodyweight\tdynamic\thanging\tneutral\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 10|elbow~10 120\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.48|brachialis~0.58\tnone\tintermediate\theavy\tpull-up bar\t1\tneutral-grip lat pulldown|assisted pull-up\tweighted neutral-grip pull-up\t\t',
    'weighted neutral-grip pull-up\tloaded neutral-grip pull-up\tplate\tdynamic\thanging\tneutral\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 10|elbow~10 120\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.48|brachialis~0.58\tnone\tadvanced\theavy\tpull-up bar|plate\t1\tneutral-grip pull-up\t\t\t',
    'wide-grip pull-up\twide pull-up|wide-hands pull-up\tbodyweight\tdynamic\thanging\twide\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 95\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.69\tnone\tadvanced\theavy\tpull-up bar\t1\twide-grip lat pulldown|pull-up\t\t\t',
    'close-grip pull-up\tnarrow-grip pull-up|close-grip chin-up|narrow pull-up\tbodyweight\tdynamic\thanging\tclose\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 10|elbow~10 120\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.48|brachialis~0.58\tnone\tintermediate\theavy\tpull-up bar\t1\tclose-grip lat pulldown\t\t\t',
    'mixed-grip pull-up\talternating-grip pull-up|commando pull-up|mixed-grip chin-up\tbodyweight\tdynamic\thanging\tmixed\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 10|elbow~10 120\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.48|brachialis~0.58\tnone\tintermediate\theavy\tpull-up bar\t1\tpull-up\t\t\t',
    'chest-to-bar pull-up\tC2B pull-up|high pull-up|chest-to-bar\tbodyweight\tdynamic\thanging\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 130\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.53\tnone\tadvanced\theavy\tpull-up bar\t1\tpull-up\tmuscle-up\t\t',
    'ring pull-up\tgymnastic ring pull-up|suspension pull-up\tsuspension\tdynamic\thanging\tneutral\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 10|elbow~10 120\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.48|brachialis~0.58\tnone\tintermediate\theavy\tsuspension\t1\tpull-up\tmuscle-up\t\t',
    'towel pull-up\ttowel-grip pull-up|rope pull-up\tbodyweight\tdynamic\thanging\tneutral\t\tvertical pull\tvertical pull\tshoulder extension|grip\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 10|elbow~10 120\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|finger flexors\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis|wrist flexors|wrist extensors\tbiceps long head~0.48|brachialis~0.58\tnone\tadvanced\theavy\tpull-up bar\t1\tneutral-grip pull-up|towel hang\t\t\t',
    'L-sit pull-up\tL pull-up\tbodyweight\tdynamic\thanging\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction|hip flexion|trunk flexion\telbow~10 115|hip~85 85|knee~0 0|ankle~0 0\t\tlatissimus dorsi|teres major\trectus abdominis|middle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.6\tnone\tadvanced\theavy\tpull-up bar\t1\tpull-up|hanging leg raise\t\t\t',
    'archer pull-up\tside-to-side pull-up|typewriter pull-up\tbodyweight\tdynamic\thanging\twide\t1\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~10 115\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.6\tnone\tadvanced\theavy\tpull-up bar\t1\tweighted pull-up\tone-arm chin-up\t\t',
    'one-arm chin-up\tsingle-arm chin-up|one-arm pull-up|single-arm pull-up\tbodyweight\tdynamic\thanging\tunderhand\t1\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\tshoulder~165 10|elbow~10 120\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.48|brachialis~0.58\tnone\tadvanced\theavy\tpull-up bar\t1\tarcher pull-up|weighted chin-up\t\t\t',
    'muscle-up\tbar muscle-up|strict muscle-up\tbodyweight\tdynamic\thanging\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction|elbow extension\tshoulder extension|shoulder horizontal adduction|scapular depression\telbow~115 5\t\tlatissimus dorsi|teres major|triceps long head|triceps lateral head|triceps medial head\tlower trapezius|sternocostal chest\ttriceps lateral head~0.49|triceps medial head~0.49\tnone\tadvanced\theavy\tpull-up bar\t1\tchest-to-bar pull-up|straight-bar dip\tring muscle-up\tA pull over into a dip; the path is that of the dip, in which most attempts fail.\t',
    'ring muscle-up\tstrict ring muscle-up\tsuspension\tdynamic\thanging\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction|elbow extension\tshoulder extension|shoulder horizontal adduction|scapular depression\telbow~115 5\t\tlatissimus dorsi|teres major|triceps long head|triceps lateral head|triceps medial head\tlower trapezius|sternocostal chest\ttriceps lateral head~0.49|triceps medial head~0.49\tnone\tadvanced\theavy\tsuspension\t1\tring dip|chest-to-bar pull-up\t\t\t',
    'pull-up hold\tisometric pull-up|top pull-up hold|pull-up isometric hold\tbodyweight\tisometric\thanging\toverhand\t\tvertical pull\tvertical pull\tshoulder adduction\telbow flexion|scapular depression|scapular downward rotation|scapular retraction\telbow~110\t\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|biceps long head|biceps short head|brachialis\tbrachialis~0.18\tnone\tnovice\theavy\tpull-up bar\t1\tlat pulldown\tnegative pull-up\t\t',
    'chin-up hold\tflexed-arm hang|bent-arm hang|isometric chin-up|chin-over-bar hold\tbodyweight\tisometric\thanging\tunderhand\t\tvertical pull\tvertical pull\tshoulder extension\telbow flexion|scapular depression|scapular retraction\tshoulder~20|elbow~120\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major\tmiddle trapezius|lower trapezius|rhomboids|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.15|brachialis~0.06\tnone\tnovice\theavy\tpull-up bar\t1\tunderhand lat pulldown\tchin-up\t\t',
    'scapular pull-up\tscap pull-up|active hang|hanging shoulder-blade pull|shoulder shrug-down hang\tbodyweight\tdynamic\thanging\toverhand\t\tvertical pull\tvertical pull\tscapular depression\tscapular downward rotation|scapular retraction\telbow~5\t\tlower trapezius\tmiddle trapezius|rhomboids|pectoralis minor\t\tnone\tnovice\tlight\tpull-up bar\t1\tdead hang\tpull-up\t\t',
    'front lever hold\tfront lever|tuck front lever|front lever row hold\tbodyweight\tisometric\thanging\toverhand\t\tvertical pull\tvertical pull\tshoulder extension|trunk flexion\tscapular retraction\tshoulder~70|elbow~0|hip~0|knee~0|ankle~0\t\trectus abdominis|latissimus dorsi|teres major\texternal oblique|internal oblique|middle trapezius|rhomboids|posterior deltoid|triceps long head\ttriceps long head~0.54\tnone\tadvanced\theavy\tpull-up bar\t1\tstraight-arm pulldown|L-sit pull-up\t\t\t',
    'dead-stop row\tdead-stop barbell row|row from the floor|strict floor row|explosive barbell row\tbarbell\tdynamic\tstanding\toverhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk extension\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\terector spinae|multifidus|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tmoderate\tintermediate\theavy\tbarbell\t1\tbent-over row\t\t\t',
    'underhand barbell row\treverse-grip row|underhand row|supinated barbell row|reverse-grip barbell row|underhand bent-over row\tbarbell\tdynamic\tstanding\tunderhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk extension\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\terector spinae|multifidus|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tmoderate\tintermediate\theavy\tbarbell\t1\tbent-over row\t\t\t',
    'wide-grip bent-over row\twide-grip barbell row|elbows-out barbell row\tbarbell\tdynamic\tstanding\twide\t\thorizontal pull\thorizontal pull\tshoulder horizontal abduction|scapular retraction\telbow flexion|shoulder extension|trunk extension\telbow~10 95\t\tmiddle trapezius|rhomboids|posterior deltoid\terector spinae|multifidus|latissimus dorsi|teres major|lower trapezius|middle deltoid|infraspinatus|teres minor|biceps long head|biceps short head|brachialis\tbrachialis~0.69\tmoderate\tintermediate\theavy\tbarbell\t1\tchest-supported rear-shoulder row\t\t\t',
    'snatch-grip row\tsnatch-grip barbell row|snatch-grip bent-over row\tbarbell\tdynamic\tstanding\twide\t\thorizontal pull\thorizontal pull\tshoulder horizontal abduction|scapular retraction\tshoulder extension|elbow flexion|trunk extension\telbow~10 85\t\tmiddle trapezius|rhomboids|posterior deltoid\terector spinae|multifidus|latissimus dorsi|teres major|lower trapezius|middle deltoid|infraspinatus|teres minor|biceps long head|biceps short head|brachialis\tbrachialis~0.73\tmoderate\tintermediate\theavy\tbarbell\t1\tbent-over row\t\t\t',
    'seal row\tbench pull|lying bench row|prone row|prone barbell row|high bench row\tbarbell\tdynamic\tprone\toverhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tnone\tintermediate\theavy\tbarbell|bench\t1\tchest-supported dumbbell row\t\t\t',
    'guided-bar row\tguided-bar bent-over row|fixed-track row\tguided bar\tdynamic\tstanding\toverhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk extension\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\terector spinae|multifidus|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tmoderate\tnovice\theavy\tguided bar\t1\t\tbent-over row\t\t',
    'trap bar row\thex bar row|trap bar bent-over row\ttrap bar\tdynamic\tstanding\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk extension\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\terector spinae|multifidus|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tmoderate\tintermediate\theavy\ttrap bar\t1\tbent-over dumbbell row\t\t\t',
    'tempo bent-over row\tpaused barbell row|slow barbell row|pause row\tbarbell\tdynamic\tstanding\toverhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk extension\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\terector spinae|multifidus|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tmoderate\tintermediate\theavy\tbarbell\t1\tbent-over row\t\t\t',
    'bent-over dumbbell row\ttwo-arm dumbbell row|double dumbbell row|bent-over DB row|dumbbell bent-over row\tdumbbell\tdynamic\tstanding\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk extension\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\terector spinae|multifidus|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tlow\tintermediate\theavy\tdumbbell\t1\tchest-supported dumbbell row\tbent-over row\t\t',
    'kettlebell row\tKB row|bent-over kettlebell row|double kettlebell row\tkettlebell\tdynamic\tstanding\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk extension\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\terector spinae|multifidus|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tlow\tintermediate\theavy\tkettlebell\t1\tone-arm dumbbell row\talternating kettlebell row\t\t',
    'alternating kettlebell row\tgorilla row|wide-stance kettlebell row\tkettlebell\tdynamic\tstanding\tneutral\t1\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk extension\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\terector spinae|multifidus|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tlow\tintermediate\theavy\tkettlebell\t1\tkettlebell row\t\t\t',
    'one-arm kettlebell row\tsingle-arm kettlebell row|one-arm KB row|split-stance kettlebell row\tkettlebell\tdynamic\tsplit\tneutral\t1\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tlow\tnovice\theavy\tkettlebell\t1\tone-arm dumbbell row\t\t\t',
    'one-arm landmine row\tsingle-arm landmine row|side-on landmine row|one-arm T-bar row|angled bar row\tbarbell\tdynamic\tsplit\toverhand\t1\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction|shoulder horizontal abduction\telbow flexion\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids|posterior deltoid\tlower trapezius|middle deltoid|infraspinatus|teres minor|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tlow\tintermediate\theavy\tlandmine|barbell\t1\tone-arm dumbbell row\t\t\t',
    'plank row\trenegade row|push-up position row|dumbbell plank row\tdumbbell\tdynamic\tprone\tneutral\t1\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk flexion|trunk rotation\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\trectus abdominis|external oblique|internal oblique|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tnone\tintermediate\tlight\tdumbbell|floor\t1\tplank shoulder tap|one-arm dumbbell row\t\t\t',
    'one-arm machine row\tsingle-arm machine row|unilateral machine row|iso-lateral row\tmachine\tdynamic\tsupported\tneutral\t1\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tnone\tnovice\theavy\tmachine row\t1\tmachine row\t\t\t',
    'one-arm cable row\tsingle-arm cable row|one-arm seated cable row|single-arm seated row|standing one-arm cable row\tcable\tdynamic\tseated\tneutral\t1\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk rotation\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\texternal oblique|internal oblique|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tnone\tnovice\theavy\tcable\t1\tseated cable row\t\t\t',
    'wide-grip seated row\twide-grip cable row|wide seated row|wide-grip seated cable row\tcable\tdynamic\tseated\twide\t\thorizontal pull\thorizontal pull\tshoulder horizontal abduction|scapular retraction\tshoulder extension|elbow flexion\telbow~10 95\t\tmiddle trapezius|rhomboids|posterior deltoid\tlatissimus dorsi|teres major|lower trapezius|middle deltoid|infraspinatus|teres minor|biceps long head|biceps short head|brachialis\tbrachialis~0.69\tlow\tnovice\theavy\tmachine cable row\t1\tmachine row\t\t\t',
    'underhand cable row\tunderhand seated row|reverse-grip cable row|supinated cable row\tcable\tdynamic\tseated\tunderhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tlow\tnovice\theavy\tmachine cable row\t1\tseated cable row\t\t\t',
    'standing cable row\tstanding row|split-stance cable row\tcable\tdynamic\tstanding\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tlow\tnovice\tlight\tcable\t1\tband row\tseated cable row\t\t',
    'high row\thigh cable row|kneeling high row|machine high row|half-kneeling cable row|high-to-low row\tcable\tdynamic\tkneeling\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|scapular depression\tshoulder~125 0|elbow~10 110\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.48|brachialis~0.62\tnone\tnovice\theavy\tcable\t1\tlat pulldown\tneutral-grip pull-up\t\t',
    'band row\tresistance band row|banded row|seated band row|standing band row\tband\tdynamic\tseated\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~75 -10|elbow~10 100\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.67\tnone\tnovice\tlight\tband\t\t\tseated cable row\t\t',
    'inverted row with bent knees\tbent-knee inverted row|bent-knee body row|easy inverted row\tbodyweight\tdynamic\tsupported\toverhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~80 -5|elbow~5 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.68\tnone\tnovice\tlight\track|barbell\t1\tsuspension row\tinverted row\t\t',
    'feet-elevated inverted row\televated inverted row|decline inverted row\tbodyweight\tdynamic\tsupported\toverhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~80 -5|elbow~5 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.68\tnone\tintermediate\tlight\track|barbell|bench\t1\tinverted row\tweighted inverted row\t\t',
    'weighted inverted row\tloaded inverted row\tplate\tdynamic\tsupported\toverhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~80 -5|elbow~5 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.68\tnone\tintermediate\theavy\track|barbell|plate\t1\tfeet-elevated inverted row\t\t\t',
    'underhand inverted row\treverse-grip inverted row|supinated inverted row\tbodyweight\tdynamic\tsupported\tunderhand\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~80 -5|elbow~5 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.68\tnone\tnovice\tlight\track|barbell\t1\tinverted row with bent knees\tchin-up\t\t',
    'suspension row\tsuspended row|sling row|ring row|strap row\tsuspension\tdynamic\tsupported\tneutral\t\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction\tshoulder~80 -5|elbow~5 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.68\tnone\tnovice\tlight\tsuspension\t1\tband row\tinverted row\t\t',
    'one-arm suspension row\tsingle-arm suspension row|single-arm ring row|one-arm inverted row\tsuspension\tdynamic\tsupported\tneutral\t1\thorizontal pull\thorizontal pull\tshoulder extension|scapular retraction\telbow flexion|shoulder horizontal abduction|trunk rotation\tshoulder~80 -5|elbow~5 100\t\tlatissimus dorsi|teres major|middle trapezius|rhomboids\texternal oblique|internal oblique|lower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.55|brachialis~0.68\tnone\tintermediate\tlight\tsuspension\t1\tsuspension row\t\t\t',
    'inverted row hold\tisometric inverted row|top inverted row hold\tbodyweight\tisometric\tsupported\toverhand\t\thorizontal pull\thorizontal pull\tscapular retraction|shoulder extension\tshoulder horizontal abduction|elbow flexion\tshoulder~0|elbow~95\ttriceps long head~none~The bending elbow lengthens it while the shoulder extends, and the lift loads bending of the elbow, which it opposes.\tlatissimus dorsi|teres major|middle trapezius|rhomboids\tlower trapezius|posterior deltoid|biceps long head|biceps short head|brachialis\tbiceps long head~0.4|brachialis~0.34\tnone\tnovice\tlight\track|barbell\t1\tinverted row with bent knees\t\t\t',
    'chest-supported rear-shoulder row\trear delt row|rear-shoulder row|wide chest-supported row|elbows-out dumbbell row|dumbbell rear delt row\tdumbbell\tdynamic\tsupported\toverhand\t\thorizontal pull\thorizontal pull\tshoulder horizontal abduction|scapular retraction\telbow flexion\telbow~10 90\t\tmiddle trapezius|rhomboids|posterior deltoid\tlower trapezius|middle deltoid|infraspinatus|teres minor|biceps long head|biceps short head|brachialis\tbrachialis~0.71\tnone\tnovice\tlight\tdumbbell|bench\t1\tmachine reverse fly\twide-grip bent-over row\t\t',
    'straight-arm pulldown\tstraight-arm cable pulldown|lat pushdown|stiff-arm pulldown|cable pullover|standing cable pullover|rope straight-arm pulldown\tcable\tdynamic\tstanding\toverhand\t\t\t\tshoulder extension\t\tshoulder~150 10|elbow~10 10\t\tlatissimus dorsi|teres major\tposterior deltoid|triceps long head\ttriceps long head~0.56\tnone\tnovice\tlight\tcable\t\tband straight-arm pulldown\tlat pulldown\t\t',
    'band straight-arm pulldown\tbanded straight-arm pulldown|band lat pushdown\tband\tdynamic\tstanding\t\t\t\t\tshoulder extension\t\tshoulder~150 10|elbow~10 10\t\tlatissimus dorsi|teres major\tposterior deltoid|triceps long head\ttriceps long head~0.56\tnone\tnovice\tlight\tband\t\t\tstraight-arm pulldown\t\t',
    'dumbbell pullover\tDB pullover|pullover|bent-arm pullover|cross-bench pullover\tdumbbell\tdynamic\tlying\tneutral\t\t\t\tshoulder extension\t\tshoulder~170 80|elbow~25 25\tsternocostal chest~indirect~From overhead the lower part of the chest helps to pull the raised arm down.\tlatissimus dorsi|teres major\tsternocostal chest|posterior deltoid|triceps long head\ttriceps long head~0.71\tnone\tintermediate\tlight\tdumbbell|bench\t\tstraight-arm pulldown\tbarbell pullover\t\t',
    'barbell pullover\tbent-bar pullover|EZ-bar pullover\tbarbell\tdynamic\tlying\tclose\t\t\t\tshoulder extension\t\tshoulder~170 80|elbow~30 30\tsternocostal chest~indirect~From overhead the lower part of the chest helps to pull the raised arm down.\tlatissimus dorsi|teres major\tsternocostal chest|posterior deltoid|triceps long head\ttriceps long head~0.73\tnone\tintermediate\tlight\tbarbell|bench\t\tdumbbell pullover\t\t\t',
    'machine pullover\tpullover machine|seated pullover\tmachine\tdynamic\tseated\t\t\t\t\tshoulder extension\t\tshoulder~165 15|elbow~90 90\t\tlatissimus dorsi|teres major\tposterior deltoid|triceps long head\ttriceps long head~0.83\tnone\tnovice\theavy\tmachine pullover\t\tstraight-arm pulldown\t\t\t',
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
    'overhead press\tOHP|military press|strict press|standing press|barbell overhead press|standing barbell press|barbell shoulder press|standing overhead press|shoulder press|overhead barbell press|press overhead\tbarbell\tdynamic\tstanding\toverhand\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.8|triceps lateral head~0.51|triceps medial head~0.51\tmoderate\tintermediate\theavy\tbarbell|rack\t\tseated dumbbell shoulder press|landmine press\tpush press\t\t',
    'incline bench press\tincline barbell press|incline barbell bench press|incline press|incline bench|BB incline press\tbarbell\tdynamic\tincline\toverhand\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\tclavicular chest~direct~The upper part of the chest worked hardest with the bench raised to between 30 and 56 degrees.|sternocostal chest~indirect~The middle and lower parts of the chest worked hardest on the flat bench.\tclavicular chest\tsternocostal chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\theavy\tbarbell|bench|rack\t\tincline dumbbell press\t\tBench set at about 30 degrees.\tridao-2020|trebs-2010',
    'incline dumbbell press\tincline DB press|incline dumbbell bench press|incline DB bench press\tdumbbell\tdynamic\tincline\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\tclavicular chest~direct~The upper part of the chest worked hardest with the bench raised to between 30 and 56 degrees.|sternocostal chest~indirect~The middle and lower parts of the chest worked hardest on the flat bench.\tclavicular chest\tsternocostal chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\theavy\tdumbbell|bench\t\tincline machine press\tincline bench press\tBench set at about 30 degrees.\tridao-2020|trebs-2010',
    'seated dumbbell shoulder press\tseated dumbbell press|seated DB press|seated DB shoulder press|dumbbell shoulder press|DB shoulder press|seated dumbbell overhead press|DBSP\tdumbbell\tdynamic\tseated\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.8|triceps lateral head~0.51|triceps medial head~0.51\tlow\tnovice\theavy\tdumbbell|bench\t\tmachine shoulder press\tstanding dumbbell shoulder press|overhead press\t\t',
    'dip\tparallel bar dip|chest dip|bar dip|triceps dip|bodyweight dip\tbodyweight\tdynamic\tsupported\tneutral\t\thorizontal push\thorizontal push\tshoulder horizontal adduction|elbow extension\tshoulder flexion\tshoulder~-40 10|elbow~95 5\t\tsternocostal chest|triceps lateral head|triceps medial head\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head\ttriceps long head~0.28|triceps lateral head~0.41|triceps medial head~0.41\tnone\tintermediate\theavy\tdip bars\t\tassisted dip|bench dip\tweighted dip\tCounted with the horizontal pushes: the muscles are those of a decline press, not of an overhead press.\t',
    'machine chest press\tchest press|seated chest press|chest press machine|seated machine press|vertical chest press\tmachine\tdynamic\tseated\t\t\thorizontal push\thorizontal push\tshoulder horizontal adduction\tshoulder flexion|elbow extension\telbow~100 5\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.43|triceps medial head~0.43\tnone\tnovice\theavy\tmachine chest press\t\t\tdumbbell bench press\t\t',
    'close-grip bench press\tCGBP|close-grip bench|narrow-grip bench press|close-grip barbell bench press\tbarbell\tdynamic\tlying\tclose\t\thorizontal push\thorizontal push\telbow extension|shoulder horizontal adduction\tshoulder flexion\tshoulder~-25 70|elbow~110 5\ttriceps long head~indirect~The straightening elbow shortens it while the shoulder, moving from extension into flexion, lengthens it by about as much: loaded, but hardly moving, so less than the two short heads.\tsternocostal chest|triceps lateral head|triceps medial head\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head\ttriceps long head~0.49|triceps lateral head~0.47|triceps medial head~0.47\tnone\tintermediate\theavy\tbarbell|bench|rack\t\tclose-grip push-up|cable pushdown\t\t\t',
    'machine shoulder press\tshoulder press machine|machine overhead press|seated machine shoulder press|overhead press machine\tmachine\tdynamic\tseated\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.8|triceps lateral head~0.51|triceps medial head~0.51\tlow\tnovice\theavy\tmachine shoulder press\t\t\tseated dumbbell shoulder press\t\t',
    'dumbbell fly\tDB fly|dumbbell flye|flat dumbbell fly|chest fly|dumbbell chest fly|pec fly|flat fly\tdumbbell\tdynamic\tlying\tneutral\t\t\t\tshoulder horizontal adduction\tshoulder flexion\telbow~20\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis\t\tnone\tnovice\tlight\tdumbbell|bench\t\tmachine fly\t\t\t',
    'cable fly\tcable crossover|cable chest fly|standing cable fly|cable flye|crossover\tcable\tdynamic\tstanding\tneutral\t\t\t\tshoulder horizontal adduction\tshoulder flexion\telbow~20\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis\t\tnone\tnovice\tlight\tcable\t\tmachine fly\tone-arm cable fly\t\t',
    'machine fly\tpec deck|machine chest fly|pec deck fly|seated fly machine|butterfly machine|pec fly machine\tmachine\tdynamic\tseated\t\t\t\t\tshoulder horizontal adduction\tshoulder flexion\telbow~20\t\tsternocostal chest\tclavicular chest|anterior deltoid|coracobrachialis\t\tnone\tnovice\tlight\tmachine fly\t\t\tcable fly|dumbbell fly\t\t',
    'standing dumbbell shoulder press\tstanding dumbbell press|standing DB press|dumbbell overhead press|DB overhead press|standing dumbbell overhead press\tdumbbell\tdynamic\tstanding\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.8|triceps lateral head~0.51|triceps medial head~0.51\tmoderate\tnovice\theavy\tdumbbell\t\tseated dumbbell shoulder press\tone-arm dumbbell overhead press\t\t',
    'weighted dip\tloaded dip|dip with added weight|weighted parallel bar dip\tplate\tdynamic\tsupported\tneutral\t\thorizontal push\thorizontal push\tshoulder horizontal adduction|elbow extension\tshoulder flexion\tshoulder~-40 10|elbow~95 5\t\tsternocostal chest|triceps lateral head|triceps medial head\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head\ttriceps long head~0.28|triceps lateral head~0.41|triceps medial head~0.41\tnone\tadvanced\theavy\tdip bars|plate\t\tdip\t\tCounted with the horizontal pushes: the muscles are those of a decline press, not of an overhead press.\t',
    'assisted dip\tmachine-assisted dip|assisted dip machine\tmachine\tdynamic\tsupported\tneutral\t\thorizontal push\thorizontal push\tshoulder horizontal adduction|elbow extension\tshoulder flexion\tshoulder~-40 10|elbow~95 5\t\tsternocostal chest|triceps lateral head|triceps medial head\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head\ttriceps long head~0.28|triceps lateral head~0.41|triceps medial head~0.41\tnone\tnovice\theavy\tmachine assisted dip\t\t\tdip\tCounted with the horizontal pushes: the muscles are those of a decline press, not of an overhead press.\t',
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
    'pike push-up\tpike press|shoulder push-up\tbodyweight\tdynamic\tprone\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~70 160|elbow~110 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.47|triceps medial head~0.47\tnone\tintermediate\tlight\tfloor\t\tdecline push-up|push-up\tfeet-elevated pike push-up\t\t',
    'feet-elevated pike push-up\televated pike push-up|box pike push-up\tbodyweight\tdynamic\tprone\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~70 160|elbow~110 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.47|triceps medial head~0.47\tnone\tintermediate\theavy\tfloor|box\t\tpike push-up\thandstand push-up\t\t',
    'handstand push-up\tHSPU|wall handstand push-up|vertical push-up\tbodyweight\tdynamic\tsupported\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~70 160|elbow~110 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.47|triceps medial head~0.47\tnone\tadvanced\theavy\twall|floor\t\tfeet-elevated pike push-up\t\t\t',
    'ring dip\tgymnastic ring dip\tsuspension\tdynamic\tsupported\tneutral\t\thorizontal push\thorizontal push\tshoulder horizontal adduction|elbow extension\tshoulder flexion\tshoulder~-40 10|elbow~95 5\t\tsternocostal chest|triceps lateral head|triceps medial head\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head\ttriceps long head~0.28|triceps lateral head~0.41|triceps medial head~0.41\tnone\tadvanced\theavy\tsuspension\t\tdip|ring push-up\t\tCounted with the horizontal pushes: the muscles are those of a decline press, not of an overhead press.\t',
    'straight-bar dip\tbar support dip|single-bar dip\tbodyweight\tdynamic\tsupported\toverhand\t\thorizontal push\thorizontal push\tshoulder horizontal adduction|elbow extension\tshoulder flexion\tshoulder~-40 10|elbow~95 5\t\tsternocostal chest|triceps lateral head|triceps medial head\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head\ttriceps long head~0.28|triceps lateral head~0.41|triceps medial head~0.41\tnone\tadvanced\theavy\tpull-up bar\t\tdip\tmuscle-up\tCounted with the horizontal pushes: the muscles are those of a decline press, not of an overhead press.\t',
    'machine dip\tseated dip machine|dip machine|seated machine dip\tmachine\tdynamic\tseated\tneutral\t\thorizontal push\thorizontal push\tshoulder horizontal adduction|elbow extension\tshoulder flexion\tshoulder~-40 10|elbow~95 5\t\tsternocostal chest|triceps lateral head|triceps medial head\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head\ttriceps long head~0.28|triceps lateral head~0.41|triceps medial head~0.41\tnone\tnovice\theavy\tmachine dip\t\t\tdip\tCounted with the horizontal pushes: the muscles are those of a decline press, not of an overhead press.\t',
    'bench dip\tchair dip|box dip|feet-supported dip\tbodyweight\tdynamic\tsupported\toverhand\t\thorizontal push\thorizontal push\telbow extension\tshoulder horizontal adduction|shoulder flexion\tshoulder~-55 -10|elbow~95 5\t\ttriceps lateral head|triceps medial head\tsternocostal chest|anterior deltoid|triceps long head\ttriceps long head~0.2|triceps lateral head~0.41|triceps medial head~0.41\tnone\tnovice\tlight\tbench\t\tcable pushdown\tdip\tDeep positions stretch the front of the shoulder; stop where the upper arm is level.\t',
    'band-assisted dip\tbanded dip|assisted dip with band\tbodyweight\tdynamic\tsupported\tneutral\t\thorizontal push\thorizontal push\tshoulder horizontal adduction|elbow extension\tshoulder flexion\tshoulder~-40 10|elbow~95 5\t\tsternocostal chest|triceps lateral head|triceps medial head\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head\ttriceps long head~0.28|triceps lateral head~0.41|triceps medial head~0.41\tnone\tnovice\theavy\tdip bars|band\t\t\tdip\tCounted with the horizontal pushes: the muscles are those of a decline press, not of an overhead press.\t',
    'negative dip\teccentric dip|dip lowering|slow-lowering dip\tbodyweight\tdynamic\tsupported\tneutral\t\thorizontal push\thorizontal push\tshoulder horizontal adduction|elbow extension\tshoulder flexion\tshoulder~-40 10|elbow~95 5\t\tsternocostal chest|triceps lateral head|triceps medial head\tclavicular chest|anterior deltoid|coracobrachialis|triceps long head\ttriceps long head~0.28|triceps lateral head~0.41|triceps medial head~0.41\tnone\tintermediate\theavy\tdip bars\t\tassisted dip\tdip\tCounted with the horizontal pushes: the muscles are those of a decline press, not of an overhead press.\t',
    'dip support hold\tsupport hold|top dip hold|parallel bar hold\tbodyweight\tisometric\tsupported\tneutral\t\t\t\tscapular depression\telbow extension\tshoulder~0|elbow~5\t\tlower trapezius\tpectoralis minor|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.2|triceps lateral head~0.01|triceps medial head~0.01\tnone\tnovice\tlight\tdip bars\t\t\tdip\t\t',
    'push press\tbarbell push press\tbarbell\tdynamic\tstanding\toverhand\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation|knee extension\tshoulder~60 165|elbow~120 5|hip~25 0|knee~40 0|ankle~15 0\tvastus lateralis~none~The short dip and drive is far from taxing for the thigh; the arms finish the lift.|vastus medialis~none~The short dip and drive is far from taxing for the thigh; the arms finish the lift.|vastus intermedius~none~The short dip and drive is far from taxing for the thigh; the arms finish the lift.\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tmoderate\tintermediate\theavy\tbarbell|rack\t\toverhead press\t\t\t',
    'seated barbell shoulder press\tseated barbell press|seated military press|seated overhead press|seated barbell overhead press\tbarbell\tdynamic\tseated\toverhand\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.8|triceps lateral head~0.51|triceps medial head~0.51\tmoderate\tnovice\theavy\tbarbell|rack|bench\t\tseated dumbbell shoulder press|machine shoulder press\toverhead press\t\t',
    'behind-the-neck press\tBTN press|press behind the neck|behind-neck press\tbarbell\tdynamic\tstanding\twide\t\tvertical push\tvertical push\tshoulder abduction\tshoulder flexion|elbow extension|scapular upward rotation\telbow~110 5\t\tmiddle deltoid\tupper trapezius|serratus anterior|anterior deltoid|supraspinatus|triceps long head|triceps lateral head|triceps medial head\ttriceps lateral head~0.47|triceps medial head~0.47\tmoderate\tadvanced\theavy\tbarbell|rack\t\toverhead press\t\tAsks for a shoulder that reaches the position freely and without pain.\t',
    'seated floor overhead press\tfloor-seated press|straight-leg seated press\tbarbell\tdynamic\tseated\toverhand\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation|trunk extension\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\terector spinae|multifidus|upper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.8|triceps lateral head~0.51|triceps medial head~0.51\tmoderate\tadvanced\theavy\tbarbell|rack|floor\t\tseated barbell shoulder press\t\t\t',
    'pin overhead press\toverhead pin press|dead-start overhead press|partial overhead press\tbarbell\tdynamic\tstanding\toverhand\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~85 165|elbow~90 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.79|triceps lateral head~0.39|triceps medial head~0.39\tmoderate\tintermediate\theavy\tbarbell|rack\t\toverhead press\t\t\t',
    'paused overhead press\tpause overhead press\tbarbell\tdynamic\tstanding\toverhand\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.8|triceps lateral head~0.51|triceps medial head~0.51\tmoderate\tintermediate\theavy\tbarbell|rack\t\toverhead press\t\t\t',
    'landmine press\tone-arm landmine press|single-arm landmine press|angled bar press|corner press\tbarbell\tdynamic\tstanding\t\t1\tvertical push\tvertical push\tshoulder flexion\telbow extension|scapular upward rotation|scapular protraction\tshoulder~25 130|elbow~120 5\t\tanterior deltoid\tupper trapezius|serratus anterior|clavicular chest|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.75|triceps lateral head~0.51|triceps medial head~0.51\tlow\tnovice\theavy\tlandmine|barbell\t\thalf-kneeling landmine press\tone-arm dumbbell overhead press|overhead press\t\t',
    'half-kneeling landmine press\tkneeling landmine press|half-kneeling angled bar press\tbarbell\tdynamic\tkneeling\t\t1\tvertical push\tvertical push\tshoulder flexion\telbow extension|scapular upward rotation|scapular protraction\tshoulder~25 130|elbow~120 5\t\tanterior deltoid\tupper trapezius|serratus anterior|clavicular chest|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.75|triceps lateral head~0.51|triceps medial head~0.51\tlow\tnovice\theavy\tlandmine|barbell\t\t\tlandmine press\t\t',
    'two-arm landmine press\ttwo-hand landmine press|double-arm landmine press\tbarbell\tdynamic\tstanding\tclose\t\tvertical push\tvertical push\tshoulder flexion\telbow extension|scapular upward rotation|scapular protraction\tshoulder~25 130|elbow~120 5\t\tanterior deltoid\tupper trapezius|serratus anterior|clavicular chest|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.75|triceps lateral head~0.51|triceps medial head~0.51\tlow\tnovice\theavy\tlandmine|barbell\t\t\toverhead press\t\t',
    'one-arm dumbbell overhead press\tsingle-arm dumbbell press|single-arm DB overhead press|one-arm dumbbell press|one-arm DB shoulder press|single-arm dumbbell shoulder press\tdumbbell\tdynamic\tstanding\t\t1\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation|trunk side bend\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\texternal oblique|internal oblique|quadratus lumborum|upper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.8|triceps lateral head~0.51|triceps medial head~0.51\tlow\tintermediate\theavy\tdumbbell\t\tstanding dumbbell shoulder press\t\t\t',
    'half-kneeling overhead press\thalf-kneeling dumbbell press|half-kneeling dumbbell overhead press|half-kneeling kettlebell press\tdumbbell\tdynamic\tkneeling\t\t1\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation|trunk side bend\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\texternal oblique|internal oblique|quadratus lumborum|upper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.8|triceps lateral head~0.51|triceps medial head~0.51\tlow\tintermediate\theavy\tdumbbell\t\thalf-kneeling landmine press\tone-arm dumbbell overhead press\t\t',
    'alternating dumbbell shoulder press\talternating DB shoulder press|alternating dumbbell overhead press\tdumbbell\tdynamic\tstanding\t\t1\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.8|triceps lateral head~0.51|triceps medial head~0.51\tlow\tintermediate\theavy\tdumbbell\t\tstanding dumbbell shoulder press\t\t\t',
    'kettlebell overhead press\tkettlebell press|KB press|one-arm kettlebell press|kettlebell strict press|single-arm kettlebell press\tkettlebell\tdynamic\tstanding\t\t1\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation|trunk side bend\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\texternal oblique|internal oblique|quadratus lumborum|upper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.8|triceps lateral head~0.51|triceps medial head~0.51\tlow\tintermediate\theavy\tkettlebell\t\tone-arm dumbbell overhead press\tbottoms-up kettlebell press|double kettlebell overhead press\t\t',
    'bottoms-up kettlebell press\tbottoms-up press|upside-down kettlebell press\tkettlebell\tdynamic\tstanding\t\t1\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation|grip\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head|finger flexors\ttriceps long head~0.8|triceps lateral head~0.51|triceps medial head~0.51\tlow\tadvanced\tlight\tkettlebell\t1\tkettlebell overhead press\t\t\t',
    'double kettlebell overhead press\tdouble kettlebell press|double KB press|two-kettlebell press\tkettlebell\tdynamic\tstanding\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.8|triceps lateral head~0.51|triceps medial head~0.51\tmoderate\tintermediate\theavy\tkettlebell\t\tkettlebell overhead press\t\t\t',
    'rotating dumbbell shoulder press\trotational dumbbell press|twisting dumbbell press|palms-turning press\tdumbbell\tdynamic\tseated\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.8|triceps lateral head~0.51|triceps medial head~0.51\tlow\tintermediate\theavy\tdumbbell|bench\t\tseated dumbbell shoulder press\t\t\t',
    'neutral-grip dumbbell shoulder press\tneutral-grip shoulder press|hammer-grip shoulder press|palms-in shoulder press|neutral-grip overhead press\tdumbbell\tdynamic\tseated\tneutral\t\tvertical push\tvertical push\tshoulder flexion\tshoulder abduction|elbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid\tupper trapezius|serratus anterior|clavicular chest|middle deltoid|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.8|triceps lateral head~0.51|triceps medial head~0.51\tlow\tnovice\theavy\tdumbbell|bench\t\tmachine shoulder press\t\t\t',
    'dumbbell push press\tDB push press\tdumbbell\tdynamic\tstanding\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation|knee extension\tshoulder~60 165|elbow~120 5|hip~25 0|knee~40 0|ankle~15 0\tvastus lateralis~none~The short dip and drive is far from taxing for the thigh; the arms finish the lift.|vastus medialis~none~The short dip and drive is far from taxing for the thigh; the arms finish the lift.|vastus intermedius~none~The short dip and drive is far from taxing for the thigh; the arms finish the lift.\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.81|triceps lateral head~0.51|triceps medial head~0.51\tmoderate\tintermediate\theavy\tdumbbell\t\tstanding dumbbell shoulder press\tpush press\t\t',
    'guided-bar shoulder press\tguided-bar overhead press|fixed-track shoulder press\tguided bar\tdynamic\tseated\toverhand\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.8|triceps lateral head~0.51|triceps medial head~0.51\tlow\tnovice\theavy\tguided bar|bench\t\tmachine shoulder press\tseated barbell shoulder press\t\t',
    'cable shoulder press\tcable overhead press|standing cable shoulder press\tcable\tdynamic\tstanding\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.8|triceps lateral head~0.51|triceps medial head~0.51\tlow\tnovice\tlight\tcable\t\tmachine shoulder press\t\t\t',
    'band overhead press\tband shoulder press|banded overhead press|resistance band shoulder press\tband\tdynamic\tstanding\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.8|triceps lateral head~0.51|triceps medial head~0.51\tlow\tnovice\tlight\tband\t\t\tstanding dumbbell shoulder press\t\t',
    'sandbag overhead press\tsandbag shoulder press|sandbag press\tsandbag\tdynamic\tstanding\t\t\tvertical push\tvertical push\tshoulder flexion|shoulder abduction\telbow extension|scapular upward rotation\tshoulder~50 165|elbow~120 5\t\tanterior deltoid|middle deltoid\tupper trapezius|serratus anterior|clavicular chest|supraspinatus|coracobrachialis|triceps long head|triceps lateral head|triceps medial head\ttriceps long head~0.8|triceps lateral head~0.51|triceps medial head~0.51\tmoderate\tintermediate\theavy\tsandbag\t\tstanding dumbbell shoulder press\t\t\t',
    'lateral raise\tdumbbell lateral raise|side raise|DB lateral raise|side lateral raise|lat raise|dumbbell side raise|standing lateral raise|side delt raise\tdumbbell\tdynamic\tstanding\tneutral\t\t\t\tshoulder abduction\tscapular upward rotation\telbow~10\t\tmiddle deltoid\tupper trapezius|serratus anterior|anterior deltoid|supraspinatus\t\tnone\tnovice\tlight\tdumbbell\t\tmachine lateral raise\tleaning lateral raise\t\tcampos-2020',
    'front raise\tdumbbell front raise|DB front raise|standing front raise|front delt raise\tdumbbell\tdynamic\tstanding\toverhand\t\t\t\tshoulder flexion\tscapular upward rotation\tshoulder~5 90|elbow~10 10\t\tanterior deltoid\tupper trapezius|serratus anterior|clavicular chest|coracobrachialis\t\tnone\tnovice\tlight\tdumbbell\t\tband front raise\tplate front raise\t\t',
    'cable lateral raise\tone-arm cable lateral raise|single-arm cable lateral raise|cable side raise|low cable lateral raise\tcable\tdynamic\tstanding\tneutral\t1\t\t\tshoulder abduction\tscapular upward rotation\telbow~10\t\tmiddle deltoid\tupper trapezius|serratus anterior|anterior deltoid|supraspinatus\t\tnone\tnovice\tlight\tcable\t\tmachine lateral raise\t\t\tcampos-2020',
    'machine lateral raise\tlateral raise machine|machine side raise\tmachine\tdynamic\tseated\tneutral\t\t\t\tshoulder abduction\tscapular upward rotation\telbow~90\t\tmiddle deltoid\tupper trapezius|serratus anterior|anterior deltoid|supraspinatus\t\tnone\tnovice\tlight\tmachine lateral raise\t\t\tlateral raise\t\tcampos-2020',
    'cable external rotation\texternal rotation|external shoulder rotation|standing external rotation|standing cable external rotation|cable ER\tcable\tdynamic\tstanding\t\t1\t\t\tshoulder external rotation\t\telbow~90\t\tinfraspinatus|teres minor\tposterior deltoid\t\tnone\tnovice\tlight\tcable\t\tband external rotation\texternal rotation at 90 degrees\t\t',
    'band external rotation\tbanded external rotation|resistance band external rotation|band ER|rotator cuff band work\tband\tdynamic\tstanding\t\t1\t\t\tshoulder external rotation\t\telbow~90\t\tinfraspinatus|teres minor\tposterior deltoid\t\tnone\tnovice\tlight\tband\t\tisometric external rotation\tcable external rotation\t\t',
    'side-lying external rotation\tside-lying dumbbell external rotation|lying external rotation|side-lying ER|dumbbell external rotation\tdumbbell\tdynamic\tside-lying\t\t1\t\t\tshoulder external rotation\t\telbow~90\t\tinfraspinatus|teres minor\tposterior deltoid\t\tnone\tnovice\tlight\tdumbbell|floor\t\tisometric external rotation\tseated external rotation on the knee\t\t',
    'cable internal rotation\tinternal rotation|internal shoulder rotation|standing internal rotation|cable IR\tcable\tdynamic\tstanding\t\t1\t\t\tshoulder internal rotation\t\telbow~90\t\tsubscapularis\t\t\tnone\tnovice\tlight\tcable\t\tband internal rotation\tinternal rotation at 90 degrees\t\t',
    'band internal rotation\tbanded internal rotation|resistance band internal rotation|band IR\tband\tdynamic\tstanding\t\t1\t\t\tshoulder internal rotation\t\telbow~90\t\tsubscapularis\t\t\tnone\tnovice\tlight\tband\t\tisometric internal rotation\tcable internal rotation\t\t',
    'upright row\tbarbell upright row|bent-bar upright row|EZ-bar upright row|BB upright row\tbarbell\tdynamic\tstanding\toverhand\t\t\t\tshoulder abduction|scapular elevation\telbow flexion|scapular upward rotation\telbow~10 110\t\tupper trapezius|middle deltoid\tlevator scapulae|serratus anterior|anterior deltoid|supraspinatus|biceps long head|biceps short head|brachialis\tbrachialis~0.62\tlow\tintermediate\theavy\tbarbell\t1\tdumbbell upright row\t\tTurned in and raised the shoulder has little room: stop with the elbows no higher than the shoulders, and leave it out where it hurts.\t',
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
    'stability-ball plank\tSwiss ball plank|exercise ball plank|ball plank\tbodyweight\tisometric\tprone\t\t\t\t\ttrunk flexion\t\thip~0|knee~0|ankle~0|shoulder~90|elbow~90\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tintermediate\tlight\tstability ball\t\tplank\tstability-ball circle plank\t\t',
    'stability-ball circle plank\tstir the pot|ball circles|plank circles on the ball\tbodyweight\tisometric\tprone\t\t\t\t\ttrunk flexion|trunk rotation\t\thip~0|knee~0|ankle~0|shoulder~90|elbow~90\t\trectus abdominis|external oblique|internal oblique\ttransversus abdominis\t\tnone\tadvanced\theavy\tstability ball\t\tstability-ball plank\t\t\t',
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
    'side lean hold\tback-extension-bench side hold|horizontal side hold|side hold on the bench\tbodyweight\tisometric\tside-lying\t\t1\t\t\ttrunk side bend\thip abduction\thip~0|knee~0|ankle~0\t\texternal oblique|internal oblique|quadratus lumborum\tgluteus medius|gluteus minimus|rectus abdominis|erector spinae\t\tnone\tintermediate\theavy\tback extension bench\t\tside plank\tside bend on the back extension bench\t\t',
    'dumbbell side bend\tside bend|DB side bend|standing side bend|weighted side bend\tdumbbell\tdynamic\tstanding\t\t1\t\t\ttrunk side bend\t\t\t\texternal oblique|internal oblique|quadratus lumborum\trectus abdominis|erector spinae\t\tlow\tnovice\tlight\tdumbbell\t\tside plank\tside bend on the back extension bench\t\t',
    'cable side bend\tlow cable side bend\tcable\tdynamic\tstanding\t\t1\t\t\ttrunk side bend\t\t\t\texternal oblique|internal oblique|quadratus lumborum\trectus abdominis|erector spinae\t\tlow\tnovice\tlight\tcable\t\tside plank\t\t\t',
    'side bend on the back extension bench\tlateral back extension|side raise on the bench|oblique raise|45-degree side bend\tbodyweight\tdynamic\tside-lying\t\t1\t\t\ttrunk side bend\t\t\t\texternal oblique|internal oblique|quadratus lumborum\trectus abdominis|erector spinae\t\tnone\tintermediate\theavy\tback extension bench\t\tside lean hold\t\t\t',
    'side crunch\toblique crunch|side-lying crunch|lying side crunch\tbodyweight\tdynamic\tside-lying\t\t1\t\t\ttrunk side bend\t\t\t\texternal oblique|internal oblique|quadratus lumborum\trectus abdominis|erector spinae\t\tnone\tnovice\tlight\tfloor\t\tcrunch\t\t\t',
    'kettlebell windmill\twindmill|KB windmill|overhead windmill\tkettlebell\tdynamic\tstanding\t\t1\t\t\ttrunk side bend|trunk rotation\thip extension|scapular upward rotation\thip~80 0|knee~5 5|ankle~0 0\t\texternal oblique|internal oblique|quadratus lumborum\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus|rectus abdominis|transversus abdominis|erector spinae|upper trapezius|serratus anterior\tbiceps femoris long head~0.7|semitendinosus~0.7|semimembranosus~0.7|gluteus maximus~0.6|adductor magnus~0.3\tlow\tadvanced\tlight\tkettlebell\t\tdumbbell side bend|side plank with rotation\tTurkish get-up\t\t',
    'overhead side bend\twaiter side bend|single-arm overhead side bend|band side bend\tdumbbell\tdynamic\tstanding\t\t1\t\t\ttrunk side bend\tscapular upward rotation\t\t\texternal oblique|internal oblique|quadratus lumborum\trectus abdominis|erector spinae|upper trapezius|serratus anterior\t\tlow\tintermediate\tlight\tdumbbell\t\tdumbbell side bend\t\t\t',
    'curl-up\tone-knee curl-up|partial curl-up|curl-up with hands under the back\tbodyweight\tisometric\tlying\t\t\t\t\ttrunk flexion\t\t\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tnovice\tlight\tfloor\t\t\tcrunch|dead bug\t\t',
    'weighted crunch\tplate crunch|dumbbell crunch|loaded crunch\tplate\tdynamic\tlying\t\t\t\t\ttrunk flexion\t\t\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tnovice\theavy\tplate|floor\t\tcrunch\tcable crunch\t\t',
    'machine crunch\tab machine|ab crunch machine|abdominal machine|seated crunch machine|trunk flexion machine\tmachine\tdynamic\tseated\t\t\t\t\ttrunk flexion\t\t\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tnovice\theavy\tmachine crunch\t\t\tcable crunch\t\t',
    'standing cable crunch\tstanding rope crunch\tcable\tdynamic\tstanding\t\t\t\t\ttrunk flexion\t\t\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tnovice\tlight\tcable\t\tcable crunch\t\t\t',
    'stability-ball crunch\tSwiss ball crunch|exercise ball crunch|ball crunch\tbodyweight\tdynamic\tlying\t\t\t\t\ttrunk flexion\t\t\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tnovice\tlight\tstability ball\t\tcrunch\tweighted stability-ball crunch\t\t',
    'weighted stability-ball crunch\tweighted ball crunch|weighted Swiss ball crunch\tplate\tdynamic\tlying\t\t\t\t\ttrunk flexion\t\t\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tintermediate\theavy\tstability ball|plate\t\tstability-ball crunch\t\t\t',
    'long-arm crunch\tstraight-arm crunch|long-lever crunch|arms-overhead crunch\tbodyweight\tdynamic\tlying\t\t\t\t\ttrunk flexion\t\t\t\trectus abdominis\texternal oblique|internal oblique\t\tnone\tnovice\tlight\tfloor\t\tcrunch\t\t\t',
    'bicycle crunch\tbicycle|elbow to knee crunch|alternating elbow-to-knee crunch|cross-body crunch|twisting crunch\tbodyweight\tdynamic\tlying\t\t1\t\t\ttrunk flexion|trunk rotation\thip flexion\thip~20 100|knee~10 110|ankle~0 0\t\trectus abdominis|external oblique|internal oblique\tiliacus|psoas major|transversus abdominis\tiliacus~0.42|psoas major~0.42\tnone\tnovice\tlight\tfloor\t\tcrunch\t\t\t',
    'heel touch crunch\theel touch|alternating heel touch|side-to-side crunch|penguin crunch\tbodyweight\tdynamic\tlying\t\t1\t\t\ttrunk flexion|trunk side bend\t\t\t\trectus abdominis|external oblique|internal oblique|quadratus lumborum\terector spinae\t\tnone\tnovice\tlight\tfloor\t\tcurl-up\t\t\t',
    'reverse crunch\treverse curl-up|pelvic curl|lying hip raise|floor reverse crunch\tbodyweight\tdynamic\tlying\t\t\t\t\ttrunk flexion\thip flexion\thip~90 115|knee~90 90|ankle~0 0\t\trectus abdominis\tiliacus|psoas major|external oblique|internal oblique\tiliacus~0.05|psoas major~0.05\tnone\tnovice\tlight\tfloor\t\tdead bug\tincline reverse crunch|hanging knee raise\t\t',
    'incline reverse crunch\tdecline-bench reverse crunch|slant-board reverse crunch\tbodyweight\tdynamic\tincline\t\t\t\t\ttrunk flexion\thip flexion\thip~90 115|knee~90 90|ankle~0 0\t\trectus abdominis\tiliacus|psoas major|external oblique|internal oblique\tiliacus~0.05|psoas major~0.05\tnone\tintermediate\theavy\tbench\t\treverse crunch\thanging leg raise\t\t',
    'cable reverse crunch\tlow cable reverse crunch|weighted reverse crunch\tcable\tdynamic\tlying\t\t\t\t\ttrunk flexion\thip flexion\thip~90 115|knee~90 90|ankle~0 0\t\trectus abdominis\tiliacus|psoas major|external oblique|internal oblique\tiliacus~0.05|psoas major~0.05\tnone\tnovice\theavy\tcable|floor\t\treverse crunch\t\t\t',
    'decline sit-up\tdecline bench sit-up|slant-board sit-up|decline crunch\tbodyweight\tdynamic\tincline\t\t\t\t\ttrunk flexion|hip flexion\t\thip~50 105|knee~90 90|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.49|sartorius~0.3|tensor fasciae latae~0.41|iliacus~0.27|psoas major~0.27\tnone\tintermediate\theavy\tbench\t\tsit-up\tweighted decline sit-up\t\t',
    'weighted sit-up\tloaded sit-up|plate sit-up|sit-up with weight\tplate\tdynamic\tlying\t\t\t\t\ttrunk flexion|hip flexion\t\thip~50 105|knee~90 90|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.49|sartorius~0.3|tensor fasciae latae~0.41|iliacus~0.27|psoas major~0.27\tnone\tintermediate\theavy\tplate|floor\t\tsit-up\tweighted decline sit-up\t\t',
    'weighted decline sit-up\tloaded decline sit-up|decline sit-up with plate\tplate\tdynamic\tincline\t\t\t\t\ttrunk flexion|hip flexion\t\thip~50 105|knee~90 90|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.49|sartorius~0.3|tensor fasciae latae~0.41|iliacus~0.27|psoas major~0.27\tnone\tadvanced\theavy\tbench|plate\t\tdecline sit-up\t\t\t',
    'sit-up with rotation\ttwisting sit-up|sit-up with twist|oblique sit-up\tbodyweight\tdynamic\tlying\t\t1\t\t\ttrunk flexion|hip flexion|trunk rotation\t\thip~50 105|knee~90 90|ankle~0 0\t\tiliacus|psoas major|rectus abdominis|external oblique|internal oblique\trectus femoris|sartorius|tensor fasciae latae|transversus abdominis\trectus femoris~0.49|sartorius~0.3|tensor fasciae latae~0.41|iliacus~0.27|psoas major~0.27\tnone\tnovice\tlight\tfloor\t\tsit-up\t\t\t',
    'glute-ham bench sit-up\thyperextension bench sit-up|horizontal bench sit-up|GHD sit-up\tbodyweight\tdynamic\tsupported\t\t\t\t\ttrunk flexion|hip flexion\t\thip~-20 85|knee~25 10|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.42|sartorius~0.78|tensor fasciae latae~0.7|iliacus~0.64|psoas major~0.64\tnone\tadvanced\theavy\tglute-ham bench\t\tsit-up\t\tThe range behind the hips is long and the first days make very sore: begin with few.\t',
    'butterfly sit-up\tsoles-together sit-up\tbodyweight\tdynamic\tlying\t\t\t\t\ttrunk flexion|hip flexion\t\thip~45 95|knee~100 100|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.56|sartorius~0.3|tensor fasciae latae~0.48|iliacus~0.34|psoas major~0.34\tnone\tnovice\tlight\tfloor\t\tcrunch\t\t\t',
    'V-up\tjackknife|V sit-up|jackknife sit-up|pike-up on the floor\tbodyweight\tdynamic\tlying\t\t\t\t\ttrunk flexion|hip flexion\t\thip~0 95|knee~0 0|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.27|sartorius~0.74|tensor fasciae latae~0.58|iliacus~0.52|psoas major~0.52\tnone\tintermediate\theavy\tfloor\t\ttuck-up\thanging leg raise\t\t',
    'tuck-up\tknee tuck sit-up|tuck crunch|seated knee tuck|in-and-out\tbodyweight\tdynamic\tlying\t\t\t\t\ttrunk flexion|hip flexion\t\thip~10 110|knee~10 110|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\tsartorius|tensor fasciae latae|external oblique|internal oblique\tsartorius~0.5|tensor fasciae latae~0.53|iliacus~0.42|psoas major~0.42\tnone\tnovice\tlight\tfloor\t\tcrunch\tV-up\t\t',
    'Turkish sit-up\tget-up sit-up|kettlebell sit-up|straight-arm sit-up\tkettlebell\tdynamic\tlying\t\t1\t\t\ttrunk flexion|hip flexion\tscapular upward rotation\thip~0 85|knee~10 10|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique|upper trapezius|serratus anterior\trectus femoris~0.34|sartorius~0.75|tensor fasciae latae~0.64|iliacus~0.57|psoas major~0.57\tnone\tintermediate\tlight\tkettlebell|floor\t\tsit-up\tTurkish get-up\t\t',
    'hollow hold\thollow body hold|hollow body|dish hold|hollow position\tbodyweight\tisometric\tlying\t\t\t\t\ttrunk flexion\thip flexion\thip~25|knee~0|ankle~0\t\trectus abdominis\tiliacus|psoas major|external oblique|internal oblique\tiliacus~0.72|psoas major~0.72\tnone\tintermediate\tlight\tfloor\t\tdead bug\thollow rock|V-up\t\t',
    'hollow rock\thollow body rock\tbodyweight\tisometric\tlying\t\t\t\t\ttrunk flexion\thip flexion\thip~25|knee~0|ankle~0\t\trectus abdominis\tiliacus|psoas major|external oblique|internal oblique\tiliacus~0.72|psoas major~0.72\tnone\tintermediate\tlight\tfloor\t\thollow hold\t\t\t',
    'dead bug heel tap\tlying heel tap|supine toe tap|toe tap|bent-knee dead bug|supine march\tbodyweight\tisometric\tlying\t\t\t\t\ttrunk flexion\thip flexion\thip~90|knee~90|ankle~0\t\trectus abdominis\tiliacus|psoas major|external oblique|internal oblique\tiliacus~0.16|psoas major~0.16\tnone\tnovice\tlight\tfloor\t\t\tdead bug\t\t',
    'band dead bug\tbanded dead bug|dead bug with pullover|dead bug with band\tband\tisometric\tlying\t\t\t\t\ttrunk flexion\thip flexion|shoulder extension\thip~90|knee~90|ankle~0\t\trectus abdominis\tiliacus|psoas major|external oblique|internal oblique|latissimus dorsi|teres major\tiliacus~0.16|psoas major~0.16\tnone\tintermediate\tlight\tband|floor\t\tdead bug\t\t\t',
    'weighted dead bug\tloaded dead bug|dumbbell dead bug|kettlebell dead bug\tdumbbell\tisometric\tlying\t\t\t\t\ttrunk flexion\thip flexion\thip~90|knee~90|ankle~0\t\trectus abdominis\tiliacus|psoas major|external oblique|internal oblique\tiliacus~0.16|psoas major~0.16\tnone\tintermediate\tlight\tdumbbell|floor\t\tdead bug\t\t\t',
    'stability-ball dead bug\tball dead bug|Swiss ball dead bug|dead bug ball squeeze\tbodyweight\tisometric\tlying\t\t\t\t\ttrunk flexion\thip flexion\thip~90|knee~90|ankle~0\t\trectus abdominis\tiliacus|psoas major|external oblique|internal oblique\tiliacus~0.16|psoas major~0.16\tnone\tnovice\tlight\tstability ball|floor\t\tdead bug heel tap\tdead bug\t\t',
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
    'toes to bar\tT2B|TTB|strict toes to bar\tbodyweight\tdynamic\thanging\toverhand\t\t\t\thip flexion|trunk flexion\t\thip~-10 115|knee~0 0|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.25|sartorius~0.71|tensor fasciae latae~0.52|iliacus~0.48|psoas major~0.48\tnone\tadvanced\theavy\tpull-up bar\t1\thanging leg raise\t\tThe last part, where the pelvis curls up, is what loads the abdominals; without it the hip flexors do the work.\t',
    'hanging oblique raise\thanging oblique knee raise|hanging twisting knee raise|side-to-side knee raise|hanging side knee raise\tbodyweight\tdynamic\thanging\toverhand\t1\t\t\thip flexion|trunk flexion|trunk rotation\t\thip~0 105|knee~0 110|ankle~0 0\t\tiliacus|psoas major|rectus abdominis|external oblique|internal oblique\tsartorius|tensor fasciae latae|transversus abdominis\tsartorius~0.56|tensor fasciae latae~0.58|iliacus~0.48|psoas major~0.48\tnone\tintermediate\theavy\tpull-up bar\t1\thanging knee raise\thanging windshield wiper\tThe last part, where the pelvis curls up, is what loads the abdominals; without it the hip flexors do the work.\t',
    'hanging windshield wiper\twindshield wipers|hanging wiper|windscreen wiper\tbodyweight\tdynamic\thanging\toverhand\t1\trotation\trotation\ttrunk rotation|trunk flexion\thip flexion|shoulder extension\thip~90|knee~0|ankle~0\t\trectus abdominis|external oblique|internal oblique\ttransversus abdominis|latissimus dorsi|teres major\t\tnone\tadvanced\theavy\tpull-up bar\t1\tlying windshield wiper|hanging leg raise\t\t\t',
    'weighted hanging knee raise\thanging knee raise with weight|loaded hanging knee raise|hanging knee raise with dumbbell\tdumbbell\tdynamic\thanging\toverhand\t\t\t\thip flexion|trunk flexion\t\thip~0 110|knee~0 110|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\tsartorius|tensor fasciae latae|external oblique|internal oblique\tsartorius~0.54|tensor fasciae latae~0.56|iliacus~0.46|psoas major~0.46\tnone\tadvanced\theavy\tpull-up bar|dumbbell\t1\thanging knee raise\t\tThe last part, where the pelvis curls up, is what loads the abdominals; without it the hip flexors do the work.\t',
    'hanging tuck hold\thanging knee hold|hanging L-hold|isometric hanging knee raise\tbodyweight\tisometric\thanging\toverhand\t\t\t\thip flexion|trunk flexion\t\thip~95|knee~100|ankle~0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.44|sartorius~0.15|tensor fasciae latae~0.24|iliacus~0.12|psoas major~0.12\tnone\tintermediate\theavy\tpull-up bar\t1\tdead hang\thanging knee raise\t\t',
    'standing ab wheel rollout\tstanding rollout|full ab wheel rollout|standing wheel rollout\tab wheel\tdynamic\tstanding\t\t\t\t\ttrunk flexion\tshoulder extension\thip~0 90|knee~5 5|ankle~0 0|shoulder~170 90|elbow~5 5\t\trectus abdominis\texternal oblique|internal oblique|latissimus dorsi|teres major\t\tnone\tadvanced\theavy\tab wheel\t\tab wheel rollout\t\t\t',
    'ab wheel rollout to a wall\tshort-range ab wheel rollout|wall-stopped rollout|partial rollout\tab wheel\tdynamic\tkneeling\t\t\t\t\ttrunk flexion\tshoulder extension\thip~15 60|knee~90 90|ankle~0 0|shoulder~135 80|elbow~5 5\t\trectus abdominis\texternal oblique|internal oblique|latissimus dorsi|teres major\t\tnone\tnovice\theavy\tab wheel|wall\t\tplank\tab wheel rollout\t\t',
    'barbell rollout\tkneeling barbell rollout|barbell ab rollout\tbarbell\tdynamic\tkneeling\t\t\t\t\ttrunk flexion\tshoulder extension\thip~0 50|knee~90 90|ankle~0 0|shoulder~165 80|elbow~5 5\t\trectus abdominis\texternal oblique|internal oblique|latissimus dorsi|teres major\t\tnone\tintermediate\theavy\tbarbell\t\tstability-ball rollout\tstanding ab wheel rollout\t\t',
    'stability-ball rollout\tball rollout|Swiss ball rollout|exercise ball rollout\tbodyweight\tdynamic\tkneeling\t\t\t\t\ttrunk flexion\tshoulder extension\thip~0 45|knee~90 90|ankle~0 0|shoulder~140 70|elbow~60 60\t\trectus abdominis\texternal oblique|internal oblique|latissimus dorsi|teres major\t\tnone\tnovice\tlight\tstability ball\t\tplank\tab wheel rollout\t\t',
    'slider rollout\tsliding rollout|slider body reach|kneeling slider rollout\tsliders\tdynamic\tkneeling\t\t\t\t\ttrunk flexion\tshoulder extension\thip~0 50|knee~90 90|ankle~0 0|shoulder~165 80|elbow~5 5\t\trectus abdominis\texternal oblique|internal oblique|latissimus dorsi|teres major\t\tnone\tintermediate\theavy\tsliders|floor\t\tstability-ball rollout\t\t\t',
    'suspension fallout\tsuspension rollout|fallout|standing fallout|ring rollout|ring fallout\tsuspension\tdynamic\tstanding\t\t\t\t\ttrunk flexion\tshoulder extension\thip~0 0|knee~0 0|ankle~0 0|shoulder~160 80|elbow~5 5\t\trectus abdominis\texternal oblique|internal oblique|latissimus dorsi|teres major\t\tnone\tintermediate\theavy\tsuspension\t\tlong-lever plank\tab wheel rollout\t\t',
    'stability-ball knee tuck\tball knee tuck|Swiss ball jackknife|stability-ball jackknife|ball tuck\tbodyweight\tdynamic\tprone\t\t\t\t\ttrunk flexion|hip flexion\t\thip~0 100|knee~0 100|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\tsartorius|tensor fasciae latae|external oblique|internal oblique\tsartorius~0.59|tensor fasciae latae~0.6|iliacus~0.5|psoas major~0.5\tnone\tintermediate\tlight\tstability ball\t\tstability-ball plank\tstability-ball pike\t\t',
    'stability-ball pike\tball pike|Swiss ball pike\tbodyweight\tdynamic\tprone\t\t\t\t\ttrunk flexion|hip flexion\t\thip~0 90|knee~0 0|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.29|sartorius~0.76|tensor fasciae latae~0.61|iliacus~0.55|psoas major~0.55\tnone\tadvanced\theavy\tstability ball\t\tstability-ball knee tuck\t\t\t',
    'suspension knee tuck\tsuspended knee tuck|suspension tuck|sling knee tuck\tsuspension\tdynamic\tprone\t\t\t\t\ttrunk flexion|hip flexion\t\thip~0 100|knee~0 100|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\tsartorius|tensor fasciae latae|external oblique|internal oblique\tsartorius~0.59|tensor fasciae latae~0.6|iliacus~0.5|psoas major~0.5\tnone\tintermediate\tlight\tsuspension\t\tsuspension plank\tsuspension pike\t\t',
    'suspension pike\tsuspended pike|sling pike\tsuspension\tdynamic\tprone\t\t\t\t\ttrunk flexion|hip flexion\t\thip~0 90|knee~0 0|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.29|sartorius~0.76|tensor fasciae latae~0.61|iliacus~0.55|psoas major~0.55\tnone\tadvanced\theavy\tsuspension\t\tsuspension knee tuck\t\t\t',
    'slider pike\tsliding pike|slider pike-up\tsliders\tdynamic\tprone\t\t\t\t\ttrunk flexion|hip flexion\t\thip~0 90|knee~0 0|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\trectus femoris|sartorius|tensor fasciae latae|external oblique|internal oblique\trectus femoris~0.29|sartorius~0.76|tensor fasciae latae~0.61|iliacus~0.55|psoas major~0.55\tnone\tintermediate\tlight\tsliders|floor\t\tslider knee tuck\t\t\t',
    'slider knee tuck\tsliding knee tuck|slider mountain climber\tsliders\tdynamic\tprone\t\t\t\t\ttrunk flexion|hip flexion\t\thip~0 100|knee~0 100|ankle~0 0\t\tiliacus|psoas major|rectus abdominis\tsartorius|tensor fasciae latae|external oblique|internal oblique\tsartorius~0.59|tensor fasciae latae~0.6|iliacus~0.5|psoas major~0.5\tnone\tintermediate\tlight\tsliders|floor\t\thigh plank\tslider pike\t\t',
    'mountain climber\trunning plank|plank knee drive\tbodyweight\tdynamic\tprone\t\t1\t\t\thip flexion\ttrunk flexion\thip~10 100|knee~10 100|ankle~0 0\t\tiliacus|psoas major\tsartorius|tensor fasciae latae|rectus abdominis\tsartorius~0.55|tensor fasciae latae~0.57|iliacus~0.46|psoas major~0.46\tnone\tnovice\tlight\tfloor\t\thigh plank\tslider knee tuck\t\t',
    'cross-body mountain climber\ttwisting mountain climber\tbodyweight\tdynamic\tprone\t\t1\t\t\thip flexion|trunk rotation\ttrunk flexion\thip~10 100|knee~10 100|ankle~0 0\t\tiliacus|psoas major|external oblique|internal oblique\tsartorius|tensor fasciae latae|rectus abdominis|transversus abdominis\tsartorius~0.55|tensor fasciae latae~0.57|iliacus~0.46|psoas major~0.46\tnone\tnovice\tlight\tfloor\t\tmountain climber\t\t\t',
    'low-to-high cable chop\treverse woodchop|low-to-high woodchop|cable lift|low-to-high chop|reverse chop\tcable\tdynamic\tstanding\t\t1\trotation\trotation\ttrunk rotation\ttrunk extension|shoulder flexion\t\t\texternal oblique|internal oblique\ttransversus abdominis|erector spinae|multifidus|anterior deltoid\t\tnone\tnovice\tlight\tcable\t\tband rotation\thalf-kneeling lift\t\t',
    'cable rotation\tstanding cable rotation|horizontal woodchop|cable twist|horizontal cable chop|trunk rotation|standing trunk rotation\tcable\tdynamic\tstanding\t\t1\trotation\trotation\ttrunk rotation\t\t\t\texternal oblique|internal oblique\ttransversus abdominis\t\tnone\tnovice\tlight\tcable\t\tband rotation\t\t\t',
    'half-kneeling chop\thalf-kneeling cable chop|kneeling chop|tall-kneeling chop|half-kneeling woodchop\tcable\tdynamic\tkneeling\t\t1\trotation\trotation\ttrunk rotation\ttrunk flexion\t\t\texternal oblique|internal oblique\trectus abdominis|transversus abdominis\t\tnone\tnovice\tlight\tcable\t\tcable woodchop\t\t\t',
    'half-kneeling lift\thalf-kneeling cable lift|kneeling lift|tall-kneeling lift\tcable\tdynamic\tkneeling\t\t1\trotation\trotation\ttrunk rotation\ttrunk extension|shoulder flexion\t\t\texternal oblique|internal oblique\ttransversus abdominis|erector spinae|multifidus|anterior deltoid\t\tnone\tnovice\tlight\tcable\t\tlow-to-high cable chop\t\t\t',
    'band rotation\tband woodchop|banded rotation|band twist|band chop|resistance band woodchop\tband\tdynamic\tstanding\t\t1\trotation\trotation\ttrunk rotation\t\t\t\texternal oblique|internal oblique\ttransversus abdominis\t\tnone\tnovice\tlight\tband\t\t\tcable rotation\t\t',
    'landmine rotation\tlandmine twist|landmine 180|angled bar rotation|barbell rotation in the corner|full-contact twist\tbarbell\tdynamic\tstanding\t\t1\trotation\trotation\ttrunk rotation\tshoulder flexion\t\t\texternal oblique|internal oblique\ttransversus abdominis|anterior deltoid\t\tnone\tintermediate\theavy\tlandmine|barbell\t\tcable rotation\t\t\t',
    'machine trunk rotation\trotary torso|torso rotation machine|rotation machine|twist machine\tmachine\tdynamic\tseated\t\t1\trotation\trotation\ttrunk rotation\t\t\t\texternal oblique|internal oblique\ttransversus abdominis\t\tnone\tnovice\theavy\tmachine trunk rotation\t\t\tcable rotation\t\t',
    'dumbbell woodchop\tmedicine ball woodchop|plate woodchop|free-weight woodchop|dumbbell chop\tdumbbell\tdynamic\tstanding\t\t1\trotation\trotation\ttrunk rotation\ttrunk flexion|shoulder flexion\t\t\texternal oblique|internal oblique\trectus abdominis|transversus abdominis|anterior deltoid\t\tnone\tnovice\tlight\tdumbbell\t\tband rotation\tcable woodchop\t\t',
    'lying windshield wiper\tfloor windshield wiper|lying leg rotation|supine trunk rotation|lying wipers\tbodyweight\tdynamic\tlying\t\t1\trotation\trotation\ttrunk rotation\thip flexion|trunk flexion\thip~85|knee~10|ankle~0\t\texternal oblique|internal oblique\trectus abdominis|transversus abdominis\t\tnone\tintermediate\tlight\tfloor\t\tbent-knee trunk rotation\thanging windshield wiper\t\t',
    'bent-knee trunk rotation\tbent-knee windshield wiper|lower trunk rotation|knee drop|supine knee rotation\tbodyweight\tdynamic\tlying\t\t1\trotation\trotation\ttrunk rotation\t\thip~90|knee~90|ankle~0\t\texternal oblique|internal oblique\ttransversus abdominis\t\tnone\tnovice\tlight\tfloor\t\t\tlying windshield wiper\t\t',
    'stability-ball Russian twist\tball Russian twist|bridged trunk rotation|Swiss ball rotation\tplate\tdynamic\tsupported\t\t1\trotation\trotation\ttrunk rotation\t\t\t\texternal oblique|internal oblique\ttransversus abdominis\t\tnone\tintermediate\tlight\tstability ball|plate\t\tRussian twist\t\t\t',
    'band anti-rotation press\tband press-out|banded anti-rotation press|band anti-rotation hold\tband\tisometric\tstanding\t\t1\trotation\trotation\ttrunk rotation\t\t\t\texternal oblique|internal oblique\ttransversus abdominis\t\tnone\tnovice\tlight\tband\t\t\tanti-rotation press\t\t',
    'half-kneeling anti-rotation press\thalf-kneeling press-out|kneeling anti-rotation press|tall-kneeling anti-rotation press|half-kneeling cable press-out\tcable\tisometric\tkneeling\t\t1\trotation\trotation\ttrunk rotation\t\t\t\texternal oblique|internal oblique\ttransversus abdominis\t\tnone\tnovice\tlight\tcable\t\tband anti-rotation press\t\t\t',
    'split-stance anti-rotation press\tsplit-stance press-out|split-squat anti-rotation press\tcable\tisometric\tsplit\t\t1\trotation\trotation\ttrunk rotation\t\t\t\texternal oblique|internal oblique\ttransversus abdominis\t\tnone\tnovice\tlight\tcable\t\tanti-rotation press\t\t\t',
    'anti-rotation press overhead\toverhead press-out|anti-rotation press and lift|overhead anti-rotation press\tcable\tisometric\tstanding\t\t1\trotation\trotation\ttrunk rotation\ttrunk side bend|shoulder flexion\t\t\texternal oblique|internal oblique\ttransversus abdominis|quadratus lumborum|anterior deltoid\t\tnone\tintermediate\tlight\tcable\t\tanti-rotation press\t\t\t',
    'anti-rotation walk-out\tanti-rotation side step|press-out walk|cable walk-out|anti-rotation walk\tband\tisometric\tstanding\t\t1\trotation\trotation\ttrunk rotation\t\t\t\texternal oblique|internal oblique\ttransversus abdominis\t\tnone\tnovice\tlight\tband\t\tband anti-rotation press\t\t\t',
    'one-arm plank\tsingle-arm plank|one-arm plank hold\tbodyweight\tisometric\tprone\t\t1\trotation\trotation\ttrunk rotation|trunk flexion\t\thip~0|knee~0|ankle~0|shoulder~85|elbow~5\t\trectus abdominis|external oblique|internal oblique\ttransversus abdominis\t\tnone\tintermediate\tlight\tfloor\t\tplank shoulder tap\t\t\t',
    'prone back extension hold\tprone hold|prone extension hold|prone lift hold|prone arch hold|arch hold\tbodyweight\tisometric\tprone\t\t\t\t\ttrunk extension\t\thip~0|knee~0|ankle~0\t\terector spinae|multifidus\t\t\tnone\tnovice\tlight\tfloor\t\tbird dog\tback extension hold\t\t',
    'prone alternating arm and leg raise\tswimmer|prone swimmer|prone alternating raise|opposite arm and leg raise\tbodyweight\tdynamic\tprone\t\t1\t\t\ttrunk extension\tshoulder flexion\t\t\terector spinae|multifidus\tanterior deltoid\t\tnone\tnovice\tlight\tfloor\t\tbird dog\tprone back extension\t\t',
    'prone cobra hold\tprone cobra|cobra hold|prone shoulder-blade squeeze hold\tbodyweight\tisometric\tprone\t\t\t\t\ttrunk extension|scapular retraction\tshoulder external rotation\thip~0|knee~0|ankle~0\t\terector spinae|multifidus|middle trapezius|rhomboids\tlower trapezius|infraspinatus|teres minor\t\tnone\tnovice\tlight\tfloor\t\tprone back extension\t\t\t',
    'machine back extension\tback extension machine|lower back machine|seated back extension|lumbar extension machine|seated machine back extension\tmachine\tdynamic\tseated\t\t\t\t\ttrunk extension\thip extension\thip~100 60|knee~80 80|ankle~0 0\t\terector spinae|multifidus\tgluteus maximus|adductor magnus\tgluteus maximus~0.89|adductor magnus~0.69\tnone\tnovice\theavy\tmachine back extension\t\tprone back extension\tback extension\t\t',
    'stability-ball back extension\tball back extension|Swiss ball back extension\tbodyweight\tdynamic\tprone\t\t\t\t\ttrunk extension\thip extension\thip~45 0|knee~10 10|ankle~0 0\t\terector spinae|multifidus\tbiceps femoris long head|semitendinosus|semimembranosus|gluteus maximus|adductor magnus\tbiceps femoris long head~0.6|semitendinosus~0.6|semimembranosus~0.6|gluteus maximus~0.45|adductor magnus~0.14\tnone\tnovice\tlight\tstability ball\t\tprone back extension\tback extension\t\t',
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
    'ezbarskullcrusher\t6\n'
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
    'ezbarpreachercurl\t8\n'
    'preacherbenchcurl\t8\n'
    'cablecurl\t9\n'
    'standingcablecurl\t9\n'
    'lowcablecurl\t9\n'
    'cablebicepcurl\t9\n'
    'barcablecurl\t9\n'
    'bentbarcurl\t10\n'
    'ezbarcurl\t10\n'
    'ezcurl\t10\n'
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
    '21s\t27\n'
    'twentyone\t27\n'
    'curl21s\t27\n'
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
    'ezbaroverheadextension\t59\n'
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
    'fatgriphold\t82\n'
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
    'fatgripcarry\t108\n'
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
    'splitsquatjump\t174\n'
    'jumplunge\t174\n'
    'lungejump\t174\n'
    'jumpinglunge\t174\n'
    'splitjump\t174\n'
    'scissorjump\t174\n'
    'alternatingsplitsquatjump\t174\n'
    'cycledsplitsquatjump\t174\n'
    'splitlungejump\t174\n'
    'singleleghop\t175\n'
    'hop\t175\n'
    'oneleghop\t175\n'
    'forwardhop\t175\n'
    'singlelegforwardhop\t175\n'
    'singlelegbroadjump\t175\n'
    'hopfordistance\t175\n'
    'singlelegjump\t175\n'
    'singlelegverticaljump\t175\n'
    'hopandstick\t176\n'
    'singleleghopandstick\t176\n'
    'hopandhold\t176\n'
    'singleleghopandhold\t176\n'
    'multidirectionalhopandstick\t176\n'
    'triplehop\t177\n'
    'singlelegtriplehop\t177\n'
    'repeatedhop\t177\n'
    'repeatedsingleleghop\t177\n'
    'continuouhop\t177\n'
    'speedhop\t177\n'
    'crossoverhop\t177\n'
    'singlelegboxjump\t178\n'
    'onelegboxjump\t178\n'
    'singlelegjumptobox\t178\n'
    'singleleghoptobox\t178\n'
    'singlelegpogo\t179\n'
    'singlelegpogojump\t179\n'
    'singlelegpogohop\t179\n'
    'singleleganklehop\t179\n'
    'onelegpogo\t179\n'
    'lateralbound\t180\n'
    'skaterjump\t180\n'
    'skaterhop\t180\n'
    'skaterbound\t180\n'
    'sidebound\t180\n'
    'lateralboundandstick\t180\n'
    'speedskaterjump\t180\n'
    'bounding\t181\n'
    'bound\t181\n'
    'alternatelegbound\t181\n'
    'alternatingbound\t181\n'
    'powerbound\t181\n'
    'horizontalbound\t181\n'
    'runningbound\t181\n'
    'powerskip\t182\n'
    'skipforheight\t182\n'
    'skippingforheight\t182\n'
    'skipfordistance\t182\n'
    'askip\t182\n'
    'explosivestepup\t183\n'
    'stepupjump\t183\n'
    'jumpingstepup\t183\n'
    'alternatingpushoff\t183\n'
    'boxpushoff\t183\n'
    'plyometricstepup\t183\n'
    'alternatingstepupjump\t183\n'
    'droplanding\t184\n'
    'depthdrop\t184\n'
    'altitudelanding\t184\n'
    'altitudedrop\t184\n'
    'dropandstick\t184\n'
    'boxdroplanding\t184\n'
    'landingfrombox\t184\n'
    'dropsquatlanding\t184\n'
    'singleleglanding\t185\n'
    'singlelegdroplanding\t185\n'
    'singlelegdropandstick\t185\n'
    'singlelegdepthdrop\t185\n'
    'singlelegaltitudelanding\t185\n'
    'snapdown\t186\n'
    'dropsquat\t186\n'
    'rapidsquatdrop\t186\n'
    'landingdrill\t186\n'
    'snapdowntolanding\t186\n'
    'sledpush\t187\n'
    'heavysledpush\t187\n'
    'pushsled\t187\n'
    'weightedsledpush\t187\n'
    'sleddrive\t187\n'
    'sledmarch\t187\n'
    'sleddrag\t188\n'
    'forwardsleddrag\t188\n'
    'sledpullforward\t188\n'
    'sledpull\t188\n'
    'harnesssleddrag\t188\n'
    'sledtow\t188\n'
    'sledwalk\t188\n'
    'forwardsledpull\t188\n'
    'backwardsleddrag\t189\n'
    'reversesleddrag\t189\n'
    'backwardsledpull\t189\n'
    'backwardsledwalk\t189\n'
    'reversesledpull\t189\n'
    'backwardsled\t189\n'
    'reversesledwalk\t189\n'
    'lateralsleddrag\t190\n'
    'sidesleddrag\t190\n'
    'lateralsledpull\t190\n'
    'sidewaysleddrag\t190\n'
    'crossoversleddrag\t190\n'
    'lateralsledwalk\t190\n'
    'sledsprint\t191\n'
    'lightsledpush\t191\n'
    'sledpushsprint\t191\n'
    'sprintsledpush\t191\n'
    'sledpushforspeed\t191\n'
    'fastsledpush\t191\n'
    'resistedsprint\t192\n'
    'sledtowingsprint\t192\n'
    'sledsprinttow\t192\n'
    'towedsprint\t192\n'
    'resistedsprinting\t192\n'
    'sledpullsprint\t192\n'
    'sledresistedsprint\t192\n'
    'sledtowsprint\t192\n'
    'bearcrawlsleddrag\t193\n'
    'bearcrawlsledpull\t193\n'
    'sledbearcrawl\t193\n'
    'quadrupedsleddrag\t193\n'
    'sledhipextensionwalk\t194\n'
    'longstridesleddrag\t194\n'
    'sledpowerwalk\t194\n'
    'sledlungewalk\t194\n'
    'straightlegsleddrag\t194\n'
    'strapbetweenlegsledwalk\t194\n'
    'sprint\t195\n'
    'flatsprint\t195\n'
    'sprinting\t195\n'
    'acceleration\t195\n'
    'accelerationsprint\t195\n'
    'flyingsprint\t195\n'
    'buildupsprint\t195\n'
    'hillsprint\t196\n'
    'uphillsprint\t196\n'
    'inclinesprint\t196\n'
    'hillrun\t196\n'
    'uphillrun\t196\n'
    'stairrun\t197\n'
    'stairsprint\t197\n'
    'stairrunning\t197\n'
    'stadiumrun\t197\n'
    'stairbounding\t197\n'
    'stepsprint\t197\n'
    'yokecarry\t198\n'
    'yokewalk\t198\n'
    'superyoke\t198\n'
    'yoke\t198\n'
    'barbellbackcarry\t198\n'
    'frameyokecarry\t198\n'
    'sandbagcarry\t199\n'
    'sandbagbearhugcarry\t199\n'
    'bearhugcarry\t199\n'
    'sandbagwalk\t199\n'
    'sandbagfrontcarry\t199\n'
    'oddobjectcarry\t199\n'
    'stonecarry\t199\n'
    'kegcarry\t199\n'
    'marchingcarry\t200\n'
    'farmermarch\t200\n'
    'loadedmarchinplace\t200\n'
    'highkneecarry\t200\n'
    'suitcasemarch\t200\n'
    'marchingfarmercarry\t200\n'
    'loadedhighkneemarch\t200\n'
    'ruck\t201\n'
    'rucking\t201\n'
    'loadedmarch\t201\n'
    'weightedwalk\t201\n'
    'packmarch\t201\n'
    'ruckmarch\t201\n'
    'weightedvestwalk\t201\n'
    'backpackwalk\t201\n'
    'loadedhillwalk\t202\n'
    'inclinewalk\t202\n'
    'weightedhillwalk\t202\n'
    'uphillwalk\t202\n'
    'inclinetreadmillwalk\t202\n'
    'uphillruck\t202\n'
    'loadedinclinewalk\t202\n'
    'loadedstairclimb\t203\n'
    'stairclimb\t203\n'
    'weightedstairclimb\t203\n'
    'stairclimbwithload\t203\n'
    'weightedveststairclimb\t203\n'
    'stairwalk\t203\n'
    'stairmachine\t203\n'
    'backwardwalk\t204\n'
    'backwardtreadmillwalk\t204\n'
    'reversewalk\t204\n'
    'backwardwalking\t204\n'
    'retrowalk\t204\n'
    'backwarduphillwalk\t204\n'
    'backwardwalkonunpoweredtreadmill\t204\n'
    'deadlift\t205\n'
    'conventionaldeadlift\t205\n'
    'barbelldeadlift\t205\n'
    'dl\t205\n'
    'bbdeadlift\t205\n'
    'deadliftfromthefloor\t205\n'
    'romaniandeadlift\t206\n'
    'rdl\t206\n'
    'barbellrdl\t206\n'
    'barbellromaniandeadlift\t206\n'
    'romanian\t206\n'
    'stifflegdeadlift\t207\n'
    'sldl\t207\n'
    'stiffleggeddeadlift\t207\n'
    'straightlegdeadlift\t207\n'
    'barbellstifflegdeadlift\t207\n'
    'stifflegdl\t207\n'
    'dumbbellromaniandeadlift\t208\n'
    'dbrdl\t208\n'
    'dumbbellrdl\t208\n'
    'dbromaniandeadlift\t208\n'
    'kettlebellromaniandeadlift\t208\n'
    'kbrdl\t208\n'
    'trapbardeadlift\t209\n'
    'hexbardeadlift\t209\n'
    'tbdl\t209\n'
    'trapbardl\t209\n'
    'highhandletrapbardeadlift\t209\n'
    'hbdl\t209\n'
    'sumodeadlift\t210\n'
    'widestancedeadlift\t210\n'
    'sumodl\t210\n'
    'barbellsumodeadlift\t210\n'
    'singlelegromaniandeadlift\t211\n'
    'slrdl\t211\n'
    'singlelegrdl\t211\n'
    'onelegrdl\t211\n'
    'dumbbellsinglelegrdl\t211\n'
    'singlelegdeadlift\t211\n'
    'singlelegstifflegdeadlift\t211\n'
    'goodmorning\t212\n'
    'barbellgoodmorning\t212\n'
    'gm\t212\n'
    'bentkneegoodmorning\t212\n'
    'kettlebelldeadlift\t213\n'
    'kbdeadlift\t213\n'
    'kbdl\t213\n'
    'dumbbelldeadlift\t214\n'
    'dbdeadlift\t214\n'
    'twodumbbelldeadlift\t214\n'
    'dumbbellstifflegdeadlift\t215\n'
    'dbsldl\t215\n'
    'dbstifflegdeadlift\t215\n'
    'dumbbellstraightlegdeadlift\t215\n'
    'dumbbellsldl\t215\n'
    'rackpull\t216\n'
    'blockpull\t216\n'
    'deadliftfromblock\t216\n'
    'deadliftfrompin\t216\n'
    'partialdeadlift\t216\n'
    'blockdeadlift\t216\n'
    'deficitdeadlift\t217\n'
    'deadliftoffplate\t217\n'
    'deadliftfromdeficit\t217\n'
    'pauseddeadlift\t218\n'
    'pausedeadlift\t218\n'
    'deadliftwithpauseattheknee\t218\n'
    'snatchgripdeadlift\t219\n'
    'widegripdeadlift\t219\n'
    'snatchgripdl\t219\n'
    'sgdl\t219\n'
    'snatchgripromaniandeadlift\t220\n'
    'snatchgriprdl\t220\n'
    'widegriprdl\t220\n'
    'deficitromaniandeadlift\t221\n'
    'deficitrdl\t221\n'
    'rdloffplate\t221\n'
    'deficitstifflegdeadlift\t222\n'
    'deficitsldl\t222\n'
    'stifflegdeadliftoffplate\t222\n'
    'deficittrapbardeadlift\t223\n'
    'lowhandletrapbardeadlift\t223\n'
    'deficithexbardeadlift\t223\n'
    'trapbarromaniandeadlift\t224\n'
    'trapbarrdl\t224\n'
    'hexbarrdl\t224\n'
    'hexbarromaniandeadlift\t224\n'
    'kettlebellsumodeadlift\t225\n'
    'kbsumodeadlift\t225\n'
    'dumbbellsumodeadlift\t225\n'
    'sumokettlebelldeadlift\t225\n'
    'sumoromaniandeadlift\t226\n'
    'sumordl\t226\n'
    'widestancerdl\t226\n'
    'bstanceromaniandeadlift\t227\n'
    'bstancerdl\t227\n'
    'kickstandrdl\t227\n'
    'kickstandromaniandeadlift\t227\n'
    'staggeredstancerdl\t227\n'
    'splitstancerdl\t227\n'
    'barbellsinglelegromaniandeadlift\t228\n'
    'barbellsinglelegrdl\t228\n'
    'bbslrdl\t228\n'
    'barbellslrdl\t228\n'
    'landminesinglelegromaniandeadlift\t229\n'
    'landminesinglelegrdl\t229\n'
    'landmineslrdl\t229\n'
    'angledbarsinglelegrdl\t229\n'
    'bodyweightsinglelegromaniandeadlift\t230\n'
    'bodyweightsinglelegrdl\t230\n'
    'singleleghinge\t230\n'
    'singleleghiphinge\t230\n'
    'singlelegreach\t230\n'
    'bodyweightslrdl\t230\n'
    'suitcasedeadlift\t231\n'
    'onearmdeadlift\t231\n'
    'singlearmdeadlift\t231\n'
    'kettlebellsuitcasedeadlift\t231\n'
    'guidedbarromaniandeadlift\t232\n'
    'guidedbarrdl\t232\n'
    'fixedtrackrdl\t232\n'
    'guidedbarstifflegdeadlift\t232\n'
    'cableromaniandeadlift\t233\n'
    'cablerdl\t233\n'
    'cablestifflegdeadlift\t233\n'
    'cabledeadlift\t233\n'
    'cablepullthrough\t234\n'
    'pullthrough\t234\n'
    'cablehiphinge\t234\n'
    'ropepullthrough\t234\n'
    'bandpullthrough\t235\n'
    'bandedpullthrough\t235\n'
    'resistancebandpullthrough\t235\n'
    'hiphingedrill\t236\n'
    'hingedrill\t236\n'
    'dowelhiphinge\t236\n'
    'broomstickhinge\t236\n'
    'wallhinge\t236\n'
    'bodyweighthiphinge\t236\n'
    'bodyweightgoodmorning\t236\n'
    'bandgoodmorning\t237\n'
    'bandedgoodmorning\t237\n'
    'resistancebandgoodmorning\t237\n'
    'safetybargoodmorning\t238\n'
    'ssbgoodmorning\t238\n'
    'safetysquatbargoodmorning\t238\n'
    'seatedgoodmorning\t239\n'
    'seatedbarbellgoodmorning\t239\n'
    'sandbagdeadlift\t240\n'
    'sandbaglift\t240\n'
    'oddobjectdeadlift\t240\n'
    'isometricmidthighpull\t241\n'
    'imtp\t241\n'
    'isometricdeadlift\t241\n'
    'rackisometricpull\t241\n'
    'backextension\t242\n'
    '45degreebackextension\t242\n'
    'hyperextension\t242\n'
    '45degreehyperextension\t242\n'
    '45degreehipextension\t242\n'
    'inclinebackextension\t242\n'
    'weightedbackextension\t243\n'
    'weightedhyperextension\t243\n'
    'loadedbackextension\t243\n'
    'barbellbackextension\t243\n'
    'platebackextension\t243\n'
    'singlelegbackextension\t244\n'
    'onelegbackextension\t244\n'
    'singleleghyperextension\t244\n'
    'singleleghipextensiononbench\t244\n'
    'horizontalbackextension\t245\n'
    'romanchairbackextension\t245\n'
    '90degreebackextension\t245\n'
    'ghdbackextension\t245\n'
    'hipextensiononromanchair\t245\n'
    'ghdhipextension\t245\n'
    'backextensionhold\t246\n'
    'isometricbackextension\t246\n'
    'trunkextensionhold\t246\n'
    'romanchairhold\t246\n'
    'isometrichipextensionhold\t246\n'
    'singlelegbackextensionhold\t247\n'
    'singlelegromanchairhold\t247\n'
    'singlelegisometricbackextension\t247\n'
    'reversehyperextension\t248\n'
    'reversehyper\t248\n'
    'reversebackextension\t248\n'
    'benchreversehyperextension\t249\n'
    'bodyweightreversehyper\t249\n'
    'ballreversehyper\t249\n'
    'bodyweightreversehyperextension\t249\n'
    'hipthrust\t250\n'
    'barbellhipthrust\t250\n'
    'bht\t250\n'
    'bbhipthrust\t250\n'
    'thrust\t250\n'
    'benchhipthrust\t250\n'
    'glutebridge\t251\n'
    'bridge\t251\n'
    'hipbridge\t251\n'
    'bodyweightglutebridge\t251\n'
    'bodyweightbridge\t251\n'
    'hipraise\t251\n'
    'twolegbridge\t251\n'
    'singleleghipthrust\t252\n'
    'oneleghipthrust\t252\n'
    'slhipthrust\t252\n'
    'singlelegbenchhipthrust\t252\n'
    'dumbbellhipthrust\t253\n'
    'dbhipthrust\t253\n'
    'kettlebellhipthrust\t253\n'
    'bodyweighthipthrust\t253\n'
    'hipthrustmachine\t254\n'
    'machinehipthrust\t254\n'
    'glutebridgemachine\t254\n'
    'leverhipthrust\t254\n'
    'guidedbarhipthrust\t255\n'
    'fixedtrackhipthrust\t255\n'
    'barbellglutebridge\t256\n'
    'bbglutebridge\t256\n'
    'floorhipthrust\t256\n'
    'weightedglutebridge\t256\n'
    'singlelegglutebridge\t257\n'
    'onelegbridge\t257\n'
    'slglutebridge\t257\n'
    'singlelegbridge\t257\n'
    'singleleghipbridge\t257\n'
    'bstancehipthrust\t258\n'
    'kickstandhipthrust\t258\n'
    'staggeredstancehipthrust\t258\n'
    'bandhipthrust\t259\n'
    'bandedhipthrust\t259\n'
    'bandedglutebridge\t259\n'
    'bandglutebridge\t259\n'
    'minibandglutebridge\t259\n'
    'feetelevatedglutebridge\t260\n'
    'footelevatedbridge\t260\n'
    'elevatedbridge\t260\n'
    'feetraisedbridge\t260\n'
    'frogpump\t261\n'
    'frogbridge\t261\n'
    'weightedfrogpump\t261\n'
    'longleverbridge\t262\n'
    'hamstringbridge\t262\n'
    'longleverhamstringbridge\t262\n'
    'straightlegbridge\t262\n'
    'longleverglutebridge\t262\n'
    'singleleghamstringbridge\t263\n'
    'singleleglongleverbridge\t263\n'
    'slhb\t263\n'
    'singlelegbridgefrombox\t263\n'
    'slhamstringbridge\t263\n'
    'glutebridgehold\t264\n'
    'bridgehold\t264\n'
    'isometricglutebridge\t264\n'
    'isometricbridge\t264\n'
    'longleverbridgehold\t265\n'
    'hamstringbridgehold\t265\n'
    'isometrichamstringbridge\t265\n'
    'isometriclongleverbridge\t265\n'
    'hamstringisohold\t265\n'
    'singleleglongleverbridgehold\t266\n'
    'singleleghamstringbridgehold\t266\n'
    'singlelegisometrichamstringbridge\t266\n'
    'slhamstringiso\t266\n'
    'cablehipextension\t267\n'
    'cablekickback\t267\n'
    'cableglutekickback\t267\n'
    'glutekickback\t267\n'
    'standinghipextension\t267\n'
    'multihipextension\t267\n'
    'machineglutekickback\t268\n'
    'glutemachine\t268\n'
    'rearkickmachine\t268\n'
    'kneelingglutemachine\t268\n'
    'machinekickback\t268\n'
    'machinehipextension\t268\n'
    'bandkickback\t269\n'
    'bandedkickback\t269\n'
    'bandhipextension\t269\n'
    'standingbandhipextension\t269\n'
    'donkeykick\t270\n'
    'quadrupedhipextension\t270\n'
    'bentkneekickback\t270\n'
    'glutekickbackonallfour\t270\n'
    'birddogleglift\t270\n'
    'pronehipextension\t271\n'
    'proneleglift\t271\n'
    'lyinghipextension\t271\n'
    'pronelegraise\t271\n'
    'kettlebellswing\t272\n'
    'swing\t272\n'
    'kbswing\t272\n'
    'kbs\t272\n'
    'russianswing\t272\n'
    'twohandswing\t272\n'
    'twohandkettlebellswing\t272\n'
    'hiphingeswing\t272\n'
    'dumbbellswing\t272\n'
    'singlearmkettlebellswing\t273\n'
    'onearmswing\t273\n'
    'singlearmswing\t273\n'
    'onehandswing\t273\n'
    'onearmkettlebellswing\t273\n'
    'overheadkettlebellswing\t274\n'
    'overheadswing\t274\n'
    'fullswing\t274\n'
    'kettlebellswingoverhead\t274\n'
    'heavykettlebellswing\t275\n'
    'doublekettlebellswing\t275\n'
    'heavyswing\t275\n'
    'doubleswing\t275\n'
    'bandswing\t276\n'
    'bandedhipsnap\t276\n'
    'bandresistedhingejump\t276\n'
    'bandresistedswing\t276\n'
    'powerclean\t277\n'
    'pc\t277\n'
    'barbellpowerclean\t277\n'
    'powercleanfromthefloor\t277\n'
    'clean\t278\n'
    'fullclean\t278\n'
    'squatclean\t278\n'
    'barbellclean\t278\n'
    'cleanfromthefloor\t278\n'
    'hangpowerclean\t279\n'
    'hpc\t279\n'
    'hangpowercleanfromabovetheknee\t279\n'
    'hangclean\t280\n'
    'hangsquatclean\t280\n'
    'cleanfromthehang\t280\n'
    'hangfullclean\t280\n'
    'blockpowerclean\t281\n'
    'powercleanfromblock\t281\n'
    'cleanfromblock\t281\n'
    'blockclean\t281\n'
    'muscleclean\t282\n'
    'hangmuscleclean\t282\n'
    'cleanandjerk\t283\n'
    'c&j\t283\n'
    'clean&jerk\t283\n'
    'cj\t283\n'
    'cleanandsplitjerk\t283\n'
    'powercleanandjerk\t283\n'
    'cleanpull\t284\n'
    'cleangrippull\t284\n'
    'cleanpullfromthefloor\t284\n'
    'hangcleanpull\t285\n'
    'hangpull\t285\n'
    'cleanpullfromthehang\t285\n'
    'cleanhighpull\t286\n'
    'highpull\t286\n'
    'barbellhighpull\t286\n'
    'highpullfromthefloor\t286\n'
    'cleangriphighpull\t286\n'
    'hanghighpull\t287\n'
    'hangcleanhighpull\t287\n'
    'highpullfromthehang\t287\n'
    'midthighpull\t288\n'
    'cleanmidthighpull\t288\n'
    'midthighcleanpull\t288\n'
    'dynamicmidthighpull\t288\n'
    'jumpshrug\t289\n'
    'hangjumpshrug\t289\n'
    'barbelljumpshrug\t289\n'
    'dumbbellhangclean\t290\n'
    'dbhangclean\t290\n'
    'dumbbellpowerclean\t290\n'
    'dumbbellclean\t290\n'
    'dbclean\t290\n'
    'kettlebellclean\t291\n'
    'kbclean\t291\n'
    'singlearmkettlebellclean\t291\n'
    'doublekettlebellclean\t291\n'
    'onearmclean\t291\n'
    'sandbagovershoulder\t292\n'
    'sandbagtoshoulder\t292\n'
    'sandbagclean\t292\n'
    'sandbagshouldering\t292\n'
    'sandbagtossovershoulder\t292\n'
    'powersnatch\t293\n'
    'barbellpowersnatch\t293\n'
    'powersnatchfromthefloor\t293\n'
    'snatch\t294\n'
    'fullsnatch\t294\n'
    'squatsnatch\t294\n'
    'barbellsnatch\t294\n'
    'snatchfromthefloor\t294\n'
    'hangpowersnatch\t295\n'
    'hangpowersnatchfromabovetheknee\t295\n'
    'hps\t295\n'
    'hangsnatch\t296\n'
    'hangsquatsnatch\t296\n'
    'snatchfromthehang\t296\n'
    'hangmusclesnatch\t297\n'
    'musclesnatch\t297\n'
    'snatchpull\t298\n'
    'snatchgrippull\t298\n'
    'snatchpullfromthefloor\t298\n'
    'snatchhighpull\t299\n'
    'snatchgriphighpull\t299\n'
    'widegriphighpull\t299\n'
    'dumbbellsnatch\t300\n'
    'dbsnatch\t300\n'
    'singlearmdumbbellsnatch\t300\n'
    'onearmdumbbellsnatch\t300\n'
    'dumbbellhangsnatch\t300\n'
    'kettlebellsnatch\t301\n'
    'kbsnatch\t301\n'
    'singlearmkettlebellsnatch\t301\n'
    'onearmsnatch\t301\n'
    'kettlebellhighpull\t302\n'
    'kbhighpull\t302\n'
    'singlearmkettlebellhighpull\t302\n'
    'sumodeadlifthighpull\t302\n'
    'hipabductionmachine\t303\n'
    'machinehipabduction\t303\n'
    'seatedhipabduction\t303\n'
    'abductormachine\t303\n'
    'hipabduction\t303\n'
    'abductionmachine\t303\n'
    'seatedabduction\t303\n'
    'cablehipabduction\t304\n'
    'standingcablehipabduction\t304\n'
    'cableabduction\t304\n'
    'standinghipabduction\t304\n'
    'multihipabduction\t304\n'
    'sidelyinghipabduction\t305\n'
    'sidelyinglegraise\t305\n'
    'sidelegraise\t305\n'
    'lyinghipabduction\t305\n'
    'sidelyingabduction\t305\n'
    'lateralbandwalk\t306\n'
    'bandwalk\t306\n'
    'sidestepwithband\t306\n'
    'minibandwalk\t306\n'
    'xbandwalk\t306\n'
    'lateralwalk\t306\n'
    'crabwalkwithband\t306\n'
    'bandedsidestep\t306\n'
    'sidewaybandwalk\t306\n'
    'monsterwalk\t307\n'
    'bandedmonsterwalk\t307\n'
    'forwardbandwalk\t307\n'
    'diagonalbandwalk\t307\n'
    'clamshell\t308\n'
    'clam\t308\n'
    'clamshellexercise\t308\n'
    'bandedclamshell\t308\n'
    'bandclamshell\t308\n'
    'sidelyingclam\t308\n'
    'seatedbandhipabduction\t309\n'
    'bandedseatedabduction\t309\n'
    'seatedbandabduction\t309\n'
    'bandhipabductionseated\t309\n'
    'seatedbandedhipabduction\t309\n'
    'standingbandhipabduction\t310\n'
    'bandhipabduction\t310\n'
    'bandedstandingabduction\t310\n'
    'bandabduction\t310\n'
    'leaninghipabductionmachine\t311\n'
    'leanforwardhipabduction\t311\n'
    'forwardleanabductionmachine\t311\n'
    'hoveringhipabduction\t311\n'
    'firehydrant\t312\n'
    'quadrupedhipabduction\t312\n'
    'bandedfirehydrant\t312\n'
    'hydrant\t312\n'
    'standingmachinehipabduction\t313\n'
    'standingabductionmachine\t313\n'
    'standinghipabductionmachine\t313\n'
    'multihipmachineabduction\t313\n'
    'pelvicdrop\t314\n'
    'hiphike\t314\n'
    'hiphitch\t314\n'
    'pelvichike\t314\n'
    'pelvichitch\t314\n'
    'standinghiphike\t314\n'
    'wallpressabductionhold\t315\n'
    'standingwallpress\t315\n'
    'isometrichipabduction\t315\n'
    'wallpresshold\t315\n'
    'singlelegwallpress\t315\n'
    'isometrichipabductionatwall\t315\n'
    'frograise\t316\n'
    'pronefroglift\t316\n'
    'frogreversehyper\t316\n'
    'pronefrograise\t316\n'
    'hipadductionmachine\t317\n'
    'machinehipadduction\t317\n'
    'seatedhipadduction\t317\n'
    'adductormachine\t317\n'
    'hipadduction\t317\n'
    'adductionmachine\t317\n'
    'seatedadduction\t317\n'
    'copenhagensideplank\t318\n'
    'copenhagenplank\t318\n'
    'copenhagenhold\t318\n'
    'csp\t318\n'
    'longlevercopenhagenplank\t318\n'
    'copenhagenplankhold\t318\n'
    'isometriccopenhagen\t318\n'
    'copenhagenadduction\t319\n'
    'copenhagenadductorraise\t319\n'
    'copenhagenadductionexercise\t319\n'
    'copenhagenhipadduction\t319\n'
    'dynamiccopenhagenplank\t319\n'
    'copenhagenraise\t319\n'
    'copenhagen\t319\n'
    'shortlevercopenhagensideplank\t320\n'
    'bentkneecopenhagenplank\t320\n'
    'shortcopenhagenplank\t320\n'
    'shortlevercopenhagenplank\t320\n'
    'halfcopenhagenplank\t320\n'
    'kneecopenhagenplank\t320\n'
    'shortlevercopenhagenadduction\t321\n'
    'bentkneecopenhagenadduction\t321\n'
    'shortlevercopenhagenraise\t321\n'
    'halfcopenhagenadduction\t321\n'
    'cablehipadduction\t322\n'
    'standingcablehipadduction\t322\n'
    'cableadduction\t322\n'
    'standinghipadduction\t322\n'
    'multihipadduction\t322\n'
    'bandhipadduction\t323\n'
    'standingbandhipadduction\t323\n'
    'bandedadduction\t323\n'
    'bandadduction\t323\n'
    'ballsqueeze\t324\n'
    'adductorsqueeze\t324\n'
    'isometrichipadduction\t324\n'
    'groinsqueeze\t324\n'
    'kneesqueeze\t324\n'
    'adductorballsqueeze\t324\n'
    'isometricadduction\t324\n'
    'longleversqueeze\t324\n'
    'sidelyinghipadduction\t325\n'
    'sidelyingadduction\t325\n'
    'innerthighraise\t325\n'
    'lyinghipadduction\t325\n'
    'sidelyinginnerthighlift\t325\n'
    'slideradduction\t326\n'
    'slidinghipadduction\t326\n'
    'slideinadduction\t326\n'
    'sliderhipadduction\t326\n'
    'slideboardadduction\t326\n'
    'cablehipflexion\t327\n'
    'standingcablehipflexion\t327\n'
    'cablekneeraise\t327\n'
    'cablekneedrive\t327\n'
    'standingcablekneedrive\t327\n'
    'bandhipflexion\t328\n'
    'psoamarch\t328\n'
    'bandedmarch\t328\n'
    'standingbandhipflexion\t328\n'
    'bandedhipflexion\t328\n'
    'bandkneedrive\t328\n'
    'supinebandmarch\t328\n'
    'bandedpsoamarch\t328\n'
    'machinehipflexion\t329\n'
    'standinghipflexionmachine\t329\n'
    'multihipflexion\t329\n'
    'hipflexionmachine\t329\n'
    'hipflexormachine\t329\n'
    'supinestraightlegraise\t330\n'
    'slr\t330\n'
    'singlelegstraightlegraise\t330\n'
    'supinestraightleglift\t330\n'
    'lyingsinglelegraise\t330\n'
    'singlestraightlegraise\t330\n'
    'standingkneeraise\t331\n'
    'standingmarch\t331\n'
    'highkneemarch\t331\n'
    'standingkneelift\t331\n'
    'marchinginplace\t331\n'
    'kettlebellkneeraise\t331\n'
    'footloadedkneeraise\t331\n'
    'seatedstraightleglift\t332\n'
    'seatedleglift\t332\n'
    'seatedpikelift\t332\n'
    'pikecompression\t332\n'
    'seatedlegraiseoverobject\t332\n'
    'pikeleglift\t332\n'
    'compressionlift\t332\n'
    'lyingcablekneedrive\t333\n'
    'lyingcablehipflexion\t333\n'
    'reversesquat\t333\n'
    'supinecablekneeraise\t333\n'
    'lyingbandedkneedrive\t333\n'
    'hipflexionhold\t334\n'
    'isometrichipflexion\t334\n'
    'kneeraisehold\t334\n'
    'standinghipflexionhold\t334\n'
    'isometrickneeraise\t334\n'
    'hipflexorlowering\t335\n'
    'kneelinghipflexoreccentric\t335\n'
    'eccentrichipflexion\t335\n'
    'strapassistedleglowering\t335\n'
    'lyingleglowering\t335\n'
    'singleleglowering\t335\n'
    'seatedhipinternalrotation\t336\n'
    'seatedbandhipinternalrotation\t336\n'
    'bandhipinternalrotation\t336\n'
    'hipinternalrotation\t336\n'
    'cablehipinternalrotation\t336\n'
    'seatedinternalhiprotation\t336\n'
    'seatedhipexternalrotation\t337\n'
    'seatedbandhipexternalrotation\t337\n'
    'bandhipexternalrotation\t337\n'
    'hipexternalrotation\t337\n'
    'cablehipexternalrotation\t337\n'
    'seatedexternalhiprotation\t337\n'
    'pronehipinternalrotation\t338\n'
    'lyinghipinternalrotation\t338\n'
    'pronebandhipinternalrotation\t338\n'
    'proneinternalrotationofthehip\t338\n'
    'pronehipexternalrotation\t339\n'
    'lyinghipexternalrotation\t339\n'
    'pronebandhipexternalrotation\t339\n'
    'proneexternalrotationofthehip\t339\n'
    'heelsqueezerotation\t339\n'
    'reverseclamshell\t340\n'
    'reverseclam\t340\n'
    'sidelyinghipinternalrotation\t340\n'
    'reverseclamshellexercise\t340\n'
    'hipairplane\t341\n'
    'hipaeroplane\t341\n'
    'singleleghiprotation\t341\n'
    'standinghipairplane\t341\n'
    '90/90hipliftoff\t342\n'
    '9090liftoff\t342\n'
    '90/90hiprotation\t342\n'
    'hip9090\t342\n'
    'shinboxliftoff\t342\n'
    '9090internalrotationlift\t342\n'
    'seatedlegcurl\t343\n'
    'seatedhamstringcurl\t343\n'
    'machineseatedlegcurl\t343\n'
    'seatedkneeflexion\t343\n'
    'slc\t343\n'
    'lyinglegcurl\t344\n'
    'legcurl\t344\n'
    'pronelegcurl\t344\n'
    'hamstringcurl\t344\n'
    'lyinghamstringcurl\t344\n'
    'machinelegcurl\t344\n'
    'pronehamstringcurl\t344\n'
    'llc\t344\n'
    'kneeflexion\t344\n'
    'singlelegseatedlegcurl\t345\n'
    'onelegseatedlegcurl\t345\n'
    'unilateralseatedlegcurl\t345\n'
    'singlelegseatedhamstringcurl\t345\n'
    'singleleglyinglegcurl\t346\n'
    'oneleglyinglegcurl\t346\n'
    'singlelegpronelegcurl\t346\n'
    'unilaterallegcurl\t346\n'
    'singleleglegcurl\t346\n'
    'standinglegcurl\t347\n'
    'standinghamstringcurl\t347\n'
    'machinestandinglegcurl\t347\n'
    'singlelegstandinglegcurl\t347\n'
    'kneelinglegcurl\t348\n'
    'kneelinghamstringcurl\t348\n'
    'machinekneelinglegcurl\t348\n'
    'leaningseatedlegcurl\t349\n'
    'leanforwardseatedlegcurl\t349\n'
    'forwardleanlegcurl\t349\n'
    'lengthenedseatedlegcurl\t349\n'
    'eccentricseatedlegcurl\t350\n'
    'seatedlegcurltwouponedown\t350\n'
    'seatedlegcurleccentric\t350\n'
    'eccentricoverloadseatedlegcurl\t350\n'
    'eccentriclyinglegcurl\t351\n'
    'twouponedownlegcurl\t351\n'
    'lyinglegcurleccentric\t351\n'
    'eccentriclegcurl\t351\n'
    'eccentricoverloadlegcurl\t351\n'
    'cablelegcurl\t352\n'
    'standingcablelegcurl\t352\n'
    'cablehamstringcurl\t352\n'
    'anklestraplegcurl\t352\n'
    'lyingcablelegcurl\t353\n'
    'pronecablelegcurl\t353\n'
    'cablelyinglegcurl\t353\n'
    'bandlegcurl\t354\n'
    'bandedlegcurl\t354\n'
    'pronebandlegcurl\t354\n'
    'resistancebandlegcurl\t354\n'
    'bandhamstringcurl\t354\n'
    'lyingbandlegcurl\t354\n'
    'seatedbandlegcurl\t355\n'
    'bandseatedlegcurl\t355\n'
    'seatedresistancebandlegcurl\t355\n'
    'bandedseatedlegcurl\t355\n'
    'bandstandinglegcurl\t356\n'
    'standingbandlegcurl\t356\n'
    'ankleweightlegcurl\t356\n'
    'standingankleweightlegcurl\t356\n'
    'dumbbelllegcurl\t357\n'
    'dblegcurl\t357\n'
    'dumbbelllyinglegcurl\t357\n'
    'dumbbellhamstringcurl\t357\n'
    'pronedumbbelllegcurl\t357\n'
    'isometriclegcurl\t358\n'
    'legcurlhold\t358\n'
    'legcurlisometric\t358\n'
    'isometrickneeflexion\t358\n'
    'hamstringisometric\t358\n'
    'seatedisometriclegcurl\t359\n'
    'isometricseatedlegcurl\t359\n'
    'seatedlegcurlhold\t359\n'
    'seatedhamstringisometric\t359\n'
    'nordiccurl\t360\n'
    'nordic\t360\n'
    'nordichamstringcurl\t360\n'
    'nordichamstringexercise\t360\n'
    'nhe\t360\n'
    'nordiclower\t360\n'
    'nordiclegcurl\t360\n'
    'russianlegcurl\t360\n'
    'eccentricnordiccurl\t360\n'
    'assistednordiccurl\t361\n'
    'bandassistednordiccurl\t361\n'
    'bandnordic\t361\n'
    'bandassistednordic\t361\n'
    'pushupassistednordiccurl\t361\n'
    'weightednordiccurl\t362\n'
    'loadednordiccurl\t362\n'
    'nordiccurlwithplate\t362\n'
    'fullnordiccurl\t362\n'
    'concentricnordiccurl\t362\n'
    'razorcurl\t363\n'
    'benthipnordiccurl\t363\n'
    'hipflexednordiccurl\t363\n'
    'razorhamstringcurl\t363\n'
    'nordichold\t364\n'
    'isometricnordiccurl\t364\n'
    'nordicisometric\t364\n'
    'nordiccurlhold\t364\n'
    'glutehamraise\t365\n'
    'ghr\t365\n'
    'glutehamraiseonbench\t365\n'
    'glutehamdeveloperraise\t365\n'
    'ghdraise\t365\n'
    'gluteham\t365\n'
    'assistedglutehamraise\t366\n'
    'bandassistedglutehamraise\t366\n'
    'bandassistedghr\t366\n'
    'assistedghr\t366\n'
    'weightedglutehamraise\t367\n'
    'loadedghr\t367\n'
    'weightedghr\t367\n'
    'plateglutehamraise\t367\n'
    'sliderlegcurl\t368\n'
    'slidinglegcurl\t368\n'
    'slidelegcurl\t368\n'
    'hamstringslide\t368\n'
    'sliderhamstringcurl\t368\n'
    'towellegcurl\t368\n'
    'slideboardlegcurl\t368\n'
    'eccentricsliderlegcurl\t369\n'
    'sliderlegcurleccentric\t369\n'
    'hamstringslideout\t369\n'
    'eccentricslidinglegcurl\t369\n'
    'singlelegsliderlegcurl\t370\n'
    'singlelegslidinglegcurl\t370\n'
    'onelegsliderlegcurl\t370\n'
    'balllegcurl\t371\n'
    'stabilityballlegcurl\t371\n'
    'swissballlegcurl\t371\n'
    'exerciseballlegcurl\t371\n'
    'swissballhamstringcurl\t371\n'
    'gymballlegcurl\t371\n'
    'physioballcurl\t371\n'
    'sblegcurl\t371\n'
    'singlelegballlegcurl\t372\n'
    'singlelegswissballlegcurl\t372\n'
    'singlelegstabilityballlegcurl\t372\n'
    'onelegballcurl\t372\n'
    'suspensionlegcurl\t373\n'
    'straplegcurl\t373\n'
    'suspensionhamstringcurl\t373\n'
    'suspensiontrainerlegcurl\t373\n'
    'ringlegcurl\t373\n'
    'hamstringwalkout\t374\n'
    'bridgewalkout\t374\n'
    'glutebridgewalkout\t374\n'
    'hamstringbridgewalkout\t374\n'
    'heelwalkout\t374\n'
    'standingcalfraise\t375\n'
    'calfraise\t375\n'
    'machinestandingcalfraise\t375\n'
    'standingmachinecalfraise\t375\n'
    'standingheelraise\t375\n'
    'machinecalfraise\t375\n'
    'scr\t375\n'
    'bodyweightcalfraise\t376\n'
    'heelraise\t376\n'
    'doublelegcalfraise\t376\n'
    'bodyweightheelraise\t376\n'
    'twolegcalfraise\t376\n'
    'doublelegheelraise\t376\n'
    'bwcalfraise\t376\n'
    'singlelegcalfraise\t377\n'
    'singlelegheelraise\t377\n'
    'onelegcalfraise\t377\n'
    'slcalfraise\t377\n'
    'bodyweightsinglelegcalfraise\t377\n'
    'singlelegstandingcalfraise\t377\n'
    'slcr\t377\n'
    'dumbbellsinglelegcalfraise\t378\n'
    'dbsinglelegcalfraise\t378\n'
    'onedumbbellcalfraise\t378\n'
    'weightedsinglelegcalfraise\t378\n'
    'dumbbellonelegcalfraise\t378\n'
    'legpresscalfraise\t379\n'
    'calfpress\t379\n'
    'calfpressonlegpress\t379\n'
    'legpressheelraise\t379\n'
    'legpresstoepress\t379\n'
    'toepress\t379\n'
    'singleleglegpresscalfraise\t380\n'
    'singlelegcalfpress\t380\n'
    'onelegcalfpress\t380\n'
    'donkeycalfraise\t381\n'
    'bentovercalfraise\t381\n'
    'machinedonkeycalfraise\t381\n'
    'donkeyheelraise\t381\n'
    'dumbbellcalfraise\t382\n'
    'dbcalfraise\t382\n'
    'standingdumbbellcalfraise\t382\n'
    'dumbbellstandingcalfraise\t382\n'
    'kettlebellcalfraise\t382\n'
    'guidedbarcalfraise\t383\n'
    'fixedtrackcalfraise\t383\n'
    'guidedbarstandingcalfraise\t383\n'
    'guidedbarsinglelegcalfraise\t384\n'
    'fixedtracksinglelegcalfraise\t384\n'
    'barbellcalfraise\t385\n'
    'bbcalfraise\t385\n'
    'standingbarbellcalfraise\t385\n'
    'barbellstandingcalfraise\t385\n'
    'barbellheelraise\t385\n'
    'hacksquatcalfraise\t386\n'
    'hackmachinecalfraise\t386\n'
    'hacksquatmachinecalfraise\t386\n'
    'seatedcalfraise\t387\n'
    'machineseatedcalfraise\t387\n'
    'seatedheelraise\t387\n'
    'seatedsoleuraise\t387\n'
    'seatedmachinecalfraise\t387\n'
    'singlelegseatedcalfraise\t388\n'
    'onelegseatedcalfraise\t388\n'
    'singlelegseatedheelraise\t388\n'
    'dumbbellseatedcalfraise\t389\n'
    'dbseatedcalfraise\t389\n'
    'seateddumbbellcalfraise\t389\n'
    'plateseatedcalfraise\t389\n'
    'kettlebellseatedcalfraise\t389\n'
    'barbellseatedcalfraise\t390\n'
    'seatedbarbellcalfraise\t390\n'
    'bbseatedcalfraise\t390\n'
    'guidedbarseatedcalfraise\t390\n'
    'bentkneecalfraise\t391\n'
    'soleuraise\t391\n'
    'bentkneeheelraise\t391\n'
    'standingbentkneecalfraise\t391\n'
    'soleucalfraise\t391\n'
    'bodyweightbentkneecalfraise\t391\n'
    'singlelegbentkneecalfraise\t392\n'
    'singlelegsoleuraise\t392\n'
    'bentkneesinglelegcalfraise\t392\n'
    'singlelegbentkneeheelraise\t392\n'
    'singlelegsoleucalfraise\t392\n'
    'guidedbarbentkneecalfraise\t393\n'
    'splitsquatcalfraise\t393\n'
    'guidedbarsoleuraise\t393\n'
    'bentkneecalfraiseinsplitstance\t393\n'
    'heeldrop\t394\n'
    'eccentricheeldrop\t394\n'
    'eccentriccalfraise\t394\n'
    'straightkneeheeldrop\t394\n'
    'singlelegheeldrop\t394\n'
    'eccentricheellowering\t394\n'
    'calflowering\t394\n'
    'achilleheeldrop\t394\n'
    'heeldropkneestraight\t394\n'
    'bentkneeheeldrop\t395\n'
    'eccentricbentkneeheeldrop\t395\n'
    'heeldropkneebent\t395\n'
    'eccentricsoleudrop\t395\n'
    'bentkneeeccentriccalfraise\t395\n'
    'calfraisehold\t396\n'
    'isometriccalfraise\t396\n'
    'isometriccalfhold\t396\n'
    'calfisohold\t396\n'
    'isometricheelraise\t396\n'
    'singlelegcalfraisehold\t396\n'
    'heelraisehold\t396\n'
    'bentkneecalfhold\t397\n'
    'soleuhold\t397\n'
    'isometricsoleuhold\t397\n'
    'bentkneeisometriccalfraise\t397\n'
    'wallleansoleuhold\t397\n'
    'soleuwallpush\t397\n'
    'seatedisometriccalfraise\t397\n'
    'isometricplantarflexionpush\t398\n'
    'isometricstandingcalfpush\t398\n'
    'calfisometricagainstrack\t398\n'
    'maximalisometricplantarflexion\t398\n'
    'isometricanklepush\t398\n'
    'bandplantarflexion\t399\n'
    'bandankleplantarflexion\t399\n'
    'bandedcalfpress\t399\n'
    'resistancebandplantarflexion\t399\n'
    'bandcalfpress\t399\n'
    'toewalk\t400\n'
    'tiptoewalk\t400\n'
    'calfwalk\t400\n'
    'walkingontoe\t400\n'
    'loadedtoewalk\t400\n'
    'farmertoewalk\t400\n'
    'tibialiraise\t401\n'
    'tibraise\t401\n'
    'walltibialiraise\t401\n'
    'toeraise\t401\n'
    'standingtoeraise\t401\n'
    'tibialiwallraise\t401\n'
    'anteriortibialiraise\t401\n'
    'shinraise\t401\n'
    'loadedtibialiraise\t402\n'
    'tibbarraise\t402\n'
    'tibiabarraise\t402\n'
    'seatedtibraise\t402\n'
    'seatedtibialiraise\t402\n'
    'machinetibialiraise\t402\n'
    'weightedtibialiraise\t402\n'
    'seateddorsiflexionwithplate\t402\n'
    'banddorsiflexion\t403\n'
    'bandankledorsiflexion\t403\n'
    'bandeddorsiflexion\t403\n'
    'resistancebanddorsiflexion\t403\n'
    'cabledorsiflexion\t403\n'
    'ankledorsiflexion\t403\n'
    'kettlebelldorsiflexion\t404\n'
    'kettlebelltibraise\t404\n'
    'footloadeddorsiflexion\t404\n'
    'hangingkettlebelltibraise\t404\n'
    'dumbbelldorsiflexion\t404\n'
    'heelwalk\t405\n'
    'walkingonheel\t405\n'
    'heelwalking\t405\n'
    'shinwalk\t405\n'
    'bandankleeversion\t406\n'
    'bandeversion\t406\n'
    'ankleeversion\t406\n'
    'bandedankleeversion\t406\n'
    'cableankleeversion\t406\n'
    'peronealbandwork\t406\n'
    'bandankleinversion\t407\n'
    'bandinversion\t407\n'
    'ankleinversion\t407\n'
    'bandedankleinversion\t407\n'
    'cableankleinversion\t407\n'
    'ballsqueezecalfraise\t408\n'
    'calfraisewithballbetweenheel\t408\n'
    'tibialiposteriorcalfraise\t408\n'
    'heelsqueezecalfraise\t408\n'
    'ballsqueezeheelraise\t408\n'
    'shortfoot\t409\n'
    'shortfootexercise\t409\n'
    'footdoming\t409\n'
    'archraise\t409\n'
    'footdome\t409\n'
    'archlift\t409\n'
    'towelscrunch\t410\n'
    'toweltoecurl\t410\n'
    'towelcurlwithtoe\t410\n'
    'toescrunch\t410\n'
    'towelgathering\t410\n'
    'toeyoga\t410\n'
    'singlelegbalance\t411\n'
    'singlelegstance\t411\n'
    'onelegbalance\t411\n'
    'singlelegstand\t411\n'
    'balanceononeleg\t411\n'
    'wobbleboardbalance\t411\n'
    'backsquat\t412\n'
    'squat\t412\n'
    'barbellsquat\t412\n'
    'barbellbacksquat\t412\n'
    'highbarsquat\t412\n'
    'highbarbacksquat\t412\n'
    'fullsquat\t412\n'
    'deepsquat\t412\n'
    'parallelsquat\t412\n'
    'temposquat\t412\n'
    'frontsquat\t413\n'
    'barbellfrontsquat\t413\n'
    'fs\t413\n'
    'cleangripfrontsquat\t413\n'
    'gobletsquat\t414\n'
    'dumbbellgobletsquat\t414\n'
    'kettlebellgobletsquat\t414\n'
    'dbgobletsquat\t414\n'
    'kbgobletsquat\t414\n'
    'bodyweightsquat\t415\n'
    'airsquat\t415\n'
    'bwsquat\t415\n'
    'freesquat\t415\n'
    'lowbarbacksquat\t416\n'
    'lowbarsquat\t416\n'
    'lbb\t416\n'
    'boxsquat\t417\n'
    'barbellboxsquat\t417\n'
    'backsquattobox\t417\n'
    'safetybarsquat\t418\n'
    'ssbsquat\t418\n'
    'safetysquatbarsquat\t418\n'
    'yokebarsquat\t418\n'
    'pausedsquat\t419\n'
    'pausesquat\t419\n'
    'pausebacksquat\t419\n'
    'pausedbacksquat\t419\n'
    'halfsquat\t420\n'
    'halfbacksquat\t420\n'
    'halfdepthsquat\t420\n'
    'quartersquat\t421\n'
    'quarterbacksquat\t421\n'
    'partialsquat\t421\n'
    'pinsquat\t422\n'
    'deadstopsquat\t422\n'
    'bottomupsquat\t422\n'
    'squatfrompin\t422\n'
    'guidedbarsquat\t423\n'
    'fixedtracksquat\t423\n'
    'guidedbarbacksquat\t423\n'
    'hacksquat\t424\n'
    'machinehacksquat\t424\n'
    'hacksquatmachine\t424\n'
    'sledhacksquat\t424\n'
    'pendulumsquat\t425\n'
    'machinependulumsquat\t425\n'
    'machinesquat\t426\n'
    'leversquatmachine\t426\n'
    'vsquat\t426\n'
    'standingsquatmachine\t426\n'
    'beltsquat\t427\n'
    'hipbeltsquat\t427\n'
    'beltsquatmachine\t427\n'
    'heelelevatedsquat\t428\n'
    'cyclistsquat\t428\n'
    'heelelevatedgobletsquat\t428\n'
    'heelraisedsquat\t428\n'
    'wedgesquat\t428\n'
    'slantboardsquat\t428\n'
    'overheadsquat\t429\n'
    'barbelloverheadsquat\t429\n'
    'ohs\t429\n'
    'dumbbellsquat\t430\n'
    'dbsquat\t430\n'
    'dumbbellsuitcasesquat\t430\n'
    'twodumbbellsquat\t430\n'
    'kettlebellfrontsquat\t431\n'
    'doublekettlebellfrontsquat\t431\n'
    'kbfrontsquat\t431\n'
    'kettlebellracksquat\t431\n'
    'dumbbellfrontsquat\t431\n'
    'sumosquat\t432\n'
    'pliesquat\t432\n'
    'widestancesquat\t432\n'
    'dumbbellsumosquat\t432\n'
    'kettlebellsumosquat\t432\n'
    'landminesquat\t433\n'
    'angledbarsquat\t433\n'
    'landminegobletsquat\t433\n'
    'sandbagsquat\t434\n'
    'sandbagbearhugsquat\t434\n'
    'bearhugsquat\t434\n'
    'sandbagfrontsquat\t434\n'
    'elbowcrooksquat\t435\n'
    'crookoftheelbowsquat\t435\n'
    'barinelbowsquat\t435\n'
    'handassistedsafetybarsquat\t436\n'
    'handassistedsquat\t436\n'
    'assistedsafetybarsquat\t436\n'
    'bandedsquat\t437\n'
    'bandsquat\t437\n'
    'resistancebandsquat\t437\n'
    'bandresistedsquat\t437\n'
    'suspensionsquat\t438\n'
    'assistedsquat\t438\n'
    'suspensionassistedsquat\t438\n'
    'strapsquat\t438\n'
    'chairsquat\t439\n'
    'sittostand\t439\n'
    'chairstand\t439\n'
    'bodyweightboxsquat\t439\n'
    'sittostandfromchair\t439\n'
    'wallballsquat\t440\n'
    'ballwallsquat\t440\n'
    'wallsquatwithball\t440\n'
    'stabilityballwallsquat\t440\n'
    'spanishsquat\t441\n'
    'bandbehindkneesquat\t441\n'
    'bandedspanishsquat\t441\n'
    'sissysquat\t442\n'
    'sissysquatmachine\t442\n'
    'sissysquatbench\t442\n'
    'thruster\t443\n'
    'barbellthruster\t443\n'
    'squattopress\t443\n'
    'frontsquattopress\t443\n'
    'dumbbellthruster\t444\n'
    'dbthruster\t444\n'
    'dumbbellsquattopress\t444\n'
    'kettlebellthruster\t444\n'
    'cossacksquat\t445\n'
    'sidetosidesquat\t445\n'
    'cossacklunge\t445\n'
    'pistolsquat\t446\n'
    'pistol\t446\n'
    'singlelegpistolsquat\t446\n'
    'onelegsquat\t446\n'
    'singlelegboxsquat\t447\n'
    'singlelegsquattobox\t447\n'
    'singlelegsittostand\t447\n'
    'onelegchairsquat\t447\n'
    'singlelegbenchsquat\t447\n'
    'singlelegsquat\t448\n'
    'singlelegsquatoffbox\t448\n'
    'slsquat\t448\n'
    'offboxpistol\t448\n'
    'skatersquat\t449\n'
    'airbornelunge\t449\n'
    'skaterlunge\t449\n'
    'shrimpsquat\t450\n'
    'singlelegshrimpsquat\t450\n'
    'wallsit\t451\n'
    'wallsquat\t451\n'
    'wallsquathold\t451\n'
    'wallsithold\t451\n'
    'isometricwallsit\t451\n'
    'singlelegwallsit\t452\n'
    'onelegwallsit\t452\n'
    'singlelegwallsquat\t452\n'
    'spanishsquathold\t453\n'
    'isometricspanishsquat\t453\n'
    'spanishsquatisometric\t453\n'
    'isometricsquat\t454\n'
    'isometricbacksquat\t454\n'
    'squatisometric\t454\n'
    'squatagainstpin\t454\n'
    'isometricpinsquat\t454\n'
    'squathold\t455\n'
    'deepsquathold\t455\n'
    'gobletsquathold\t455\n'
    'bodyweightsquathold\t455\n'
    'splitsquathold\t456\n'
    'isometricsplitsquat\t456\n'
    'splitsquatisometric\t456\n'
    'lungehold\t456\n'
    'isometriclunge\t456\n'
    'legpress\t457\n'
    '45degreelegpress\t457\n'
    'inclinelegpress\t457\n'
    'sledlegpress\t457\n'
    'lp\t457\n'
    'machinelegpress\t457\n'
    'horizontallegpress\t458\n'
    'seatedlegpress\t458\n'
    'selectorisedlegpress\t458\n'
    'stacklegpress\t458\n'
    'singleleglegpress\t459\n'
    'oneleglegpress\t459\n'
    'unilaterallegpress\t459\n'
    'sllegpress\t459\n'
    'highfootlegpress\t460\n'
    'highandwidelegpress\t460\n'
    'legpressfeethigh\t460\n'
    'widestancelegpress\t460\n'
    'lowfootlegpress\t461\n'
    'legpressfeetlow\t461\n'
    'narrowstancelegpress\t461\n'
    'quadfocusedlegpress\t461\n'
    'legextension\t462\n'
    'kneeextension\t462\n'
    'seatedlegextension\t462\n'
    'machinelegextension\t462\n'
    'seatedkneeextension\t462\n'
    'quadextension\t462\n'
    'singleleglegextension\t463\n'
    'oneleglegextension\t463\n'
    'singlelegkneeextension\t463\n'
    'unilaterallegextension\t463\n'
    'reclinedlegextension\t464\n'
    'leanedbacklegextension\t464\n'
    'leanbacklegextension\t464\n'
    'reclinedkneeextension\t464\n'
    'reversenordiccurl\t465\n'
    'reversenordic\t465\n'
    'kneelingquadlean\t465\n'
    'reversenordichamstringcurl\t465\n'
    'naturallegextension\t465\n'
    'bandassistedreversenordiccurl\t466\n'
    'assistedreversenordic\t466\n'
    'cablelegextension\t467\n'
    'standingcablekneeextension\t467\n'
    'cablekneeextension\t467\n'
    'bandlegextension\t468\n'
    'bandedlegextension\t468\n'
    'seatedbandkneeextension\t468\n'
    'bandkneeextension\t468\n'
    'ankleweightlegextension\t469\n'
    'longarcquad\t469\n'
    'seatedkneeextensionwithankleweight\t469\n'
    'ankleweightkneeextension\t469\n'
    'terminalkneeextension\t470\n'
    'tke\t470\n'
    'bandtke\t470\n'
    'bandedterminalkneeextension\t470\n'
    'cabletke\t470\n'
    'isometriclegextension\t471\n'
    'isometrickneeextension\t471\n'
    'legextensionhold\t471\n'
    'kneeextensionisometric\t471\n'
    'quadset\t472\n'
    'quadricepset\t472\n'
    'isometricquadset\t472\n'
    'staticquadcontraction\t472\n'
    'splitsquat\t473\n'
    'bodyweightsplitsquat\t473\n'
    'staticlunge\t473\n'
    'stationarylunge\t473\n'
    'dumbbellsplitsquat\t474\n'
    'dbsplitsquat\t474\n'
    'gobletsplitsquat\t474\n'
    'kettlebellsplitsquat\t474\n'
    'rearfootelevatedsplitsquat\t475\n'
    'bulgariansplitsquat\t475\n'
    'rfess\t475\n'
    'bss\t475\n'
    'dumbbellbulgariansplitsquat\t475\n'
    'dumbbellrearfootelevatedsplitsquat\t475\n'
    'rearfootraisedsplitsquat\t475\n'
    'barbellsplitsquat\t476\n'
    'bbsplitsquat\t476\n'
    'barbellstaticlunge\t476\n'
    'barbellrearfootelevatedsplitsquat\t477\n'
    'barbellbulgariansplitsquat\t477\n'
    'barbellrfess\t477\n'
    'bbrfess\t477\n'
    'frontfootelevatedsplitsquat\t478\n'
    'ffess\t478\n'
    'deficitsplitsquat\t478\n'
    'frontfootraisedsplitsquat\t478\n'
    'guidedbarsplitsquat\t479\n'
    'guidedbarlunge\t479\n'
    'fixedtracksplitsquat\t479\n'
    'handassistedsafetybarsplitsquat\t480\n'
    'handassistedsplitsquat\t480\n'
    'safetybarsplitsquat\t480\n'
    'forwardlunge\t481\n'
    'lunge\t481\n'
    'dumbbelllunge\t481\n'
    'dblunge\t481\n'
    'frontlunge\t481\n'
    'dumbbellforwardlunge\t481\n'
    'gobletlunge\t481\n'
    'kettlebelllunge\t481\n'
    'walkinglunge\t482\n'
    'dumbbellwalkinglunge\t482\n'
    'dbwalkinglunge\t482\n'
    'lungewalk\t482\n'
    'travellinglunge\t482\n'
    'reverselunge\t483\n'
    'dumbbellreverselunge\t483\n'
    'dbreverselunge\t483\n'
    'backwardlunge\t483\n'
    'stepbacklunge\t483\n'
    'rearlunge\t483\n'
    'gobletreverselunge\t483\n'
    'kettlebellreverselunge\t483\n'
    'bodyweightlunge\t484\n'
    'bwlunge\t484\n'
    'bodyweightwalkinglunge\t484\n'
    'bodyweightreverselunge\t484\n'
    'alternatinglunge\t484\n'
    'laterallunge\t485\n'
    'sidelunge\t485\n'
    'dumbbelllaterallunge\t485\n'
    'gobletlaterallunge\t485\n'
    'barbelllunge\t486\n'
    'barbellforwardlunge\t486\n'
    'bblunge\t486\n'
    'barbellfrontlunge\t486\n'
    'barbellreverselunge\t487\n'
    'bbreverselunge\t487\n'
    'barbellstepbacklunge\t487\n'
    'barbellwalkinglunge\t488\n'
    'bbwalkinglunge\t488\n'
    'deficitreverselunge\t489\n'
    'reverselungefrombox\t489\n'
    'deficitstepbacklunge\t489\n'
    'frontrackreverselunge\t490\n'
    'frontracklunge\t490\n'
    'barbellfrontracklunge\t490\n'
    'frontsquatlunge\t490\n'
    'overheadwalkinglunge\t491\n'
    'overheadlunge\t491\n'
    'plateoverheadlunge\t491\n'
    'overheadplatewalkinglunge\t491\n'
    'curtsylunge\t492\n'
    'crossoverlunge\t492\n'
    'curtseylunge\t492\n'
    'crossbehindlunge\t492\n'
    'sliderreverselunge\t493\n'
    'slidingreverselunge\t493\n'
    'slideboardreverselunge\t493\n'
    'slideboardlunge\t493\n'
    'sliderlaterallunge\t494\n'
    'slidinglaterallunge\t494\n'
    'slideboardlaterallunge\t494\n'
    'suspensionlunge\t495\n'
    'suspensionassistedlunge\t495\n'
    'assistedlunge\t495\n'
    'suspensionsplitsquat\t495\n'
    'lungewithrotation\t496\n'
    'rotationallunge\t496\n'
    'medicineballlungewithrotation\t496\n'
    'lungetwist\t496\n'
    'stepup\t497\n'
    'dumbbellstepup\t497\n'
    'dbstepup\t497\n'
    'boxstepup\t497\n'
    'forwardstepup\t497\n'
    'bodyweightstepup\t498\n'
    'bwstepup\t498\n'
    'stepupwithoutload\t498\n'
    'stairstepup\t498\n'
    'barbellstepup\t499\n'
    'bbstepup\t499\n'
    'highstepup\t500\n'
    'highboxstepup\t500\n'
    'lateralstepup\t501\n'
    'sidestepup\t501\n'
    'dumbbelllateralstepup\t501\n'
    'crossoverstepup\t502\n'
    'stepdown\t503\n'
    'lateralstepdown\t503\n'
    'forwardstepdown\t503\n'
    'eccentricstepdown\t503\n'
    'heeltap\t503\n'
    'boxstepdown\t503\n'
    'heelraisedstepup\t504\n'
    'heelelevatedstepup\t504\n'
    'quadstepup\t504\n'
    'frontofboxstepup\t504\n'
    'wedgestepup\t504\n'
    'neckflexion\t505\n'
    'lyingneckflexion\t505\n'
    'plateneckflexion\t505\n'
    'neckcurl\t505\n'
    'plateneckcurl\t505\n'
    'weightedneckflexion\t505\n'
    'neckcrunch\t505\n'
    'neckextension\t506\n'
    'proneneckextension\t506\n'
    'plateneckextension\t506\n'
    'lyingneckextension\t506\n'
    'weightedneckextension\t506\n'
    'isometricneckflexion\t507\n'
    'neckflexionhold\t507\n'
    'handresistedneckflexion\t507\n'
    'manualneckflexion\t507\n'
    'frontneckisometric\t507\n'
    'isometricneckextension\t508\n'
    'neckextensionhold\t508\n'
    'handresistedneckextension\t508\n'
    'manualneckextension\t508\n'
    'rearneckisometric\t508\n'
    'isometricnecksidebend\t509\n'
    'necksidebendhold\t509\n'
    'handresistednecksidebend\t509\n'
    'lateralneckisometric\t509\n'
    'isometriclateralneckflexion\t509\n'
    'sideneckisometric\t509\n'
    'isometricneckrotation\t510\n'
    'neckrotationhold\t510\n'
    'handresistedneckrotation\t510\n'
    'manualneckrotation\t510\n'
    'chintuck\t511\n'
    'deepneckflexorhold\t511\n'
    'craniocervicalflexion\t511\n'
    'lyingchintuck\t511\n'
    'necknod\t511\n'
    'lyingheadlifthold\t512\n'
    'supineheadhold\t512\n'
    'headlift\t512\n'
    'supineneckhold\t512\n'
    'neckflexorendurancehold\t512\n'
    'necksidebend\t513\n'
    'lateralneckflexion\t513\n'
    'sideneckraise\t513\n'
    'lyingnecksidebend\t513\n'
    'platenecksidebend\t513\n'
    'lateralneckraise\t513\n'
    'harnessneckextension\t514\n'
    'neckharness\t514\n'
    'neckharnessextension\t514\n'
    'headharnessextension\t514\n'
    'headharness\t514\n'
    'harnessneckflexion\t515\n'
    'neckharnessflexion\t515\n'
    'headharnessflexion\t515\n'
    'machineneckextension\t516\n'
    'neckmachineextension\t516\n'
    'fourwayneckmachineextension\t516\n'
    'machineneckflexion\t517\n'
    'neckmachine\t517\n'
    'neckmachineflexion\t517\n'
    'fourwayneck\t517\n'
    'fourwayneckmachineflexion\t517\n'
    'machinenecksidebend\t518\n'
    'neckmachinesidebend\t518\n'
    'machinelateralneckflexion\t518\n'
    'bandneckextension\t519\n'
    'bandedneckextension\t519\n'
    'resistancebandneckextension\t519\n'
    'bandneckflexion\t520\n'
    'bandedneckflexion\t520\n'
    'resistancebandneckflexion\t520\n'
    'bandnecksidebend\t521\n'
    'bandednecksidebend\t521\n'
    'resistancebandlateralneckflexion\t521\n'
    'bandneckrotation\t522\n'
    'bandedneckrotation\t522\n'
    'cableneckrotation\t522\n'
    'quadrupedneckhold\t523\n'
    'allfourneckhold\t523\n'
    'fourpointneckhold\t523\n'
    'quadrupedheadretraction\t523\n'
    'stabilityballneckhold\t524\n'
    'ballneckisometric\t524\n'
    'wallballneckhold\t524\n'
    'neckballpress\t524\n'
    'neckbridge\t525\n'
    'backneckbridge\t525\n'
    'rearneckbridge\t525\n'
    'wrestlingbridge\t525\n'
    'headbridge\t525\n'
    'bentoverrow\t526\n'
    'barbellrow\t526\n'
    'bentoverbarbellrow\t526\n'
    'bbrow\t526\n'
    'bentrow\t526\n'
    'barbellbentoverrow\t526\n'
    'bor\t526\n'
    'pullup\t527\n'
    'overhandpullup\t527\n'
    'strictpullup\t527\n'
    'bodyweightpullup\t527\n'
    'pronatedpullup\t527\n'
    'latpulldown\t528\n'
    'pulldown\t528\n'
    'lpd\t528\n'
    'cablepulldown\t528\n'
    'frontpulldown\t528\n'
    'overhandpulldown\t528\n'
    'overhandlatpulldown\t528\n'
    'machinepulldown\t528\n'
    'seatedcablerow\t529\n'
    'cablerow\t529\n'
    'seatedrow\t529\n'
    'lowrow\t529\n'
    'seatedcablepull\t529\n'
    'closegripseatedrow\t529\n'
    'closegripcablerow\t529\n'
    'onearmdumbbellrow\t530\n'
    'dumbbellrow\t530\n'
    'dbrow\t530\n'
    'singlearmdumbbellrow\t530\n'
    'onearmdbrow\t530\n'
    'singlearmdbrow\t530\n'
    'supporteddumbbellrow\t530\n'
    'onearmrow\t530\n'
    'singlearmrow\t530\n'
    'threepointrow\t530\n'
    'chinup\t531\n'
    'underhandpullup\t531\n'
    'chin\t531\n'
    'supinatedpullup\t531\n'
    'bodyweightchinup\t531\n'
    'invertedrow\t532\n'
    'bodyrow\t532\n'
    'bodyweightrow\t532\n'
    'horizontalpullup\t532\n'
    'australianpullup\t532\n'
    'supinerow\t532\n'
    'facepull\t533\n'
    'cablefacepull\t533\n'
    'ropefacepull\t533\n'
    'chestsupporteddumbbellrow\t534\n'
    'chestsupportedrow\t534\n'
    'inclinedumbbellrow\t534\n'
    'chestsupporteddbrow\t534\n'
    'inclinerow\t534\n'
    'inclinebenchrow\t534\n'
    'csr\t534\n'
    'machinerow\t535\n'
    'seatedmachinerow\t535\n'
    'rowmachine\t535\n'
    'chestsupportedmachinerow\t535\n'
    'plateloadedrow\t535\n'
    'seatedrowmachine\t535\n'
    'tbarrow\t536\n'
    'landminerow\t536\n'
    'tbar\t536\n'
    'cornerbarrow\t536\n'
    'standingtbarrow\t536\n'
    'chestsupportedtbarrow\t537\n'
    'supportedtbarrow\t537\n'
    'lyingtbarrow\t537\n'
    'machinetbarrow\t537\n'
    'neutralgriplatpulldown\t538\n'
    'neutralgrippulldown\t538\n'
    'parallelgrippulldown\t538\n'
    'hammergrippulldown\t538\n'
    'closegriplatpulldown\t539\n'
    'closegrippulldown\t539\n'
    'vbarpulldown\t539\n'
    'narrowgrippulldown\t539\n'
    'narrowgriplatpulldown\t539\n'
    'underhandlatpulldown\t540\n'
    'underhandpulldown\t540\n'
    'reversegrippulldown\t540\n'
    'supinatedpulldown\t540\n'
    'reversegriplatpulldown\t540\n'
    'supinatedlatpulldown\t540\n'
    'widegriplatpulldown\t541\n'
    'widegrippulldown\t541\n'
    'widepulldown\t541\n'
    'widelatpulldown\t541\n'
    'onearmlatpulldown\t542\n'
    'singlearmlatpulldown\t542\n'
    'singlearmpulldown\t542\n'
    'onearmpulldown\t542\n'
    'singlearmcablepulldown\t542\n'
    'halfkneelingonearmpulldown\t542\n'
    'behindtheneckpulldown\t543\n'
    'pulldownbehindtheneck\t543\n'
    'btnpulldown\t543\n'
    'rearpulldown\t543\n'
    'bandpulldown\t544\n'
    'bandlatpulldown\t544\n'
    'bandedpulldown\t544\n'
    'resistancebandpulldown\t544\n'
    'plateloadedpulldown\t545\n'
    'leverpulldown\t545\n'
    'convergingpulldown\t545\n'
    'converginglatpulldown\t545\n'
    'assistedpullup\t546\n'
    'machineassistedpullup\t546\n'
    'pullupmachine\t546\n'
    'assistedpullupmachine\t546\n'
    'assistedchinup\t547\n'
    'machineassistedchinup\t547\n'
    'assistedchinupmachine\t547\n'
    'bandassistedpullup\t548\n'
    'bandedpullup\t548\n'
    'bandpullup\t548\n'
    'pullupwithband\t548\n'
    'negativepullup\t549\n'
    'eccentricpullup\t549\n'
    'pulluplowering\t549\n'
    'slowloweringpullup\t549\n'
    'jumpingnegativepullup\t549\n'
    'weightedpullup\t550\n'
    'loadedpullup\t550\n'
    'pullupwithaddedweight\t550\n'
    'weightedchinup\t551\n'
    'loadedchinup\t551\n'
    'chinupwithaddedweight\t551\n'
    'weightedchin\t551\n'
    'neutralgrippullup\t552\n'
    'parallelgrippullup\t552\n'
    'hammergrippullup\t552\n'
    'neutralgripchinup\t552\n'
    'neutralpullup\t552\n'
    'weightedneutralgrippullup\t553\n'
    'loadedneutralgrippullup\t553\n'
    'widegrippullup\t554\n'
    'widepullup\t554\n'
    'widehandpullup\t554\n'
    'closegrippullup\t555\n'
    'narrowgrippullup\t555\n'
    'closegripchinup\t555\n'
    'narrowpullup\t555\n'
    'mixedgrippullup\t556\n'
    'alternatinggrippullup\t556\n'
    'commandopullup\t556\n'
    'mixedgripchinup\t556\n'
    'chesttobarpullup\t557\n'
    'c2bpullup\t557\n'
    'highpullup\t557\n'
    'chesttobar\t557\n'
    'ringpullup\t558\n'
    'gymnasticringpullup\t558\n'
    'suspensionpullup\t558\n'
    'towelpullup\t559\n'
    'towelgrippullup\t559\n'
    'ropepullup\t559\n'
    'lsitpullup\t560\n'
    'lpullup\t560\n'
    'archerpullup\t561\n'
    'sidetosidepullup\t561\n'
    'typewriterpullup\t561\n'
    'onearmchinup\t562\n'
    'singlearmchinup\t562\n'
    'onearmpullup\t562\n'
    'singlearmpullup\t562\n'
    'muscleup\t563\n'
    'barmuscleup\t563\n'
    'strictmuscleup\t563\n'
    'ringmuscleup\t564\n'
    'strictringmuscleup\t564\n'
    'pulluphold\t565\n'
    'isometricpullup\t565\n'
    'toppulluphold\t565\n'
    'pullupisometrichold\t565\n'
    'chinuphold\t566\n'
    'flexedarmhang\t566\n'
    'bentarmhang\t566\n'
    'isometricchinup\t566\n'
    'chinoverbarhold\t566\n'
    'scapularpullup\t567\n'
    'scappullup\t567\n'
    'activehang\t567\n'
    'hangingshoulderbladepull\t567\n'
    'shouldershrugdownhang\t567\n'
    'frontleverhold\t568\n'
    'frontlever\t568\n'
    'tuckfrontlever\t568\n'
    'frontleverrowhold\t568\n'
    'deadstoprow\t569\n'
    'deadstopbarbellrow\t569\n'
    'rowfromthefloor\t569\n'
    'strictfloorrow\t569\n'
    'explosivebarbellrow\t569\n'
    'underhandbarbellrow\t570\n'
    'reversegriprow\t570\n'
    'underhandrow\t570\n'
    'supinatedbarbellrow\t570\n'
    'reversegripbarbellrow\t570\n'
    'underhandbentoverrow\t570\n'
    'widegripbentoverrow\t571\n'
    'widegripbarbellrow\t571\n'
    'elbowoutbarbellrow\t571\n'
    'snatchgriprow\t572\n'
    'snatchgripbarbellrow\t572\n'
    'snatchgripbentoverrow\t572\n'
    'sealrow\t573\n'
    'benchpull\t573\n'
    'lyingbenchrow\t573\n'
    'pronerow\t573\n'
    'pronebarbellrow\t573\n'
    'highbenchrow\t573\n'
    'guidedbarrow\t574\n'
    'guidedbarbentoverrow\t574\n'
    'fixedtrackrow\t574\n'
    'trapbarrow\t575\n'
    'hexbarrow\t575\n'
    'trapbarbentoverrow\t575\n'
    'tempobentoverrow\t576\n'
    'pausedbarbellrow\t576\n'
    'slowbarbellrow\t576\n'
    'pauserow\t576\n'
    'bentoverdumbbellrow\t577\n'
    'twoarmdumbbellrow\t577\n'
    'doubledumbbellrow\t577\n'
    'bentoverdbrow\t577\n'
    'dumbbellbentoverrow\t577\n'
    'kettlebellrow\t578\n'
    'kbrow\t578\n'
    'bentoverkettlebellrow\t578\n'
    'doublekettlebellrow\t578\n'
    'alternatingkettlebellrow\t579\n'
    'gorillarow\t579\n'
    'widestancekettlebellrow\t579\n'
    'onearmkettlebellrow\t580\n'
    'singlearmkettlebellrow\t580\n'
    'onearmkbrow\t580\n'
    'splitstancekettlebellrow\t580\n'
    'onearmlandminerow\t581\n'
    'singlearmlandminerow\t581\n'
    'sideonlandminerow\t581\n'
    'onearmtbarrow\t581\n'
    'angledbarrow\t581\n'
    'plankrow\t582\n'
    'renegaderow\t582\n'
    'pushuppositionrow\t582\n'
    'dumbbellplankrow\t582\n'
    'onearmmachinerow\t583\n'
    'singlearmmachinerow\t583\n'
    'unilateralmachinerow\t583\n'
    'isolateralrow\t583\n'
    'onearmcablerow\t584\n'
    'singlearmcablerow\t584\n'
    'onearmseatedcablerow\t584\n'
    'singlearmseatedrow\t584\n'
    'standingonearmcablerow\t584\n'
    'widegripseatedrow\t585\n'
    'widegripcablerow\t585\n'
    'wideseatedrow\t585\n'
    'widegripseatedcablerow\t585\n'
    'underhandcablerow\t586\n'
    'underhandseatedrow\t586\n'
    'reversegripcablerow\t586\n'
    'supinatedcablerow\t586\n'
    'standingcablerow\t587\n'
    'standingrow\t587\n'
    'splitstancecablerow\t587\n'
    'highrow\t588\n'
    'highcablerow\t588\n'
    'kneelinghighrow\t588\n'
    'machinehighrow\t588\n'
    'halfkneelingcablerow\t588\n'
    'hightolowrow\t588\n'
    'bandrow\t589\n'
    'resistancebandrow\t589\n'
    'bandedrow\t589\n'
    'seatedbandrow\t589\n'
    'standingbandrow\t589\n'
    'invertedrowwithbentknee\t590\n'
    'bentkneeinvertedrow\t590\n'
    'bentkneebodyrow\t590\n'
    'easyinvertedrow\t590\n'
    'feetelevatedinvertedrow\t591\n'
    'elevatedinvertedrow\t591\n'
    'declineinvertedrow\t591\n'
    'weightedinvertedrow\t592\n'
    'loadedinvertedrow\t592\n'
    'underhandinvertedrow\t593\n'
    'reversegripinvertedrow\t593\n'
    'supinatedinvertedrow\t593\n'
    'suspensionrow\t594\n'
    'suspendedrow\t594\n'
    'slingrow\t594\n'
    'ringrow\t594\n'
    'straprow\t594\n'
    'onearmsuspensionrow\t595\n'
    'singlearmsuspensionrow\t595\n'
    'singlearmringrow\t595\n'
    'onearminvertedrow\t595\n'
    'invertedrowhold\t596\n'
    'isometricinvertedrow\t596\n'
    'topinvertedrowhold\t596\n'
    'chestsupportedrearshoulderrow\t597\n'
    'reardeltrow\t597\n'
    'rearshoulderrow\t597\n'
    'widechestsupportedrow\t597\n'
    'elbowoutdumbbellrow\t597\n'
    'dumbbellreardeltrow\t597\n'
    'straightarmpulldown\t598\n'
    'straightarmcablepulldown\t598\n'
    'latpushdown\t598\n'
    'stiffarmpulldown\t598\n'
    'cablepullover\t598\n'
    'standingcablepullover\t598\n'
    'ropestraightarmpulldown\t598\n'
    'bandstraightarmpulldown\t599\n'
    'bandedstraightarmpulldown\t599\n'
    'bandlatpushdown\t599\n'
    'dumbbellpullover\t600\n'
    'dbpullover\t600\n'
    'pullover\t600\n'
    'bentarmpullover\t600\n'
    'crossbenchpullover\t600\n'
    'barbellpullover\t601\n'
    'bentbarpullover\t601\n'
    'ezbarpullover\t601\n'
    'machinepullover\t602\n'
    'pullovermachine\t602\n'
    'seatedpullover\t602\n'
    'onearmstraightarmpulldown\t603\n'
    'singlearmstraightarmpulldown\t603\n'
    'singlearmcablepullover\t603\n'
    'lyingcablepullover\t604\n'
    'cablebenchpullover\t604\n'
    'floorcablepullover\t604\n'
    'dumbbellreversefly\t605\n'
    'reversefly\t605\n'
    'reardeltfly\t605\n'
    'reardeltraise\t605\n'
    'bentoverreversefly\t605\n'
    'bentoverlateralraise\t605\n'
    'bentoverfly\t605\n'
    'rearlateralraise\t605\n'
    'dbreversefly\t605\n'
    'rearshoulderfly\t605\n'
    'reverseflye\t605\n'
    'machinereversefly\t606\n'
    'reversepecdeck\t606\n'
    'reardeltmachine\t606\n'
    'machinereardeltfly\t606\n'
    'reversemachinefly\t606\n'
    'rearshouldermachine\t606\n'
    'chestsupportedreversefly\t607\n'
    'inclinereversefly\t607\n'
    'chestsupportedreardeltfly\t607\n'
    'inclinereardeltraise\t607\n'
    'inclinebenchreversefly\t607\n'
    'cablereversefly\t608\n'
    'cablereardeltfly\t608\n'
    'reardeltcablefly\t608\n'
    'reversecablecrossover\t608\n'
    'cablereversecrossover\t608\n'
    'onearmcablereversefly\t609\n'
    'singlearmcablereardeltfly\t609\n'
    'singlearmcablereversefly\t609\n'
    'onearmreardeltcablefly\t609\n'
    'bandpullapart\t610\n'
    'pullapart\t610\n'
    'bandreversefly\t610\n'
    'bandedpullapart\t610\n'
    'suspensionreversefly\t611\n'
    'ringreversefly\t611\n'
    'suspendedreversefly\t611\n'
    'suspensiontfly\t611\n'
    'sidelyingreversefly\t612\n'
    'sidelyingreardeltraise\t612\n'
    'lyingreardeltraise\t612\n'
    'sidelyingrearshoulderfly\t612\n'
    'bandfacepull\t613\n'
    'bandedfacepull\t613\n'
    'resistancebandfacepull\t613\n'
    'suspensionfacepull\t614\n'
    'ringfacepull\t614\n'
    'suspendedfacepull\t614\n'
    'facepullwithexternalrotation\t615\n'
    'facepulltoexternalrotation\t615\n'
    'facepullwithrotation\t615\n'
    'highfacepull\t615\n'
    'barbellshrug\t616\n'
    'bbshrug\t616\n'
    'shrug\t616\n'
    'barbellshouldershrug\t616\n'
    'dumbbellshrug\t617\n'
    'dbshrug\t617\n'
    'dumbbellshouldershrug\t617\n'
    'standingdumbbellshrug\t617\n'
    'trapbarshrug\t618\n'
    'hexbarshrug\t618\n'
    'machineshrug\t619\n'
    'shrugmachine\t619\n'
    'calfmachineshrug\t619\n'
    'levershrug\t619\n'
    'cableshrug\t620\n'
    'lowcableshrug\t620\n'
    'guidedbarshrug\t621\n'
    'fixedtrackshrug\t621\n'
    'kettlebellshrug\t622\n'
    'kbshrug\t622\n'
    'snatchgripshrug\t623\n'
    'widegripshrug\t623\n'
    'snatchshrug\t623\n'
    'behindthebackshrug\t624\n'
    'behindbackbarbellshrug\t624\n'
    'rearshrug\t624\n'
    'powershrug\t625\n'
    'barbellpowershrug\t625\n'
    'jumpshrugfromthehang\t625\n'
    'explosiveshrug\t625\n'
    'chestsupportedshrug\t626\n'
    'inclineshrug\t626\n'
    'proneshrug\t626\n'
    'chestsupporteddumbbellshrug\t626\n'
    'retractionshrug\t626\n'
    'inclinedumbbellshrug\t626\n'
    'shrughold\t627\n'
    'isometricshrug\t627\n'
    'topshrughold\t627\n'
    'benchpress\t628\n'
    'barbellbenchpress\t628\n'
    'flatbenchpress\t628\n'
    'flatbarbellbenchpress\t628\n'
    'bench\t628\n'
    'bp\t628\n'
    'bbbenchpress\t628\n'
    'pushup\t629\n'
    'pressup\t629\n'
    'fullpushup\t629\n'
    'floorpushup\t629\n'
    'dumbbellbenchpress\t630\n'
    'dbbenchpress\t630\n'
    'dbbench\t630\n'
    'flatdumbbellpress\t630\n'
    'flatdbpress\t630\n'
    'dumbbellchestpress\t630\n'
    'dbpress\t630\n'
    'dumbbellpress\t630\n'
    'overheadpress\t631\n'
    'ohp\t631\n'
    'militarypress\t631\n'
    'strictpress\t631\n'
    'standingpress\t631\n'
    'barbelloverheadpress\t631\n'
    'standingbarbellpress\t631\n'
    'barbellshoulderpress\t631\n'
    'standingoverheadpress\t631\n'
    'shoulderpress\t631\n'
    'overheadbarbellpress\t631\n'
    'pressoverhead\t631\n'
    'inclinebenchpress\t632\n'
    'inclinebarbellpress\t632\n'
    'inclinebarbellbenchpress\t632\n'
    'inclinepress\t632\n'
    'inclinebench\t632\n'
    'bbinclinepress\t632\n'
    'inclinedumbbellpress\t633\n'
    'inclinedbpress\t633\n'
    'inclinedumbbellbenchpress\t633\n'
    'inclinedbbenchpress\t633\n'
    'seateddumbbellshoulderpress\t634\n'
    'seateddumbbellpress\t634\n'
    'seateddbpress\t634\n'
    'seateddbshoulderpress\t634\n'
    'dumbbellshoulderpress\t634\n'
    'dbshoulderpress\t634\n'
    'seateddumbbelloverheadpress\t634\n'
    'dbsp\t634\n'
    'dip\t635\n'
    'parallelbardip\t635\n'
    'chestdip\t635\n'
    'bardip\t635\n'
    'tricepdip\t635\n'
    'bodyweightdip\t635\n'
    'machinechestpress\t636\n'
    'chestpress\t636\n'
    'seatedchestpress\t636\n'
    'chestpressmachine\t636\n'
    'seatedmachinepress\t636\n'
    'verticalchestpress\t636\n'
    'closegripbenchpress\t637\n'
    'cgbp\t637\n'
    'closegripbench\t637\n'
    'narrowgripbenchpress\t637\n'
    'closegripbarbellbenchpress\t637\n'
    'machineshoulderpress\t638\n'
    'shoulderpressmachine\t638\n'
    'machineoverheadpress\t638\n'
    'seatedmachineshoulderpress\t638\n'
    'overheadpressmachine\t638\n'
    'dumbbellfly\t639\n'
    'dbfly\t639\n'
    'dumbbellflye\t639\n'
    'flatdumbbellfly\t639\n'
    'chestfly\t639\n'
    'dumbbellchestfly\t639\n'
    'pecfly\t639\n'
    'flatfly\t639\n'
    'cablefly\t640\n'
    'cablecrossover\t640\n'
    'cablechestfly\t640\n'
    'standingcablefly\t640\n'
    'cableflye\t640\n'
    'crossover\t640\n'
    'machinefly\t641\n'
    'pecdeck\t641\n'
    'machinechestfly\t641\n'
    'pecdeckfly\t641\n'
    'seatedflymachine\t641\n'
    'butterflymachine\t641\n'
    'pecflymachine\t641\n'
    'standingdumbbellshoulderpress\t642\n'
    'standingdumbbellpress\t642\n'
    'standingdbpress\t642\n'
    'dumbbelloverheadpress\t642\n'
    'dboverheadpress\t642\n'
    'standingdumbbelloverheadpress\t642\n'
    'weighteddip\t643\n'
    'loadeddip\t643\n'
    'dipwithaddedweight\t643\n'
    'weightedparallelbardip\t643\n'
    'assisteddip\t644\n'
    'machineassisteddip\t644\n'
    'assisteddipmachine\t644\n'
    'declinebenchpress\t645\n'
    'declinebarbellpress\t645\n'
    'declinebarbellbenchpress\t645\n'
    'declinepress\t645\n'
    'declinebench\t645\n'
    'declinedumbbellpress\t646\n'
    'declinedbpress\t646\n'
    'declinedumbbellbenchpress\t646\n'
    'pausedbenchpress\t647\n'
    'pausebench\t647\n'
    'pausebenchpress\t647\n'
    'competitionbenchpress\t647\n'
    'compbench\t647\n'
    'benchpresswithalongpause\t648\n'
    'longpausebenchpress\t648\n'
    '3secondpausebenchpress\t648\n'
    'widegripbenchpress\t649\n'
    'widebenchpress\t649\n'
    'widegripbench\t649\n'
    'benchpressstoppedabovethechest\t650\n'
    'shortstopbenchpress\t650\n'
    'hoverbenchpress\t650\n'
    'pinbenchpress\t651\n'
    'pinpress\t651\n'
    'benchpressoffpin\t651\n'
    'deadstartbenchpress\t651\n'
    'rackbenchpress\t651\n'
    'boardbenchpress\t652\n'
    'boardpress\t652\n'
    'partialbenchpress\t652\n'
    'floorpress\t653\n'
    'barbellfloorpress\t653\n'
    'underhandgripbenchpress\t654\n'
    'reversegripbenchpress\t654\n'
    'supinatedbenchpress\t654\n'
    'speedbenchpress\t655\n'
    'dynamiceffortbenchpress\t655\n'
    'debenchpress\t655\n'
    'fastbenchpress\t655\n'
    'benchpresswithband\t656\n'
    'bandedbenchpress\t656\n'
    'benchpressagainstband\t656\n'
    'benchpresswithchain\t657\n'
    'chainbenchpress\t657\n'
    'benchpressagainstchain\t657\n'
    'tempobenchpress\t658\n'
    'slowbenchpress\t658\n'
    'slowloweringbenchpress\t658\n'
    'guidedbarbenchpress\t659\n'
    'guidedbenchpress\t659\n'
    'fixedtrackbenchpress\t659\n'
    'guidedbarinclinepress\t660\n'
    'guidedinclinepress\t660\n'
    'fixedtrackinclinepress\t660\n'
    'benchpressthrow\t661\n'
    'benchthrow\t661\n'
    'ballisticbenchpress\t661\n'
    'neutralgripdumbbellbenchpress\t662\n'
    'neutralgripdumbbellpress\t662\n'
    'hammergripdumbbellpress\t662\n'
    'neutralgripdbpress\t662\n'
    'parallelgripdumbbellpress\t662\n'
    'onearmdumbbellbenchpress\t663\n'
    'singlearmdumbbellbenchpress\t663\n'
    'onearmdbpress\t663\n'
    'singlearmdbbenchpress\t663\n'
    'alternatingdumbbellbenchpress\t664\n'
    'alternatingdbbenchpress\t664\n'
    'alternatingdumbbellpress\t664\n'
    'dumbbellfloorpress\t665\n'
    'dbfloorpress\t665\n'
    'kettlebellfloorpress\t666\n'
    'kbfloorpress\t666\n'
    'onearmkettlebellfloorpress\t666\n'
    'dumbbellsqueezepress\t667\n'
    'squeezepress\t667\n'
    'dbsqueezepress\t667\n'
    'hexpress\t667\n'
    'crushpress\t667\n'
    'platesqueezepress\t668\n'
    'platepressout\t668\n'
    'standingplatepress\t668\n'
    'steepinclinedumbbellpress\t669\n'
    'highinclinedumbbellpress\t669\n'
    'highinclinedbpress\t669\n'
    '60degreeinclinepress\t669\n'
    'inclinemachinepress\t670\n'
    'machineinclinepress\t670\n'
    'inclinechestpressmachine\t670\n'
    'inclinemachinechestpress\t670\n'
    'declinemachinepress\t671\n'
    'declinechestpressmachine\t671\n'
    'machinedeclinepress\t671\n'
    'onearmmachinechestpress\t672\n'
    'singlearmmachinechestpress\t672\n'
    'unilateralchestpress\t672\n'
    'standingcablechestpress\t673\n'
    'cablechestpress\t673\n'
    'cablepress\t673\n'
    'onearmcablepress\t674\n'
    'singlearmcablepress\t674\n'
    'singlearmcablechestpress\t674\n'
    'splitstancecablepress\t674\n'
    'bandchestpress\t675\n'
    'bandedchestpress\t675\n'
    'resistancebandchestpress\t675\n'
    'inclinedumbbellfly\t676\n'
    'inclinefly\t676\n'
    'inclinedbfly\t676\n'
    'inclinechestfly\t676\n'
    'declinedumbbellfly\t677\n'
    'declinefly\t677\n'
    'declinedbfly\t677\n'
    'lowtohighcablefly\t678\n'
    'lowcablefly\t678\n'
    'lowtohighcrossover\t678\n'
    'upwardcablefly\t678\n'
    'hightolowcablefly\t679\n'
    'highcablefly\t679\n'
    'hightolowcrossover\t679\n'
    'downwardcablefly\t679\n'
    'onearmcablefly\t680\n'
    'singlearmcablefly\t680\n'
    'singlearmcablecrossover\t680\n'
    'lyingcablefly\t681\n'
    'cablebenchfly\t681\n'
    'flatbenchcablefly\t681\n'
    'inclinecablefly\t682\n'
    'inclinebenchcablefly\t682\n'
    'bandfly\t683\n'
    'bandchestfly\t683\n'
    'resistancebandfly\t683\n'
    'suspensionfly\t684\n'
    'ringfly\t684\n'
    'suspendedchestfly\t684\n'
    'slingfly\t684\n'
    'inclinepushup\t685\n'
    'handelevatedpushup\t685\n'
    'elevatedpushup\t685\n'
    'pushuponabench\t685\n'
    'boxpushup\t685\n'
    'kneepushup\t686\n'
    'kneelingpushup\t686\n'
    'modifiedpushup\t686\n'
    'wallpushup\t687\n'
    'wallpressup\t687\n'
    'standingwallpushup\t687\n'
    'declinepushup\t688\n'
    'feetelevatedpushup\t688\n'
    'feetuppushup\t688\n'
    'closegrippushup\t689\n'
    'narrowpushup\t689\n'
    'closehandpushup\t689\n'
    'triceppushup\t689\n'
    'diamondpushup\t690\n'
    'trianglepushup\t690\n'
    'widepushup\t691\n'
    'widegrippushup\t691\n'
    'widehandpushup\t691\n'
    'weightedpushup\t692\n'
    'loadedpushup\t692\n'
    'pushupwithplate\t692\n'
    'weightedpressup\t692\n'
    'deficitpushup\t693\n'
    'deeppushup\t693\n'
    'pushuponhandle\t693\n'
    'pushupbetweenblock\t693\n'
    'suspensionpushup\t694\n'
    'suspendedpushup\t694\n'
    'slingpushup\t694\n'
    'ringpushup\t695\n'
    'gymnasticringpushup\t695\n'
    'bandresistedpushup\t696\n'
    'bandedpushup\t696\n'
    'pushupwithband\t696\n'
    'handreleasepushup\t697\n'
    'deadstoppushup\t697\n'
    'releasepushup\t697\n'
    'tempopushup\t698\n'
    'slowpushup\t698\n'
    'slowloweringpushup\t698\n'
    'eccentricpushup\t698\n'
    'negativepushup\t698\n'
    'pausedpushup\t699\n'
    'pausepushup\t699\n'
    'pushuphold\t700\n'
    'isometricpushup\t700\n'
    'lowpushuphold\t700\n'
    'midpushuphold\t700\n'
    'pushupwithrotation\t701\n'
    'tpushup\t701\n'
    'rotatingpushup\t701\n'
    'plyometricpushup\t702\n'
    'plyopushup\t702\n'
    'clappushup\t702\n'
    'clappingpushup\t702\n'
    'explosivepushup\t702\n'
    'depthpushup\t703\n'
    'droppushup\t703\n'
    'depthdroppushup\t703\n'
    'archerpushup\t704\n'
    'sidetosidepushup\t704\n'
    'typewriterpushup\t704\n'
    'onearmpushup\t705\n'
    'singlearmpushup\t705\n'
    'forwardleanpushup\t706\n'
    'pseudoplanchepushup\t706\n'
    'plancheleanpushup\t706\n'
    'swoopingpushup\t707\n'
    'hindupushup\t707\n'
    'divebomberpushup\t707\n'
    'pikepushup\t708\n'
    'pikepress\t708\n'
    'shoulderpushup\t708\n'
    'feetelevatedpikepushup\t709\n'
    'elevatedpikepushup\t709\n'
    'boxpikepushup\t709\n'
    'handstandpushup\t710\n'
    'hspu\t710\n'
    'wallhandstandpushup\t710\n'
    'verticalpushup\t710\n'
    'ringdip\t711\n'
    'gymnasticringdip\t711\n'
    'straightbardip\t712\n'
    'barsupportdip\t712\n'
    'singlebardip\t712\n'
    'machinedip\t713\n'
    'seateddipmachine\t713\n'
    'dipmachine\t713\n'
    'seatedmachinedip\t713\n'
    'benchdip\t714\n'
    'chairdip\t714\n'
    'boxdip\t714\n'
    'feetsupporteddip\t714\n'
    'bandassisteddip\t715\n'
    'bandeddip\t715\n'
    'assisteddipwithband\t715\n'
    'negativedip\t716\n'
    'eccentricdip\t716\n'
    'diplowering\t716\n'
    'slowloweringdip\t716\n'
    'dipsupporthold\t717\n'
    'supporthold\t717\n'
    'topdiphold\t717\n'
    'parallelbarhold\t717\n'
    'pushpress\t718\n'
    'barbellpushpress\t718\n'
    'seatedbarbellshoulderpress\t719\n'
    'seatedbarbellpress\t719\n'
    'seatedmilitarypress\t719\n'
    'seatedoverheadpress\t719\n'
    'seatedbarbelloverheadpress\t719\n'
    'behindtheneckpress\t720\n'
    'btnpress\t720\n'
    'pressbehindtheneck\t720\n'
    'behindneckpress\t720\n'
    'seatedflooroverheadpress\t721\n'
    'floorseatedpress\t721\n'
    'straightlegseatedpress\t721\n'
    'pinoverheadpress\t722\n'
    'overheadpinpress\t722\n'
    'deadstartoverheadpress\t722\n'
    'partialoverheadpress\t722\n'
    'pausedoverheadpress\t723\n'
    'pauseoverheadpress\t723\n'
    'landminepress\t724\n'
    'onearmlandminepress\t724\n'
    'singlearmlandminepress\t724\n'
    'angledbarpress\t724\n'
    'cornerpress\t724\n'
    'halfkneelinglandminepress\t725\n'
    'kneelinglandminepress\t725\n'
    'halfkneelingangledbarpress\t725\n'
    'twoarmlandminepress\t726\n'
    'twohandlandminepress\t726\n'
    'doublearmlandminepress\t726\n'
    'onearmdumbbelloverheadpress\t727\n'
    'singlearmdumbbellpress\t727\n'
    'singlearmdboverheadpress\t727\n'
    'onearmdumbbellpress\t727\n'
    'onearmdbshoulderpress\t727\n'
    'singlearmdumbbellshoulderpress\t727\n'
    'halfkneelingoverheadpress\t728\n'
    'halfkneelingdumbbellpress\t728\n'
    'halfkneelingdumbbelloverheadpress\t728\n'
    'halfkneelingkettlebellpress\t728\n'
    'alternatingdumbbellshoulderpress\t729\n'
    'alternatingdbshoulderpress\t729\n'
    'alternatingdumbbelloverheadpress\t729\n'
    'kettlebelloverheadpress\t730\n'
    'kettlebellpress\t730\n'
    'kbpress\t730\n'
    'onearmkettlebellpress\t730\n'
    'kettlebellstrictpress\t730\n'
    'singlearmkettlebellpress\t730\n'
    'bottomupkettlebellpress\t731\n'
    'bottomuppress\t731\n'
    'upsidedownkettlebellpress\t731\n'
    'doublekettlebelloverheadpress\t732\n'
    'doublekettlebellpress\t732\n'
    'doublekbpress\t732\n'
    'twokettlebellpress\t732\n'
    'rotatingdumbbellshoulderpress\t733\n'
    'rotationaldumbbellpress\t733\n'
    'twistingdumbbellpress\t733\n'
    'palmturningpress\t733\n'
    'neutralgripdumbbellshoulderpress\t734\n'
    'neutralgripshoulderpress\t734\n'
    'hammergripshoulderpress\t734\n'
    'palminshoulderpress\t734\n'
    'neutralgripoverheadpress\t734\n'
    'dumbbellpushpress\t735\n'
    'dbpushpress\t735\n'
    'guidedbarshoulderpress\t736\n'
    'guidedbaroverheadpress\t736\n'
    'fixedtrackshoulderpress\t736\n'
    'cableshoulderpress\t737\n'
    'cableoverheadpress\t737\n'
    'standingcableshoulderpress\t737\n'
    'bandoverheadpress\t738\n'
    'bandshoulderpress\t738\n'
    'bandedoverheadpress\t738\n'
    'resistancebandshoulderpress\t738\n'
    'sandbagoverheadpress\t739\n'
    'sandbagshoulderpress\t739\n'
    'sandbagpress\t739\n'
    'lateralraise\t740\n'
    'dumbbelllateralraise\t740\n'
    'sideraise\t740\n'
    'dblateralraise\t740\n'
    'sidelateralraise\t740\n'
    'latraise\t740\n'
    'dumbbellsideraise\t740\n'
    'standinglateralraise\t740\n'
    'sidedeltraise\t740\n'
    'frontraise\t741\n'
    'dumbbellfrontraise\t741\n'
    'dbfrontraise\t741\n'
    'standingfrontraise\t741\n'
    'frontdeltraise\t741\n'
    'cablelateralraise\t742\n'
    'onearmcablelateralraise\t742\n'
    'singlearmcablelateralraise\t742\n'
    'cablesideraise\t742\n'
    'lowcablelateralraise\t742\n'
    'machinelateralraise\t743\n'
    'lateralraisemachine\t743\n'
    'machinesideraise\t743\n'
    'cableexternalrotation\t744\n'
    'externalrotation\t744\n'
    'externalshoulderrotation\t744\n'
    'standingexternalrotation\t744\n'
    'standingcableexternalrotation\t744\n'
    'cableer\t744\n'
    'bandexternalrotation\t745\n'
    'bandedexternalrotation\t745\n'
    'resistancebandexternalrotation\t745\n'
    'bander\t745\n'
    'rotatorcuffbandwork\t745\n'
    'sidelyingexternalrotation\t746\n'
    'sidelyingdumbbellexternalrotation\t746\n'
    'lyingexternalrotation\t746\n'
    'sidelyinger\t746\n'
    'dumbbellexternalrotation\t746\n'
    'cableinternalrotation\t747\n'
    'internalrotation\t747\n'
    'internalshoulderrotation\t747\n'
    'standinginternalrotation\t747\n'
    'cableir\t747\n'
    'bandinternalrotation\t748\n'
    'bandedinternalrotation\t748\n'
    'resistancebandinternalrotation\t748\n'
    'bandir\t748\n'
    'uprightrow\t749\n'
    'barbelluprightrow\t749\n'
    'bentbaruprightrow\t749\n'
    'ezbaruprightrow\t749\n'
    'bbuprightrow\t749\n'
    'dumbbelluprightrow\t750\n'
    'dbuprightrow\t750\n'
    'cableuprightrow\t751\n'
    'ropeuprightrow\t751\n'
    'lowcableuprightrow\t751\n'
    'kettlebelluprightrow\t752\n'
    'kbuprightrow\t752\n'
    'scapularpushup\t753\n'
    'pushupplu\t753\n'
    'scappushup\t753\n'
    'serratupushup\t753\n'
    'shoulderbladepushup\t753\n'
    'seatedlateralraise\t754\n'
    'seateddumbbelllateralraise\t754\n'
    'seatedsideraise\t754\n'
    'seateddblateralraise\t754\n'
    'leaninglateralraise\t755\n'
    'leanawaylateralraise\t755\n'
    'leaningcablelateralraise\t755\n'
    'leanawaycablelateralraise\t755\n'
    'bandlateralraise\t756\n'
    'bandedlateralraise\t756\n'
    'resistancebandlateralraise\t756\n'
    'onearmdumbbelllateralraise\t757\n'
    'singlearmlateralraise\t757\n'
    'singlearmdumbbelllateralraise\t757\n'
    'onearmlateralraise\t757\n'
    'sidelyinglateralraise\t758\n'
    'lyinglateralraise\t758\n'
    'inclinesidelyinglateralraise\t758\n'
    'sidelyingabductionraise\t758\n'
    'bentarmlateralraise\t759\n'
    'bentelbowlateralraise\t759\n'
    'shortleverlateralraise\t759\n'
    'partiallateralraise\t760\n'
    'lateralraisepartial\t760\n'
    'bottomhalflateralraise\t760\n'
    'fullrangelateralraise\t761\n'
    'overheadlateralraise\t761\n'
    'thumbuplateralraisetooverhead\t761\n'
    'kettlebelllateralraise\t762\n'
    'kblateralraise\t762\n'
    'lateralraisehold\t763\n'
    'isometriclateralraise\t763\n'
    'staticlateralraise\t763\n'
    'platefrontraise\t764\n'
    'weightplatefrontraise\t764\n'
    'twohandplateraise\t764\n'
    'barbellfrontraise\t765\n'
    'bbfrontraise\t765\n'
    'cablefrontraise\t766\n'
    'ropefrontraise\t766\n'
    'lowcablefrontraise\t766\n'
    'bandfrontraise\t767\n'
    'bandedfrontraise\t767\n'
    'resistancebandfrontraise\t767\n'
    'inclinefrontraise\t768\n'
    'inclinebenchfrontraise\t768\n'
    'seatedinclinefrontraise\t768\n'
    'alternatingfrontraise\t769\n'
    'alternatingdumbbellfrontraise\t769\n'
    'onearmfrontraise\t769\n'
    'singlearmfrontraise\t769\n'
    'scaptionraise\t770\n'
    'scaption\t770\n'
    'fullcanraise\t770\n'
    'thumbupraise\t770\n'
    'scapularplaneraise\t770\n'
    'dumbbellscaption\t770\n'
    'externalrotationat90degree\t771\n'
    '90/90externalrotation\t771\n'
    '9090externalrotation\t771\n'
    'abductedexternalrotation\t771\n'
    'highexternalrotation\t771\n'
    'seatedexternalrotationontheknee\t772\n'
    'kneesupportedexternalrotation\t772\n'
    'elbowonkneeexternalrotation\t772\n'
    'seateddumbbellexternalrotation\t772\n'
    'proneexternalrotation\t773\n'
    'prone90/90externalrotation\t773\n'
    'facedownexternalrotation\t773\n'
    'isometricexternalrotation\t774\n'
    'externalrotationhold\t774\n'
    'wallexternalrotation\t774\n'
    'isometricer\t774\n'
    'doublebandexternalrotation\t775\n'
    'twoarmbandexternalrotation\t775\n'
    'bilateralbandexternalrotation\t775\n'
    'internalrotationat90degree\t776\n'
    '90/90internalrotation\t776\n'
    '9090internalrotation\t776\n'
    'abductedinternalrotation\t776\n'
    'isometricinternalrotation\t777\n'
    'internalrotationhold\t777\n'
    'wallinternalrotation\t777\n'
    'isometricir\t777\n'
    'highpullwithexternalrotation\t778\n'
    'cubanrotation\t778\n'
    'cubanpress\t778\n'
    'musclerotation\t778\n'
    'dumbbellscarecrow\t778\n'
    'yraise\t779\n'
    'proneyraise\t779\n'
    'inclineyraise\t779\n'
    'proney\t779\n'
    'lowertrapraise\t779\n'
    'dumbbellyraise\t779\n'
    'chestsupportedyraise\t779\n'
    'cableyraise\t780\n'
    'standingcableyraise\t780\n'
    'lowcableyraise\t780\n'
    'suspensionyraise\t781\n'
    'ringyraise\t781\n'
    'suspensionyfly\t781\n'
    'traise\t782\n'
    'pronetraise\t782\n'
    'pronet\t782\n'
    'inclinetraise\t782\n'
    'pronehorizontalabduction\t782\n'
    'wraise\t783\n'
    'pronewraise\t783\n'
    'pronew\t783\n'
    'inclinewraise\t783\n'
    'iytraise\t784\n'
    'iyt\t784\n'
    'ytw\t784\n'
    'ytwl\t784\n'
    'proneiyt\t784\n'
    'ytwraise\t784\n'
    'ityw\t784\n'
    'kneelingscapularpushup\t785\n'
    'quadrupedscapularpushup\t785\n'
    'handandkneescapularpushup\t785\n'
    'kneepushupplu\t785\n'
    'wallscapularpushup\t786\n'
    'wallpushupplu\t786\n'
    'standingscapularpushup\t786\n'
    'feetelevatedscapularpushup\t787\n'
    'elevatedpushupplu\t787\n'
    'declinescapularpushup\t787\n'
    'forearmscapularpushup\t788\n'
    'plankscapularpushup\t788\n'
    'elbowpushupplu\t788\n'
    'forearmpushupplu\t788\n'
    'serratupunch\t789\n'
    'dumbbellserratupunch\t789\n'
    'supineprotraction\t789\n'
    'lyingpunch\t789\n'
    'supineserratupress\t789\n'
    'dumbbellprotraction\t789\n'
    'cableserratupunch\t790\n'
    'standingcablepunch\t790\n'
    'cableprotraction\t790\n'
    'bandserratupunch\t790\n'
    'wallslide\t791\n'
    'scapularwallslide\t791\n'
    'forearmwallslide\t791\n'
    'wallangel\t791\n'
    'floorslide\t791\n'
    'wallslidewithband\t792\n'
    'bandedwallslide\t792\n'
    'bandwallslide\t792\n'
    'overheadshrug\t793\n'
    'overheadbarbellshrug\t793\n'
    'snatchgripoverheadshrug\t793\n'
    'presspositionshrug\t793\n'
    'scapulardip\t794\n'
    'dipshrug\t794\n'
    'straightarmdip\t794\n'
    'supportshrug\t794\n'
    'shoulderdepressiononbar\t794\n'
    'machineshoulderdepression\t795\n'
    'scapularpulldown\t795\n'
    'straightarmscapularpulldown\t795\n'
    'pulldownshrug\t795\n'
    'latpulldownshrug\t795\n'
    'straightarmrow\t796\n'
    'scapularrow\t796\n'
    'scapularretraction\t796\n'
    'seatedscapularretraction\t796\n'
    'rowshrug\t796\n'
    'cablescapularretraction\t796\n'
    'bandscapularretraction\t797\n'
    'bandretraction\t797\n'
    'bandedretraction\t797\n'
    'shoulderbladesqueeze\t797\n'
    'scapularsqueeze\t797\n'
    'handstandhold\t798\n'
    'wallhandstand\t798\n'
    'wallhandstandhold\t798\n'
    'handstand\t798\n'
    'chesttowallhandstand\t798\n'
    'pikehold\t799\n'
    'pikehandstandhold\t799\n'
    'boxpikehold\t799\n'
    'feetonboxhandstandhold\t799\n'
    'overheadhold\t800\n'
    'barbelloverheadhold\t800\n'
    'isometricoverheadhold\t800\n'
    'overheadlockouthold\t800\n'
    'kettlebellhalo\t801\n'
    'halo\t801\n'
    'kbhalo\t801\n'
    'platehalo\t801\n'
    'headcircle\t801\n'
    'plank\t802\n'
    'frontplank\t802\n'
    'forearmplank\t802\n'
    'elbowplank\t802\n'
    'proneplank\t802\n'
    'plankhold\t802\n'
    'lowplank\t802\n'
    'sideplank\t803\n'
    'sidebridge\t803\n'
    'lateralplank\t803\n'
    'forearmsideplank\t803\n'
    'sideplankhold\t803\n'
    'deadbug\t804\n'
    'alternatingdeadbug\t804\n'
    'dyingbug\t804\n'
    'crunch\t805\n'
    'abcrunch\t805\n'
    'floorcrunch\t805\n'
    'abdominalcrunch\t805\n'
    'curluptotheshoulderblade\t805\n'
    'basiccrunch\t805\n'
    'hanginglegraise\t806\n'
    'hangingstraightlegraise\t806\n'
    'straightleghangingraise\t806\n'
    'hlr\t806\n'
    'legraiseonthebar\t806\n'
    'hangingkneeraise\t807\n'
    'hkr\t807\n'
    'hangingkneetuck\t807\n'
    'kneeraiseonthebar\t807\n'
    'hangingbentlegraise\t807\n'
    'birddog\t808\n'
    'quadrupedarmandlegraise\t808\n'
    'alternatingbirddog\t808\n'
    'allfourarmandlegreach\t808\n'
    'abwheelrollout\t809\n'
    'rollout\t809\n'
    'abrollout\t809\n'
    'kneelingrollout\t809\n'
    'wheelrollout\t809\n'
    'abwheel\t809\n'
    'kneelingabwheelrollout\t809\n'
    'antirotationpress\t810\n'
    'cableantirotationpress\t810\n'
    'pressout\t810\n'
    'cablepressout\t810\n'
    'standingantirotationpress\t810\n'
    'antirotationhold\t810\n'
    'cablewoodchop\t811\n'
    'woodchop\t811\n'
    'hightolowchop\t811\n'
    'cablechop\t811\n'
    'hightolowwoodchop\t811\n'
    'cablewoodchopper\t811\n'
    'woodchopper\t811\n'
    'cablecrunch\t812\n'
    'kneelingcablecrunch\t812\n'
    'ropecrunch\t812\n'
    'cableabcrunch\t812\n'
    'weightedcablecrunch\t812\n'
    'situp\t813\n'
    'bentkneesitup\t813\n'
    'floorsitup\t813\n'
    'fullsitup\t813\n'
    'russiantwist\t814\n'
    'seatedtwist\t814\n'
    'seatedrotation\t814\n'
    'medicineballtwist\t814\n'
    'platetwist\t814\n'
    'pronebackextension\t815\n'
    'floorbackextension\t815\n'
    'pronebackraise\t815\n'
    'pronetrunkraise\t815\n'
    'proneextension\t815\n'
    'floorbackraise\t815\n'
    'kneeplank\t816\n'
    'kneelingplank\t816\n'
    'halfplank\t816\n'
    'shortplank\t816\n'
    'highplank\t817\n'
    'straightarmplank\t817\n'
    'pushuppositionplank\t817\n'
    'pushupplank\t817\n'
    'handplank\t817\n'
    'inclineplank\t818\n'
    'elevatedplank\t818\n'
    'handelevatedplank\t818\n'
    'benchplank\t818\n'
    'longleverplank\t819\n'
    'hardstyleplank\t819\n'
    'extendedplank\t819\n'
    'bodytensionplank\t819\n'
    'hardplank\t819\n'
    'weightedplank\t820\n'
    'loadedplank\t820\n'
    'plateplank\t820\n'
    'feetelevatedplank\t821\n'
    'declineplank\t821\n'
    'plankshouldertap\t822\n'
    'shouldertap\t822\n'
    'planktap\t822\n'
    'plankwithleglift\t823\n'
    'singlelegplank\t823\n'
    'threepointplank\t823\n'
    'planklegraise\t823\n'
    'plankwitharmreach\t824\n'
    'plankreach\t824\n'
    'plankarmlift\t824\n'
    'twopointplank\t824\n'
    'plankdrag\t825\n'
    'plankpullthrough\t825\n'
    'dumbbelldrag\t825\n'
    'kettlebelldrag\t825\n'
    'plankdumbbellpullthrough\t825\n'
    'stabilityballplank\t826\n'
    'swissballplank\t826\n'
    'exerciseballplank\t826\n'
    'ballplank\t826\n'
    'stabilityballcircleplank\t827\n'
    'stirthepot\t827\n'
    'ballcircle\t827\n'
    'plankcircleontheball\t827\n'
    'bodysaw\t828\n'
    'planksaw\t828\n'
    'slidingplanksaw\t828\n'
    'suspensionbodysaw\t828\n'
    'suspensionplank\t829\n'
    'feetsuspendedplank\t829\n'
    'slingplank\t829\n'
    'plankupdown\t830\n'
    'updownplank\t830\n'
    'planktopushup\t830\n'
    'walkingplank\t830\n'
    'commandoplank\t830\n'
    'plankwithhipdip\t831\n'
    'plankhipdip\t831\n'
    'planktwist\t831\n'
    'rotatingplank\t831\n'
    'bearhold\t832\n'
    'bearplank\t832\n'
    'hoveringquadrupedhold\t832\n'
    'beasthold\t832\n'
    'quadrupedhover\t832\n'
    'reverseplank\t833\n'
    'backplank\t833\n'
    'supineplank\t833\n'
    'reversebridgehold\t833\n'
    'chineseplank\t833\n'
    'kneesideplank\t834\n'
    'kneelingsideplank\t834\n'
    'shortsideplank\t834\n'
    'bentkneesideplank\t834\n'
    'halfsideplank\t834\n'
    'straightarmsideplank\t835\n'
    'highsideplank\t835\n'
    'handsideplank\t835\n'
    'sideplankwithlegraise\t836\n'
    'sideplankleglift\t836\n'
    'starplank\t836\n'
    'weightedsideplank\t837\n'
    'loadedsideplank\t837\n'
    'dumbbellsideplank\t837\n'
    'feetelevatedsideplank\t838\n'
    'declinesideplank\t838\n'
    'sideplankdip\t839\n'
    'sideplankhiplift\t839\n'
    'sideplankraise\t839\n'
    'sidebridgeraise\t839\n'
    'sideplankwithrotation\t840\n'
    'sideplankthreadthrough\t840\n'
    'sideplankreachunder\t840\n'
    'threadtheneedleplank\t840\n'
    'sideplankrow\t841\n'
    'sideplankcablerow\t841\n'
    'sideplankbandrow\t841\n'
    'sideleanhold\t842\n'
    'backextensionbenchsidehold\t842\n'
    'horizontalsidehold\t842\n'
    'sideholdonthebench\t842\n'
    'dumbbellsidebend\t843\n'
    'sidebend\t843\n'
    'dbsidebend\t843\n'
    'standingsidebend\t843\n'
    'weightedsidebend\t843\n'
    'cablesidebend\t844\n'
    'lowcablesidebend\t844\n'
    'sidebendonthebackextensionbench\t845\n'
    'lateralbackextension\t845\n'
    'sideraiseonthebench\t845\n'
    'obliqueraise\t845\n'
    '45degreesidebend\t845\n'
    'sidecrunch\t846\n'
    'obliquecrunch\t846\n'
    'sidelyingcrunch\t846\n'
    'lyingsidecrunch\t846\n'
    'kettlebellwindmill\t847\n'
    'windmill\t847\n'
    'kbwindmill\t847\n'
    'overheadwindmill\t847\n'
    'overheadsidebend\t848\n'
    'waitersidebend\t848\n'
    'singlearmoverheadsidebend\t848\n'
    'bandsidebend\t848\n'
    'curlup\t849\n'
    'onekneecurlup\t849\n'
    'partialcurlup\t849\n'
    'curlupwithhandundertheback\t849\n'
    'weightedcrunch\t850\n'
    'platecrunch\t850\n'
    'dumbbellcrunch\t850\n'
    'loadedcrunch\t850\n'
    'machinecrunch\t851\n'
    'abmachine\t851\n'
    'abcrunchmachine\t851\n'
    'abdominalmachine\t851\n'
    'seatedcrunchmachine\t851\n'
    'trunkflexionmachine\t851\n'
    'standingcablecrunch\t852\n'
    'standingropecrunch\t852\n'
    'stabilityballcrunch\t853\n'
    'swissballcrunch\t853\n'
    'exerciseballcrunch\t853\n'
    'ballcrunch\t853\n'
    'weightedstabilityballcrunch\t854\n'
    'weightedballcrunch\t854\n'
    'weightedswissballcrunch\t854\n'
    'longarmcrunch\t855\n'
    'straightarmcrunch\t855\n'
    'longlevercrunch\t855\n'
    'armoverheadcrunch\t855\n'
    'bicyclecrunch\t856\n'
    'bicycle\t856\n'
    'elbowtokneecrunch\t856\n'
    'alternatingelbowtokneecrunch\t856\n'
    'crossbodycrunch\t856\n'
    'twistingcrunch\t856\n'
    'heeltouchcrunch\t857\n'
    'heeltouch\t857\n'
    'alternatingheeltouch\t857\n'
    'sidetosidecrunch\t857\n'
    'penguincrunch\t857\n'
    'reversecrunch\t858\n'
    'reversecurlup\t858\n'
    'pelviccurl\t858\n'
    'lyinghipraise\t858\n'
    'floorreversecrunch\t858\n'
    'inclinereversecrunch\t859\n'
    'declinebenchreversecrunch\t859\n'
    'slantboardreversecrunch\t859\n'
    'cablereversecrunch\t860\n'
    'lowcablereversecrunch\t860\n'
    'weightedreversecrunch\t860\n'
    'declinesitup\t861\n'
    'declinebenchsitup\t861\n'
    'slantboardsitup\t861\n'
    'declinecrunch\t861\n'
    'weightedsitup\t862\n'
    'loadedsitup\t862\n'
    'platesitup\t862\n'
    'situpwithweight\t862\n'
    'weighteddeclinesitup\t863\n'
    'loadeddeclinesitup\t863\n'
    'declinesitupwithplate\t863\n'
    'situpwithrotation\t864\n'
    'twistingsitup\t864\n'
    'situpwithtwist\t864\n'
    'obliquesitup\t864\n'
    'glutehambenchsitup\t865\n'
    'hyperextensionbenchsitup\t865\n'
    'horizontalbenchsitup\t865\n'
    'ghdsitup\t865\n'
    'butterflysitup\t866\n'
    'soletogethersitup\t866\n'
    'vup\t867\n'
    'jackknife\t867\n'
    'vsitup\t867\n'
    'jackknifesitup\t867\n'
    'pikeuponthefloor\t867\n'
    'tuckup\t868\n'
    'kneetucksitup\t868\n'
    'tuckcrunch\t868\n'
    'seatedkneetuck\t868\n'
    'inandout\t868\n'
    'turkishsitup\t869\n'
    'getupsitup\t869\n'
    'kettlebellsitup\t869\n'
    'straightarmsitup\t869\n'
    'hollowhold\t870\n'
    'hollowbodyhold\t870\n'
    'hollowbody\t870\n'
    'dishhold\t870\n'
    'hollowposition\t870\n'
    'hollowrock\t871\n'
    'hollowbodyrock\t871\n'
    'deadbugheeltap\t872\n'
    'lyingheeltap\t872\n'
    'supinetoetap\t872\n'
    'toetap\t872\n'
    'bentkneedeadbug\t872\n'
    'supinemarch\t872\n'
    'banddeadbug\t873\n'
    'bandeddeadbug\t873\n'
    'deadbugwithpullover\t873\n'
    'deadbugwithband\t873\n'
    'weighteddeadbug\t874\n'
    'loadeddeadbug\t874\n'
    'dumbbelldeadbug\t874\n'
    'kettlebelldeadbug\t874\n'
    'stabilityballdeadbug\t875\n'
    'balldeadbug\t875\n'
    'swissballdeadbug\t875\n'
    'deadbugballsqueeze\t875\n'
    '9090breathing\t876\n'
    'ninetyninetybreathing\t876\n'
    'supinebreathingbrace\t876\n'
    'abdominalbrace\t876\n'
    'abdominalbracing\t876\n'
    'lsit\t877\n'
    'lsithold\t877\n'
    'lsitonbar\t877\n'
    'parallelbarlsit\t877\n'
    'tuckholdonbar\t878\n'
    'tuckhold\t878\n'
    'tuckedlsit\t878\n'
    'bentkneelsit\t878\n'
    'vsithold\t879\n'
    'boathold\t879\n'
    'boatpose\t879\n'
    'seatedvhold\t879\n'
    'lyinglegraise\t880\n'
    'legraise\t880\n'
    'floorlegraise\t880\n'
    'supinelegraise\t880\n'
    'lyingdoublelegraise\t880\n'
    'lyinglegraisewithhiplift\t881\n'
    'legraisewithhiplift\t881\n'
    'legraisetocandle\t881\n'
    'lyinglegandhipraise\t881\n'
    'bentkneelyinglegraise\t882\n'
    'lyingkneeraise\t882\n'
    'lyingkneetuck\t882\n'
    'floorkneeraise\t882\n'
    'leglowering\t883\n'
    'doubleleglowering\t883\n'
    'leglower\t883\n'
    'eccentriclegraise\t883\n'
    'straightleglowering\t883\n'
    'flutterkick\t884\n'
    'scissorkick\t884\n'
    'legscissor\t884\n'
    'bodylengthleglowering\t885\n'
    'dragonflag\t885\n'
    'dragonflaglowering\t885\n'
    'wholebodyleglowering\t885\n'
    'inclinelegraise\t886\n'
    'inclinebenchlegraise\t886\n'
    'slantboardlegraise\t886\n'
    'supportedkneeraise\t887\n'
    'captainchairkneeraise\t887\n'
    'verticalkneeraise\t887\n'
    'chairkneeraise\t887\n'
    'dipstationkneeraise\t887\n'
    'captainchair\t887\n'
    'supportedlegraise\t888\n'
    'captainchairlegraise\t888\n'
    'verticallegraise\t888\n'
    'dipstationlegraise\t888\n'
    'toetobar\t889\n'
    't2b\t889\n'
    'ttb\t889\n'
    'stricttoetobar\t889\n'
    'hangingobliqueraise\t890\n'
    'hangingobliquekneeraise\t890\n'
    'hangingtwistingkneeraise\t890\n'
    'sidetosidekneeraise\t890\n'
    'hangingsidekneeraise\t890\n'
    'hangingwindshieldwiper\t891\n'
    'windshieldwiper\t891\n'
    'hangingwiper\t891\n'
    'windscreenwiper\t891\n'
    'weightedhangingkneeraise\t892\n'
    'hangingkneeraisewithweight\t892\n'
    'loadedhangingkneeraise\t892\n'
    'hangingkneeraisewithdumbbell\t892\n'
    'hangingtuckhold\t893\n'
    'hangingkneehold\t893\n'
    'hanginglhold\t893\n'
    'isometrichangingkneeraise\t893\n'
    'standingabwheelrollout\t894\n'
    'standingrollout\t894\n'
    'fullabwheelrollout\t894\n'
    'standingwheelrollout\t894\n'
    'abwheelrollouttoawall\t895\n'
    'shortrangeabwheelrollout\t895\n'
    'wallstoppedrollout\t895\n'
    'partialrollout\t895\n'
    'barbellrollout\t896\n'
    'kneelingbarbellrollout\t896\n'
    'barbellabrollout\t896\n'
    'stabilityballrollout\t897\n'
    'ballrollout\t897\n'
    'swissballrollout\t897\n'
    'exerciseballrollout\t897\n'
    'sliderrollout\t898\n'
    'slidingrollout\t898\n'
    'sliderbodyreach\t898\n'
    'kneelingsliderrollout\t898\n'
    'suspensionfallout\t899\n'
    'suspensionrollout\t899\n'
    'fallout\t899\n'
    'standingfallout\t899\n'
    'ringrollout\t899\n'
    'ringfallout\t899\n'
    'stabilityballkneetuck\t900\n'
    'ballkneetuck\t900\n'
    'swissballjackknife\t900\n'
    'stabilityballjackknife\t900\n'
    'balltuck\t900\n'
    'stabilityballpike\t901\n'
    'ballpike\t901\n'
    'swissballpike\t901\n'
    'suspensionkneetuck\t902\n'
    'suspendedkneetuck\t902\n'
    'suspensiontuck\t902\n'
    'slingkneetuck\t902\n'
    'suspensionpike\t903\n'
    'suspendedpike\t903\n'
    'slingpike\t903\n'
    'sliderpike\t904\n'
    'slidingpike\t904\n'
    'sliderpikeup\t904\n'
    'sliderkneetuck\t905\n'
    'slidingkneetuck\t905\n'
    'slidermountainclimber\t905\n'
    'mountainclimber\t906\n'
    'runningplank\t906\n'
    'plankkneedrive\t906\n'
    'crossbodymountainclimber\t907\n'
    'twistingmountainclimber\t907\n'
    'lowtohighcablechop\t908\n'
    'reversewoodchop\t908\n'
    'lowtohighwoodchop\t908\n'
    'cablelift\t908\n'
    'lowtohighchop\t908\n'
    'reversechop\t908\n'
    'cablerotation\t909\n'
    'standingcablerotation\t909\n'
    'horizontalwoodchop\t909\n'
    'cabletwist\t909\n'
    'horizontalcablechop\t909\n'
    'trunkrotation\t909\n'
    'standingtrunkrotation\t909\n'
    'halfkneelingchop\t910\n'
    'halfkneelingcablechop\t910\n'
    'kneelingchop\t910\n'
    'tallkneelingchop\t910\n'
    'halfkneelingwoodchop\t910\n'
    'halfkneelinglift\t911\n'
    'halfkneelingcablelift\t911\n'
    'kneelinglift\t911\n'
    'tallkneelinglift\t911\n'
    'bandrotation\t912\n'
    'bandwoodchop\t912\n'
    'bandedrotation\t912\n'
    'bandtwist\t912\n'
    'bandchop\t912\n'
    'resistancebandwoodchop\t912\n'
    'landminerotation\t913\n'
    'landminetwist\t913\n'
    'landmine180\t913\n'
    'angledbarrotation\t913\n'
    'barbellrotationinthecorner\t913\n'
    'fullcontacttwist\t913\n'
    'machinetrunkrotation\t914\n'
    'rotarytorso\t914\n'
    'torsorotationmachine\t914\n'
    'rotationmachine\t914\n'
    'twistmachine\t914\n'
    'dumbbellwoodchop\t915\n'
    'medicineballwoodchop\t915\n'
    'platewoodchop\t915\n'
    'freeweightwoodchop\t915\n'
    'dumbbellchop\t915\n'
    'lyingwindshieldwiper\t916\n'
    'floorwindshieldwiper\t916\n'
    'lyinglegrotation\t916\n'
    'supinetrunkrotation\t916\n'
    'lyingwiper\t916\n'
    'bentkneetrunkrotation\t917\n'
    'bentkneewindshieldwiper\t917\n'
    'lowertrunkrotation\t917\n'
    'kneedrop\t917\n'
    'supinekneerotation\t917\n'
    'stabilityballrussiantwist\t918\n'
    'ballrussiantwist\t918\n'
    'bridgedtrunkrotation\t918\n'
    'swissballrotation\t918\n'
    'bandantirotationpress\t919\n'
    'bandpressout\t919\n'
    'bandedantirotationpress\t919\n'
    'bandantirotationhold\t919\n'
    'halfkneelingantirotationpress\t920\n'
    'halfkneelingpressout\t920\n'
    'kneelingantirotationpress\t920\n'
    'tallkneelingantirotationpress\t920\n'
    'halfkneelingcablepressout\t920\n'
    'splitstanceantirotationpress\t921\n'
    'splitstancepressout\t921\n'
    'splitsquatantirotationpress\t921\n'
    'antirotationpressoverhead\t922\n'
    'overheadpressout\t922\n'
    'antirotationpressandlift\t922\n'
    'overheadantirotationpress\t922\n'
    'antirotationwalkout\t923\n'
    'antirotationsidestep\t923\n'
    'pressoutwalk\t923\n'
    'cablewalkout\t923\n'
    'antirotationwalk\t923\n'
    'onearmplank\t924\n'
    'singlearmplank\t924\n'
    'onearmplankhold\t924\n'
    'pronebackextensionhold\t925\n'
    'pronehold\t925\n'
    'proneextensionhold\t925\n'
    'pronelifthold\t925\n'
    'pronearchhold\t925\n'
    'archhold\t925\n'
    'pronealternatingarmandlegraise\t926\n'
    'swimmer\t926\n'
    'proneswimmer\t926\n'
    'pronealternatingraise\t926\n'
    'oppositearmandlegraise\t926\n'
    'pronecobrahold\t927\n'
    'pronecobra\t927\n'
    'cobrahold\t927\n'
    'proneshoulderbladesqueezehold\t927\n'
    'machinebackextension\t928\n'
    'backextensionmachine\t928\n'
    'lowerbackmachine\t928\n'
    'seatedbackextension\t928\n'
    'lumbarextensionmachine\t928\n'
    'seatedmachinebackextension\t928\n'
    'stabilityballbackextension\t929\n'
    'ballbackextension\t929\n'
    'swissballbackextension\t929\n'
    'loadedspinalrolldown\t930\n'
    'spinalrolldown\t930\n'
    'rolldown\t930\n'
    'segmentalrolldown\t930\n'
    'weightedrolldown\t930\n'
    'quadrupedlegreach\t931\n'
    'quadrupedhipextensionhold\t931\n'
    'allfourlegreach\t931\n'
    'birddoglegonly\t931\n'
    'birddogrow\t932\n'
    'birddogdumbbellrow\t932\n'
    'benchbirddogrow\t932\n'
    'birddogwithband\t933\n'
    'bandedbirddog\t933\n'
    'weightedbirddog\t933\n'
    'resistedbirddog\t933\n'
)
