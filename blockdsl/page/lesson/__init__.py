"""A lesson: how a method is sewn, for someone who has never sewn; `lesson` puts its parts in order."""
