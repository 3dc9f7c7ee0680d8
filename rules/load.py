"""Load: what the lifter can lift, as often as is asked, with what is there."""
