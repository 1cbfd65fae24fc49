// SPDX-License-Identifier: Apache-2.0
#pragma once

namespace wetfront::test {

/// While it lives SQLite's memory can run out. No connection may be open when it begins or ends.
class FailingMemory {
public:
    FailingMemory();
    ~FailingMemory();
    FailingMemory(const FailingMemory&) = delete;
    FailingMemory& operator=(const FailingMemory&) = delete;

    /// The nth request from now on is refused, and if `for_ever` all after it.
    void run_out_at(int nth, bool for_ever);
    void recover();
    [[nodiscard]] bool ran_out() const;
};

}  // namespace wetfront::test
