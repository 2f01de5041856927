// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>

#include <atomic>
#include <future>

/** The app's own typeface, whose figures all have one width. */
namespace typeface {

/// Loads it from the resources and makes it the application's; false when a weight is missing.
bool install();

/// Begins to read the system's list of fonts, which needs no application yet and takes longer than all of our QML.
std::future<void> listing();

/** Loads it beside whatever else happens at the start. */
class Coming {
public:
    /// The application has to be there already.
    explicit Coming(std::future<void> listing);
    /// Whether waiting for it takes no time any more; an event comes with the change.
    [[nodiscard]] bool there() const { return m_there; }
    /// To be called before the first text is laid out; makes it the application's. False when a weight is missing.
    bool wait();

private:
    std::atomic<bool> m_there = false;
    std::future<bool> m_loaded;
};

/// Draws the commonest letters once, out of sight, so that a page in this font has them when it comes.
void draw(const QFont& font);

}
