/*
 * Differences that vanish as two radii meet, without the cancellation that
 * their printed forms have there. All take s = 2 ln(r/r0), which may be
 * infinite, and x = r0/r.
 */
#ifndef VANE_LIB_PLATE_H
#define VANE_LIB_PLATE_H

/* 2 ln(r/r0); infinite for r0 = 0. */
double vn_plate_log(double r, double r0);

double vn_plate_two(double s);      /* 1 - x^2 (1 + s) */
double vn_plate_three(double s);    /* (1 + x^2) s/2 - (1 - x^2) */
double vn_plate_six(double s);      /* s - (1 - x^2) */
double vn_plate_eleven(double s);   /* 1 + 4 x^2 - 5 x^4 - 2 s x^2 (2 + x^2) */
double vn_plate_fourteen(double s); /* 1 - x^4 - 2 s x^2 */

#endif
