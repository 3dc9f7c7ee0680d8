"""Care: cautions that defer to the athlete's clinician, licensed practice and local rules."""
