// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <gtest/gtest.h>

#include <sys/wait.h>

#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>

#include "cli/cli.h"
#include "support/fake_clock.h"

namespace wetfront::test {

/// One run of the command line inside the test.
struct CliRun {
    int status = -1;
    std::string out;
    std::string err;

    [[nodiscard]] nlohmann::json json() const {
        auto parsed = nlohmann::json::parse(out, nullptr, false);
        EXPECT_FALSE(parsed.is_discarded()) << "not one JSON object:\n" << out << err;
        return parsed;
    }
};

inline CliRun run(const std::vector<std::string>& arguments, const std::string& input = {},
                  const SheetPrinter& printer = {}) {
    std::istringstream in{input};
    std::ostringstream out;
    std::ostringstream err;
    const FakeClock clock;
    const auto status = run_cli(arguments, {in, out, err, clock, printer});
    return {static_cast<int>(status), out.str(), err.str()};
}

/// What a command prints to stdout, and its exit status.
inline CliRun run_in_shell(const std::string& command) {
    std::FILE* pipe = popen(command.c_str(), "r");
    CliRun result;
    if (pipe == nullptr) {
        ADD_FAILURE() << "cannot start " << command;
        return result;
    }
    std::array<char, 4096> buffer{};
    std::size_t count = 0;
    while ((count = std::fread(buffer.data(), 1, buffer.size(), pipe)) > 0) {
        result.out.append(buffer.data(), count);
    }
    const int status = pclose(pipe);
    result.status = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    return result;
}

/// Exit status 2, nothing on stdout, one line "wetfront-cli: what: why" that holds `part`.
inline void expect_refused(const CliRun& run, const std::string& part) {
    EXPECT_EQ(run.status, 2) << run.out << run.err;
    EXPECT_EQ(run.out, "");
    EXPECT_EQ(run.err.rfind("wetfront-cli: ", 0), 0U) << run.err;
    EXPECT_EQ(std::count(run.err.begin(), run.err.end(), '\n'), 1) << run.err;
    EXPECT_NE(run.err.find(part), std::string::npos) << run.err;
}

inline std::set<std::string> keys_of(const nlohmann::json& object) {
    std::set<std::string> keys;
    for (const auto& entry : object.items()) {
        keys.insert(entry.key());
    }
    return keys;
}

/// A folder that is empty at the start of a test and gone at its end.
class TemporaryFolder {
public:
    TemporaryFolder() {
        const auto* test = testing::UnitTest::GetInstance()->current_test_info();
        path_ = std::filesystem::path{testing::TempDir()} /
                (std::string{"wetfront-"} + test->test_suite_name() + "-" + test->name());
        std::filesystem::remove_all(path_);
        std::filesystem::create_directories(path_);
    }
    ~TemporaryFolder() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;

    [[nodiscard]] std::string file(const std::string& name) const { return (path_ / name).string(); }
    std::string with(const std::string& name, const std::string& content) const {
        std::ofstream{path_ / name, std::ios::binary} << content;
        return file(name);
    }

private:
    std::filesystem::path path_;
};

}  // namespace wetfront::test
