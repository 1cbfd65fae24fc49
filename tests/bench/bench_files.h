// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <string>
#include <utility>

#include "base/result.h"

namespace wetfront {

/// Ends the benchmark: what it was to measure did not happen.
[[noreturn]] inline void give_up(const std::string& why) {
    std::cerr << "benchmark: " << why << '\n';
    std::exit(1);
}

template <class T>
T value_of(Result<T> result) {
    if (!result) {
        give_up(result.error().text());
    }
    return std::move(result).value();
}
inline void succeed(const Result<void>& result) {
    if (!result) {
        give_up(result.error().text());
    }
}

/// A folder of its own, gone with all that is in it at the end.
class Folder {
public:
    explicit Folder(const std::string& name) {
        auto made = (std::filesystem::temp_directory_path() / (name + "-XXXXXX")).string();
        if (::mkdtemp(made.data()) == nullptr) {
            give_up("no temporary folder");
        }
        path_ = made;
    }
    ~Folder() { std::filesystem::remove_all(path_); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    [[nodiscard]] std::filesystem::path file(const std::string& name) const { return path_ / name; }

private:
    std::filesystem::path path_;
};

}  // namespace wetfront
