// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/quantity/quantity.h"
#include "core/quantity/units.h"
#include "core/rulebook/standard.h"

#include <optional>

/// Pressure lost by gas in a smooth straight pipe at low pressure. Friction factors are Fanning's (a quarter
/// of Darcy's).
namespace hearth::pipework {

/// What of the gas matters here.
struct FlowingGas {
    double relativeDensity = 0.0;     // to air
    double kinematicViscosity = 0.0;  // m2/s
};

/// Natural gas 0.6 and 14.7e-6 m2/s, propane 1.55 and 4.4e-6 m2/s; nothing for other gases: their viscosity
/// was not found and must be given. Source: the discharge table of BS 6891:2005 is for 0.6; EN 437 G31 for
/// 1.55, from memory; viscosities: textbook. Checked: pressure_drop_test.cpp.
[[nodiscard]] std::optional<FlowingGas> flowingGas(rulebook::Gas gas);

/// Dry air at 15 degrees C and 1013.25 mbar, kg/m3. Source: textbook (ISO 6976, 1.2254).
inline constexpr double kAirDensity = 1.2254;

/// The law was held against Prandtl and Karman's up to here.
inline constexpr double kMostReynolds = 1.0e7;
/// Density is taken as constant: good while the pressure falls by less than a tenth of the absolute pressure.
/// Source: textbook (Crane, Technical Paper 410), from memory.
inline constexpr quantity::PressureChange kMostDrop{100.0, quantity::kMillibar};

/// Share of the law's flow that a pipe is taken to pass while no efficiency is confirmed. 0.97 is remembered
/// of the standard too faintly to be given; of two digits, 0.95 is the largest with which no cell of the
/// discharge table of BS 6891:2005 is exceeded. A margin of ours, no limit of a standard.
inline constexpr double kCautiousEfficiency = 0.95;

/// Re = 4 Q / (pi D v). Q m3/s, D bore in m, v kinematic viscosity in m2/s. Valid for any positive D and v.
/// Source: textbook. Checked: pressure_drop_test.cpp.
[[nodiscard]] double reynolds(quantity::Flow flow, quantity::Length bore, const FlowingGas& gas);

/// f = 16 / Re. Valid for laminar flow, Re below about 2000. Source: textbook (Hagen-Poiseuille).
/// Checked: pressure_drop_test.cpp.
[[nodiscard]] double laminarFriction(double reynolds);

/// sqrt(1/f) = 14.7519 + 3.5657 X + 0.0362 X2, X = log10(Re) - 5. Valid for turbulent flow in smooth pipe, Re
/// from about 2000 to 10^7. Source: smooth-pipe law of IGEM/TD/3 and IGEM/UP/2, from memory.
/// Checked: pressure_drop_test.cpp (Prandtl-Karman, Blasius).
[[nodiscard]] double smoothFriction(double reynolds);

/// The friction that is reckoned with: the larger of laminar friction, taken at 1/0.9, and the smooth-pipe
/// law. The larger because in the transition (Re about 1100 to 3000) flow may be either, and BS 6891's table
/// has turbulent cells down to Re 1680; it is continuous, the drop rises with the flow throughout, and it
/// never gives less than either law. The 0.9 because the table's laminar cells let through 0.9 of what 16/Re
/// gives. Valid for Re above 0 up to kMostReynolds. Source: own rule, from facts/combustion.md 5.3.
/// Checked: pressure_drop_test.cpp (discharge table of BS 6891:2005).
[[nodiscard]] double cautiousFriction(double reynolds);

/// One straight piece of pipe, fittings counted as length.
struct PipeRun {
    quantity::Length bore;
    quantity::Length length;
    FlowingGas gas;
    double efficiency = kCautiousEfficiency;  // share of the law's flow; above 0, at most 1
};

/// dp = f (4 L / D) (rho / 2) (4 Q / (pi D2))2 with a given f and rho = relative density x kAirDensity; in
/// mbar, mm, m and m3/h: 3.06e6 f S L Q2 / D5. Without efficiency. Valid for any positive D; density
/// constant. Source: textbook (Fanning); the rounded constant from gas network texts, from memory. Checked:
/// pressure_drop_test.cpp.
[[nodiscard]] quantity::PressureChange dropWithFriction(double friction, quantity::Flow flow,
                                                        const PipeRun& run);

/// The drop by cautiousFriction(), divided by the square of the efficiency. 0 without flow or length. Error:
/// OutOfRange for a bore, viscosity or density not above 0, an efficiency not in (0, 1], a negative flow or
/// length, a Reynolds number above kMostReynolds, a drop above kMostDrop. Unrounded. Source: as
/// dropWithFriction(). Checked: pressure_drop_test.cpp.
[[nodiscard]] Result<quantity::PressureChange> pressureDrop(quantity::Flow flow, const PipeRun& run);

/// The flow that loses `drop` over the run: the inverse of pressureDrop(), to 1 part in 10^12. Errors: as
/// pressureDrop(); also for a drop not above 0 and a run without length. Unrounded. Source: as
/// pressureDrop(). Checked: pressure_drop_test.cpp.
[[nodiscard]] Result<quantity::Flow> discharge(quantity::PressureChange drop, const PipeRun& run);

/// Older laws, to compare with. NOT FOR SIZING: Pole passes up to half as much again as the table of
/// BS 6891:2005.
namespace comparison {

/// Q = 0.0071 sqrt(D5 dp / (S L)); m3/h, mm, mbar, m: f = 0.0065 at any flow. Valid as a comparison only.
/// Source: Pole's formula, from memory. Checked: pressure_drop_test.cpp.
[[nodiscard]] quantity::Flow poleDischarge(quantity::PressureChange drop, const PipeRun& run);

/// f = 0.0044 (1 + 12 / (0.276 D)), D in mm, at any flow. Valid as a comparison only.
/// Source: Lacey's formula, from memory. Checked: pressure_drop_test.cpp.
[[nodiscard]] quantity::Flow laceyDischarge(quantity::PressureChange drop, const PipeRun& run);

}  // namespace comparison

}  // namespace hearth::pipework
