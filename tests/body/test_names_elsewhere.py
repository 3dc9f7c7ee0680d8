"""Names that coaches write in other languages. Which they use is common practice, no source."""

from __future__ import annotations

from unicodedata import normalize

import pytest

from spotline.lint.body import build_data, catalogue, name_reading
from spotline.lint.body.known import CATALOGUE
from spotline.lint.body.names import unaccented

NAMES = """
German      Kniebeuge                           back squat
German      kniebeugen                          back squat
German      Kniebeuge mit Kurzhanteln           dumbbell squat
German      Front-Kniebeugen                    front squat
German      Bulgarische Kniebeuge               rear-foot-elevated split squat
German      Rumänisches Kreuzheben              Romanian deadlift
German      Rumaenisches Kreuzheben             Romanian deadlift
German      BANKDRÜCKEN                         bench press
German      Bankdruecken mit Kurzhanteln        dumbbell bench press
German      Schrägbankdrücken                   incline bench press
German      Klimmzüge                           pull-up
German      Klimmzüge im Untergriff             chin-up
German      Liegestütze                         push-up
German      Reißen                              snatch
German      Reissen                             snatch
German      Standumsetzen                       power clean
German      Wadenheben im Sitzen                seated calf raise
German      Beinbeuger sitzend                  seated leg curl
French      Squat avant                         front squat
French      Développé couché                    bench press
French      Developpe couche                    bench press
French      Développe couché haltères           dumbbell bench press
French      Développé militaire                 overhead press
French      Soulevé de terre roumain            Romanian deadlift
French      Soulevé de terre jambes tendues     stiff-leg deadlift
French      Tractions                           pull-up
French      Tirage vertical                     lat pulldown
French      Tirage horizontal                   seated cable row
French      Fentes marchées                     walking lunge
French      Presse à cuisses                    leg press
French      Haussements d’épaules               barbell shrug
French      Épaulé-jeté                         clean and jerk
French      Arraché puissance                   power snatch
French      Gainage latéral                     side plank
Spanish     Sentadilla                          back squat
Spanish     Sentadilla búlgara                  rear-foot-elevated split squat
Spanish     Press banca                         bench press
Spanish     Press de banca con mancuernas       dumbbell bench press
Spanish     Press militar                       overhead press
Spanish     Peso muerto                         deadlift
Spanish     Peso muerto rumano                  Romanian deadlift
Spanish     Dominadas supinas                   chin-up
Spanish     Jalon al pecho                      lat pulldown
Spanish     Remo con barra                      bent-over row
Spanish     Remo al mentón                      upright row
Spanish     Zancadas caminando                  walking lunge
Spanish     Fondos en paralelas                 dip
Spanish     Elevaciones laterales               lateral raise
Spanish     Puente de glúteos                   glute bridge
Spanish     Cargada de potencia                 power clean
Spanish     Salto al cajón                      box jump
Italian     Panca piana                         bench press
Italian     Panca inclinata con manubri         incline dumbbell press
Italian     Stacco da terra                     deadlift
Italian     Stacchi rumeni                      Romanian deadlift
Italian     Strappo                             snatch
Italian     Girata                              clean
Italian     Lento avanti                        overhead press
Italian     Trazioni                            pull-up
Italian     Rematore con manubrio               one-arm dumbbell row
Italian     Affondi con manubri                 forward lunge
Italian     Alzate laterali                     lateral raise
Italian     Croci ai cavi                       cable fly
Portuguese  Agachamento                         back squat
Portuguese  Agachamento búlgaro                 rear-foot-elevated split squat
Portuguese  Levantamento terra                  deadlift
Portuguese  Supino reto                         bench press
Portuguese  Supino inclinado com halteres       incline dumbbell press
Portuguese  Puxada frontal                      lat pulldown
Portuguese  Remada curvada                      bent-over row
Portuguese  Rosca direta                        barbell curl
Portuguese  Triceps testa                       lying triceps extension
Portuguese  Cadeira extensora                   leg extension
Portuguese  Mesa flexora                        lying leg curl
Portuguese  Flexões de braços                   push-up
Dutch       Kniebuigingen                       back squat
Dutch       Bankdrukken met dumbbells           dumbbell bench press
Dutch       Optrekken onderhands                chin-up
Dutch       Opdrukken                           push-up
Dutch       Voorovergebogen roeien              bent-over row
Dutch       Lopende uitvalspassen               walking lunge
Dutch       Roemeense deadlift                  Romanian deadlift
Swedish     Knäböj                              back squat
Swedish     Knaboj                              back squat
Swedish     Frontböj                            front squat
Swedish     Marklyft                            deadlift
Swedish     Bänkpress med hantlar               dumbbell bench press
Swedish     Utfallsgång                         walking lunge
Swedish     Skivstångsrodd                      bent-over row
Swedish     Frivändning                         clean
Swedish     Armhävningar                        push-up
Norwegian   Knebøy                              back squat
Norwegian   Knebøy med manualer                 dumbbell squat
Norwegian   Rumensk markløft                    Romanian deadlift
Norwegian   Benkpress                           bench press
Norwegian   Stangroing                          bent-over row
Norwegian   Tåhev                               standing calf raise
Norwegian   Kroppshevinger                      pull-up
Danish      Dødløft                             deadlift
Danish      Doedloeft                           deadlift
Danish      Bænkpres                            bench press
Danish      Skrå bænkpres med håndvægte         incline dumbbell press
Danish      Benstræk                            leg extension
Danish      Armbøjninger                        push-up
Danish      Gående lunges                       walking lunge
Polish      Przysiad tył                        back squat
Polish      przysiad przod                      front squat
Polish      Martwy ciąg                         deadlift
Polish      Rumuński martwy ciąg                Romanian deadlift
Polish      Wyciskanie hantli na skosie         incline dumbbell press
Polish      Wyciskanie żołnierskie              overhead press
Polish      Podciąganie podchwytem              chin-up
Polish      Wiosłowanie sztangą                 bent-over row
Polish      Wspięcia na palce siedząc           seated calf raise
Polish      Pompki na poręczach                 dip
Polish      Rwanie                              snatch
"""
ROWS = [(row[:12].strip(), row[12:48].strip(), row[48:]) for row in NAMES.strip().splitlines()]

NOT_READ = """
Stoßen              the jerk, or the clean and jerk
slancio             the jerk, or the clean and jerk
envión              the jerk, or the clean and jerk
podrzut             the jerk, or the clean and jerk
press francés       lying or overhead
höftlyft            the bridge or the thrust
elevação pélvica    the bridge or the thrust
brzuszki            the crunch or the sit-up
Beinheben           lying or hanging
développé haltères  the bench or the shoulder press
fondos              the dip, or the push-up
remo                the row, or the boat
roeien              the row, or the boat
wiosłowanie         the row, or the ergometer
Heben               any lift
Kniebeuge Kreuzheben  two lifts
Kniebeuge mit Hund  a name is read as a whole
"""
LEFT_OUT = [line.split("  ")[0] for line in NOT_READ.strip().splitlines()]

DATA = [
    (exercise, name)
    for entry in build_data.read()["names-elsewhere"]
    for exercise, names in entry["names"].items()
    for name in names
]


@pytest.mark.parametrize(("language", "name", "exercise"), ROWS, ids=lambda words: words)
def test_a_name_of_another_language_is_read(language: str, name: str, exercise: str) -> None:
    reading = CATALOGUE.reading(name)
    assert reading is not None
    assert reading.words == exercise


def test_every_language_of_the_data_has_several_rows() -> None:
    rows = [language for language, _, _ in ROWS]
    languages = {entry["language"] for entry in build_data.read()["names-elsewhere"]}
    assert languages == set(rows)
    assert min(map(rows.count, languages)) >= 7


@pytest.mark.parametrize("name", LEFT_OUT)
def test_a_name_that_is_not_surely_one_lift_is_not_read(name: str) -> None:
    assert CATALOGUE.reading(name) is None


def test_every_name_is_read_with_its_accents_and_without_however_they_are_typed() -> None:
    for exercise, name in DATA:
        for written in (name, name.upper(), normalize("NFD", name), unaccented(name.lower())):
            found = catalogue.exercise(written)
            assert found is not None, written
            assert found.name == exercise, written


def test_no_name_is_what_the_words_of_a_name_say_already() -> None:
    """No English name is hidden by one of another language, and none stands there for nothing."""
    assert [name for _, name in DATA if name_reading.read(name) is not None] == []


def test_they_are_no_aliases_and_no_suggestions() -> None:
    squat = catalogue.exercise("back squat")
    assert squat is not None
    assert "Kniebeuge" not in squat.aliases
    assert catalogue.exercise("Kniebeuge") is squat
    elsewhere = {name for _, name in DATA}
    for slip in ("Kniebeugx", "Strapo", "bakc squat", "plonk"):
        assert elsewhere.isdisjoint(CATALOGUE.suggestions(slip).names)
    assert CATALOGUE.slip_of("bakc squat") is squat
    assert CATALOGUE.slip_of("Kniebeugx") is None
