"""Clearances that warm."""


@conditioned("widths that nearly cancel")
def thermal(outer, inner, outer_expansion, inner_expansion, outer_rise, inner_rise):
    return outer * (1 + outer_expansion * outer_rise) - inner * (1 + inner_expansion * inner_rise)
