// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QFont>
#include <QString>
#include <vector>

#include "print/flow.h"

namespace wetfront::ui {

/// The type of the sheet: a serif for what leads, a sans for what is read. Sizes in points, none below 7.5;
/// what is read as a text is set in 8.5.
enum class Face { title, heading, body, strong, small, small_strong };

/// Sized in sheet units. Letters are set a hair apart, which keeps "ff" and "fi" two letters: a joined pair
/// would be read back from the file as one unknown sign.
[[nodiscard]] QFont font_of(Face face);

/// Distance from line to line.
[[nodiscard]] double leading_of(Face face);

/// Width of a text in one line.
[[nodiscard]] double width_of(const QString& text, Face face);

/// The text wrapped to a width: between words, inside a word only where it is longer than a line. Nothing for
/// an empty text. `indent` moves every line to the right.
[[nodiscard]] std::vector<Line> text_lines(const QString& text, Face face, double width, double indent = 0.0,
                                           Qt::Alignment alignment = Qt::AlignLeft);

/// Room between lines.
[[nodiscard]] Line gap(double height);

/// `more` below `lines`.
void append(std::vector<Line>& lines, std::vector<Line> more);

}  // namespace wetfront::ui
