/**
 * @file vane.h
 * Everything, in one include.
 */
#ifndef VANE_VANE_H
#define VANE_VANE_H

#include "vane/array.h"
#include "vane/bearing.h"
#include "vane/clearance.h"
#include "vane/contact.h"
#include "vane/displacement.h"
#include "vane/error.h"
#include "vane/fit.h"
#include "vane/joint.h"
#include "vane/measure.h"
#include "vane/oil.h"
#include "vane/parts.h"
#include "vane/plate.h"
#include "vane/pump.h"
#include "vane/ring.h"
#include "vane/seal.h"
#include "vane/shaft.h"
#include "vane/slip.h"
#include "vane/slot.h"
#include "vane/stand.h"
#include "vane/thread.h"
#include "vane/tip.h"
#include "vane/units.h"

#endif
