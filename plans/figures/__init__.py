"""Figures: a pose in joint angles becomes a body in space, and a body in space becomes a drawing."""
