// SPDX-License-Identifier: Apache-2.0
#include "cli/interruption.h"

#include <ctime>

namespace wetfront {

// Blocked and asked for, not handled: a handler would have nothing but a global to write to.
Interruption::Interruption() {
    sigemptyset(&awaited_);
    sigaddset(&awaited_, SIGINT);
    sigaddset(&awaited_, SIGTERM);
    pthread_sigmask(SIG_BLOCK, &awaited_, &before_);
}

Interruption::~Interruption() {
    // A second one would end the program as soon as it is let through.
    static_cast<void>(asked());
    pthread_sigmask(SIG_SETMASK, &before_, nullptr);
}

bool Interruption::asked() {
    const timespec at_once{};
    while (sigtimedwait(&awaited_, nullptr, &at_once) > 0) {
        asked_ = true;
    }
    return asked_;
}

}  // namespace wetfront
