-- Run by test_neovim.py in a headless Neovim whose settings are the documented ones, with the programme open.
-- Writes what the editor was told as JSON to $SPOTLINE_ANSWERS; then writes the fix named $SPOTLINE_FIX and saves.
local buffer = vim.api.nvim_get_current_buf()
local answers = {}

local function wait(what, condition)
  if not vim.wait(15000, condition, 10) then
    answers.missing = what
    vim.fn.writefile({ vim.fn.json_encode(answers) }, vim.env.SPOTLINE_ANSWERS)
    vim.cmd("cquit 1")
  end
end

local function found()
  return vim.diagnostic.get(buffer)
end

local function rule(one)
  return one.code or one.user_data.lsp.code
end

local function ask(method, position)
  local params = { textDocument = { uri = vim.uri_from_bufnr(buffer) }, position = position }
  for _, answer in pairs(vim.lsp.buf_request_sync(buffer, method, params, 10000) or {}) do
    return answer.result
  end
end

wait("diagnostics", function() return #found() > 0 end)
answers.diagnostics = {}
for _, one in ipairs(found()) do
  table.insert(answers.diagnostics, {
    rule = rule(one),
    severity = vim.diagnostic.severity[one.severity],
    source = one.source,
    message = one.message,
    -- Counted in bytes, from 0.
    start = { one.lnum, one.col },
    finish = { one.end_lnum, one.end_col },
  })
end

local line = vim.fn.search("seated leg curl") - 1
answers.hover = ask("textDocument/hover", { line = line, character = 22 })
answers.completion = ask("textDocument/completion", { line = line, character = 22 })

-- The fix is chosen by its title from the menu that the editor shows.
vim.ui.select = function(items, options, chosen)
  answers.offered = {}
  for _, item in ipairs(items) do
    local title = options.format_item(item)
    table.insert(answers.offered, title)
    if title:find(vim.env.SPOTLINE_FIX, 1, true) then
      chosen(item)
    end
  end
end
local function unknown()
  for _, one in ipairs(found()) do
    if rule(one) == "exercise-unknown" then
      return true
    end
  end
end
vim.fn.cursor(1, 1)
vim.fn.search("sqat")
vim.lsp.buf.code_action()
wait("the fix", function() return answers.offered and not unknown() end)
vim.cmd("write")
vim.fn.writefile({ vim.fn.json_encode(answers) }, vim.env.SPOTLINE_ANSWERS)
vim.cmd("quitall")
