// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <csignal>

namespace wetfront {

/// While it lives, Ctrl-C (SIGINT) and a request to end (SIGTERM) wait to be asked for instead of ending the
/// program in the middle of a file. Threads that begin meanwhile leave them alone too.
class Interruption {
public:
    Interruption();
    ~Interruption();
    Interruption(const Interruption&) = delete;
    Interruption& operator=(const Interruption&) = delete;

    /// True from the first of them on.
    [[nodiscard]] bool asked();

private:
    sigset_t awaited_{};
    sigset_t before_{};
    bool asked_ = false;
};

}  // namespace wetfront
