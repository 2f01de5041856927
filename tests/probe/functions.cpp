// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/probe/functions.h"

#include <algorithm>

namespace steelyard::probe {

namespace {

constexpr Function table[] = {
    {"fit_polynomial", "x y degree through_origin",
     "coefficients (ascending powers; through the origin from the first power) standard_errors residual_sd", fitPolynomial},
    {"fit_predict", "x y degree through_origin at", "value u", fitPredict},
    {"interpolate_monotone", "x y at", "y (null outside the points)", interpolateMonotone},
    {"coverage_factor", "degrees_of_freedom (null: infinite)", "k95", coverageFactor},
    {"chain_mass_per_metre", "wire_m pitch_m inner_width_m density_kg_m3", "kg_per_m u", chainMassPerMetre},
    {"chain_load", "kg_per_m length_m hang lead_m [bunch_m: for bunched required] [lead_kg] height_m", "kg", chainLoad},
    {"chain_mean", "kg_per_m length_m hang lead_m [bunch_m: for bunched required] [lead_kg] bottom_m top_m",
     "mean_kg two_point_mean_kg first_link_up_m last_link_off_m", chainMean},
    {"band_fit", "rest_m points model", "model coefficients residual_sd aicc monotone", bandFit},
    {"band_pull", "rest_m points model length_m", "pull_n u (null past the measurement)", bandPull},
    {"band_hang", "rest_m points model hang anchor anchor_height_m offset_m [wrap_m] bar_height_m",
     "vertical_n along_floor_n u (null past the measurement)", bandHang},
    {"setup",
     "bar_kg collars_kg plates_kg bottom_m top_m [rack_m] [sticking_from_m sticking_to_m: both or none] [u_mark_m] [u_plates_kg] "
     "left right; a chain of theirs also [u_kg_per_m] [measurement], a band [measurement] [twin]",
     "pulls at the marks, means, work, moving mass, u of each, ready, warnings {code side height_m}", setUp},
    {"plates", "target_kg bar_kg collars_kg stock {\"25\": 4, …}", "each_side total_kg below_kg above_kg", plates},
    {"what_to_hang",
     "bar_kg collars_kg stock bottom_m top_m [sticking_from_m] [sticking_to_m: both or none] [u_mark_m] [u_plates_share] "
     "targets [{place kg [tolerance_kg]}, …] chains [{kg_per_m length_m [u_kg_per_m] [leads_m]}, …] bands [{rest_m points model anchors_m}, …] "
     "[cap_kg] [most_things] [strength [[height_m, pull_n], …] [u_strength_n]]; every chain and band is a pair, one on each side",
     "best and next {total_kg each_side hung pull_kg u_kg miss_kg within level_variation u_level_variation} miss bound proved failing", whatToHangOf},
    {"measured_help", "points at_m", "help_n u (null outside the points)", measuredHelp},
    {"cam_torque", "stack_kg radius_m", "torque_nm", camTorqueOf},
    {"one_rm", "load_kg reps formula", "one_rm_kg", oneRm},
    {"scaled_strength", "force_n body_kg exponent", "value", scaledStrengthOf},
    {"release_hook", "one_rm_kg eccentric_percent concentric_percent bottom_m margin_m sleeve_radius_m lip_drop_m",
     "each_hook_kg hook_length_m touch_m free_m", releaseHook},
    {"tyre_mass_from_edge", "edge_kg scale_step_kg scale_accuracy lift_point_m far_contact_m [u_lift_m] [u_contact_m]", "mass_kg u", tyreMassFromEdgeOf},
    {"tyre_lift", "mass_kg diameter_m width_m angle_deg (0 to under 90)", "vertical_n perpendicular_n (below 0: it has to be held) balance_deg work_to_balance_j", tyreLift},
    {"log_mass", "length_m diameter1_m diameter2_m specific_gravity moisture_percent", "kg", logMassOf},
    {"stone_mass", "diameter_m density_kg_m3", "kg", stoneMassOf},
    {"keg_mass", "tare_kg volume_l density_kg_m3 fill", "kg", kegMass},
    {"lying_cylinder_volume", "radius_m length_m depth_m", "m3", lyingCylinderVolume},
    {"sled_pull", "mass_kg mu angle_deg direction", "pull_n", sledPullOf},
    {"sled_friction", "mass_kg pull_n angle_deg", "mu", sledFriction},
    {"sled_load", "points speed_loss", "total_kg u degrees_of_freedom", sledLoad},
    {"session_load", "rpe minutes, or days (null: not reported)", "load, or week monotony strain (null where they cannot be said) days_reported", sessionLoadOf},
    {"bilateral_index", "both left right cv_both cv_left cv_right (fractions, of the scores given)", "percent u", bilateralIndexOf},
    {"bilateral_index_lift", "both_external_kg left_external_kg right_external_kg body_kg body_is_lifted [cv_both] [cv_left] [cv_right] (of the external loads) [u_body_kg]",
     "percent, and u when any optional key is given", bilateralIndexLift},
    {"asymmetry", "left right formula [lower_is_better]", "percent side (the better one; null when equal)", asymmetry},
    {"asymmetry_noise", "left right formula cv_left cv_right tries", "percent", asymmetryNoise},
    {"reliability", "scores (rows subjects, columns days)", "icc11 icc21 icc31 icc1k icc2k icc3k each with _low _high, sem mdc95 typical_error cv_percent worthwhile_change (null where undefined)",
     reliability},
    {"kappa", "table", "kappa (null where chance agrees in full)", kappa},
    {"trend_word", "difference typical_error n1 n2", "word (null for a typical error of 0)", trendWordOf},
    {"jump_height", "flight_s or takeoff_m_s, g_m_s2", "height_m", jumpHeight},
    {"jump_force", "rate_hz force_n [allow_short_weighing] [g_m_s2]", "body_kg onset_s takeoff_s landing_s flight_height_m impulse_height_m takeoff_m_s (null without a landing)", jumpForce},
    {"isometric_force", "rate_hz force_n", "body_n onset_s peak_n net_peak_n force_at_ms rfd_n_s impulse_n_s (by 50 … 250; null past the end)", isometricForce},
};

}

std::span<const Function> functions() { return table; }

const Function* find(std::string_view name)
{
    const auto at = std::find_if(std::begin(table), std::end(table), [&](const Function& f) { return name == f.name; });
    return at == std::end(table) ? nullptr : at;
}

}
