"""What the air does: density, ducts, friction, how air splits, blowers."""
