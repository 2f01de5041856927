// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <future>

/** The app's own typeface, whose figures all have one width. */
namespace typeface {

/// Loads it from the resources and makes it the application's; false when a weight is missing.
bool install();

/** Loads it beside whatever else happens at the start: the first look at the system's fonts takes longer than all of our QML. */
class Coming {
public:
    /// The application has to be there already.
    Coming();
    /// To be called before the first text is laid out; makes it the application's. False when a weight is missing.
    bool wait();

private:
    std::future<bool> m_loaded;
};

}
