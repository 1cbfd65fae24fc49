// SPDX-License-Identifier: Apache-2.0
#include "child.h"

#include <linux/capability.h>
#include <sys/syscall.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <csignal>
#include <exception>
#include <stdexcept>

namespace wetfront::test {

Child::Child(const std::function<void(const Say&)>& work) {
    std::array<int, 2> ends{};
    if (::pipe(ends.data()) != 0) {
        throw std::runtime_error{"no pipe"};
    }
    process_ = ::fork();
    if (process_ < 0) {
        throw std::runtime_error{"no process"};
    }
    if (process_ == 0) {
        ::close(ends[0]);
        const auto say = [&](const std::string& line) {
            const std::string whole = line + "\n";
            if (::write(ends[1], whole.data(), whole.size()) != static_cast<ssize_t>(whole.size())) {
                ::_exit(1);
            }
        };
        try {
            work(say);
        } catch (const std::exception& problem) {
            say(std::string{"failed: "} + problem.what());
        }
        ::_exit(0);
    }
    ::close(ends[1]);
    pipe_ = ends[0];
}

Child::~Child() {
    kill();
    ::close(pipe_);
}

std::string Child::line() {
    std::string text;
    for (char c = 0; ::read(pipe_, &c, 1) == 1 && c != '\n';) {
        text += c;
    }
    return text;
}

void Child::kill() {
    if (alive_) {
        ::kill(process_, SIGKILL);
        ::waitpid(process_, nullptr, 0);
        alive_ = false;
    }
}

std::string said_without_privilege(const std::function<std::string()>& work) {
    Child child{[&](const Child::Say& say) {
        __user_cap_header_struct head{_LINUX_CAPABILITY_VERSION_3, 0};
        std::array<__user_cap_data_struct, 2> none{};
        if (::syscall(SYS_capset, &head, none.data()) != 0) {
            throw std::runtime_error{"privileges could not be dropped"};
        }
        say(work());
    }};
    return child.line();
}

}  // namespace wetfront::test
