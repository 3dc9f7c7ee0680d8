"""A team's first files: settings, an athlete, a programme that passes, the hook."""
