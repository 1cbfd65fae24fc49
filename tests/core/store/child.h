// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <sys/types.h>

#include <functional>
#include <string>

namespace wetfront::test {

/// A second process that runs a function and speaks through a pipe, line by line. Killed at the end at the
/// latest.
class Child {
public:
    using Say = std::function<void(const std::string& line)>;
    explicit Child(const std::function<void(const Say&)>& work);
    ~Child();
    Child(const Child&) = delete;
    Child& operator=(const Child&) = delete;

    [[nodiscard]] pid_t process() const { return process_; }
    /// The next line; waits for it. Empty if it ended without one.
    [[nodiscard]] std::string line();
    /// With signal 9, at once; what it said before can still be read.
    void kill();

private:
    pid_t process_ = -1;
    int pipe_ = -1;
    bool alive_ = true;
};

/// What a function says in a process that has given up the privilege to pass over file permissions, root or
/// not.
[[nodiscard]] std::string said_without_privilege(const std::function<std::string()>& work);

}  // namespace wetfront::test
