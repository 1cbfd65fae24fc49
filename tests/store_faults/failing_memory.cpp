// SPDX-License-Identifier: Apache-2.0
#include "failing_memory.h"

#include <sqlite3.h>

#include <stdexcept>

namespace wetfront::test {
namespace {

// SQLite's calls for memory come without a word on whom they belong to.
sqlite3_mem_methods real;
int left = 0;  // 0: never refused
bool for_ever_after = false;
bool refused = false;

bool refuses() {
    if (left == 0 || (--left > 0)) {
        return false;
    }
    refused = true;
    left = for_ever_after ? 1 : 0;
    return true;
}

void* allocate(int size) {
    return refuses() ? nullptr : real.xMalloc(size);
}
void* allocate_again(void* memory, int size) {
    return refuses() ? nullptr : real.xRealloc(memory, size);
}

void use(const sqlite3_mem_methods& methods) {
    sqlite3_shutdown();
    if (sqlite3_config(SQLITE_CONFIG_MALLOC, &methods) != SQLITE_OK || sqlite3_initialize() != SQLITE_OK) {
        throw std::runtime_error{"SQLite keeps its own memory"};
    }
}

}  // namespace

FailingMemory::FailingMemory() {
    sqlite3_initialize();
    sqlite3_shutdown();
    sqlite3_config(SQLITE_CONFIG_GETMALLOC, &real);
    auto failing = real;
    failing.xMalloc = allocate;
    failing.xRealloc = allocate_again;
    use(failing);
}

FailingMemory::~FailingMemory() {
    recover();
    use(real);
}

void FailingMemory::run_out_at(int nth, bool for_ever) {
    left = nth;
    for_ever_after = for_ever;
    refused = false;
}

void FailingMemory::recover() {
    left = 0;
}

bool FailingMemory::ran_out() const {
    return refused;
}

}  // namespace wetfront::test
