#include "slip_paths.h"

void slip_paths(const vane_slip *slip, struct slip_path path[SLIP_PATHS])
{
	path[0] = (struct slip_path){"Rotor faces, groove to shaft", slip->face_inner};
	path[1] = (struct slip_path){"Rotor faces, groove to inlet", slip->face_outer};
	path[2] = (struct slip_path){"Rotor faces, round the vanes", slip->face_edge};
	path[3] = (struct slip_path){"Vane ends, above the rotor", slip->vane_end};
	path[4] = (struct slip_path){"Vane ends, in the slots", slip->vane_end_root};
	path[5] = (struct slip_path){"Vane tips", slip->tip};
	path[6] = (struct slip_path){"Between vanes and slots", slip->slot};
	path[7] = (struct slip_path){"Dragged past tips", slip->tip_drag};
	path[8] = (struct slip_path){"Dragged past vane ends", slip->vane_end_drag};
}
