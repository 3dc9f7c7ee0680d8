"""spotline reviews strength-training programmes kept as YAML files."""
