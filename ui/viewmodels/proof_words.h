// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QVariantMap>

#include "cycle/proof.h"
#include "format/formatter.h"

namespace wetfront::ui {

// A proof run's lines in a person's words.

/// "pass", "fail", "close" for too close to call, "open" where there is no verdict yet.
[[nodiscard]] QString sign_of(ProofVerdict verdict);

/// A line as QML shows it: {what, allowed, set, seen, verdict, word, spoken}.
[[nodiscard]] QVariantMap proof_line_map(const ProofLine& line, const Formatter& formatter);

}  // namespace wetfront::ui
