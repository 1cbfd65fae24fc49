// SPDX-License-Identifier: Apache-2.0
#include "demo/demo_signatures.h"

#include <cmath>
#include <numbers>

namespace wetfront {
namespace {

/// Loops in a row, as of an e or l each.
struct Loops {
    int from;     ///< where the first begins, across
    int line;     ///< on which they stand, down
    int step;     ///< from one to the next
    double wide;  ///< half of one
    std::vector<double> heights;
};

Stroke scribbled(const Loops& loops) {
    constexpr int points = 40;  // of a loop
    Stroke stroke;
    for (std::size_t i = 0; i < loops.heights.size(); ++i) {
        for (int k = 0; k < points; ++k) {
            const double turn = static_cast<double>(k) / points;
            const double angle = 2.0 * std::numbers::pi * turn;
            const double across = loops.from + (static_cast<double>(i) + turn) * loops.step;
            stroke.points.push_back({static_cast<int>(std::lround(across + loops.wide * std::sin(angle))),
                                     static_cast<int>(std::lround(
                                         loops.line - 0.5 * loops.heights[i] * (1.0 - std::cos(angle))))});
        }
    }
    return thinned(stroke);
}

}  // namespace

std::vector<Stroke> technicians_scribble() {
    return {Stroke{{{430, 210}, {415, 420}, {380, 760}}}, Stroke{{{330, 250}, {520, 190}, {690, 200}}},
            scribbled({500, 740, 95, 75.0, {230.0, 210.0, 240.0, 200.0}}),
            scribbled({960, 740, 130, 95.0, {560.0, 220.0, 250.0, 210.0, 520.0, 200.0, 230.0, 180.0}}),
            Stroke{{{420, 880}, {1100, 840}, {2060, 850}}}};
}

std::vector<Stroke> growers_scribble() {
    return {scribbled({520, 700, 40, 170.0, {430.0, 450.0}}),
            scribbled({760, 720, 115, 85.0, {190.0, 520.0, 200.0, 170.0}}),
            Stroke{{{1420, 300}, {1405, 860}}},
            scribbled({1400, 560, 110, 120.0, {260.0, 150.0, 140.0, 150.0, 130.0}}), Stroke{{{1790, 330}}}};
}

}  // namespace wetfront
