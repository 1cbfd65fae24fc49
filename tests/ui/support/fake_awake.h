// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "viewmodels/awake.h"

namespace wetfront::ui {

/// Remembers what it was asked for; the test says what is missing.
class FakeAwake final : public Awake {
public:
    FakeAwake() : Awake{nullptr} {}

    void keep(bool wanted) override { kept = wanted; }
    [[nodiscard]] QString problem() const override { return kept ? missing : QString{}; }

    void miss(const QString& what) {
        missing = what;
        emit problem_changed();
    }

    bool kept = false;
    QString missing;
};

}  // namespace wetfront::ui
