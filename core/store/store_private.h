// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <SQLiteCpp/Transaction.h>

#include <memory>

#include "store/failure.h"
#include "store/pen.h"
#include "store/record_file.h"
#include "store/store.h"
#include "store/stored_records.h"

// Not for other folders.
namespace wetfront {

struct Store::Private {
    store_detail::RecordFile file;
    const Clock& clock;
    IdSource ids{clock};
    std::unique_ptr<store_detail::Statements> sql =
        std::make_unique<store_detail::Statements>(file.database());
    std::int64_t device_key = 0;
    Id device = {};
    store_detail::LastRead last_read = {};

    /// Runs `work` with a pen in one transaction, committed and synced if it returns no error.
    template <class Work>
    Result<void> write(Work&& work) {
        if (file.mode() == OpenMode::read_only) {
            return storage_error(file.item(), "it was opened read-only", "nothing was written");
        }
        return store_detail::guarded(file.item(), [&]() -> Result<void> {
            SQLite::Transaction transaction{file.database(), SQLite::TransactionBehavior::IMMEDIATE};
            WF_CHECK(work(store_detail::Pen{*sql, device_key, device, ids, clock.wall_now()}));
            transaction.commit();
            return boost::outcome_v2::success();
        });
    }

    /// Runs `ask`, which returns a Result, on the open file.
    template <class Ask>
    auto read(Ask&& ask) const {
        return store_detail::guarded(file.item(), [&] { return ask(*sql); });
    }
};

}  // namespace wetfront
